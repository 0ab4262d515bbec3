import { GrammyError, HttpError } from "grammy";

/** What may stand in a log line: nothing of what people wrote, no addresses with tokens in them. */
export interface LogFacts {
  readonly error?: unknown;
  readonly update?: string | number;
  readonly method?: string;
  readonly reason?: string;
  readonly milliseconds?: number;
  readonly count?: number;
}

export type Log = (what: string, facts?: LogFacts) => void;

/** The shape of a bot token, wherever it turns up. */
const TOKEN = /\d{5,}:[A-Za-z0-9_-]{30,}/g;

/** A line of JSON per event, made of named facts only; tokens are crossed out as a second net. */
export function createLog(
  write: (line: string) => void,
  now: () => number,
  secrets: readonly string[] = [],
): Log {
  const cross = (text: string) =>
    secrets
      .filter((secret) => secret !== "")
      .reduce((rest, secret) => rest.replaceAll(secret, "***"), text)
      .replace(TOKEN, "***");
  return (what, facts = {}) => {
    const { error, update, method, reason, milliseconds, count } = facts;
    const line = {
      at: new Date(now()).toISOString(),
      what,
      ...{ update, method, reason, milliseconds, count },
      ...(error === undefined ? {} : { error: describeError(error) }),
    };
    write(cross(JSON.stringify(line)));
  };
}

/** What is known of an error that is safe to write down. */
export function describeError(error: unknown): Readonly<Record<string, unknown>> {
  if (error instanceof GrammyError) {
    const { name, method, error_code, description } = error;
    return { name, method, error_code, description };
  }
  if (error instanceof HttpError) return { name: error.name, cause: causeOf(error.error) };
  if (error instanceof Error) return { name: error.name, ...codeOf(error), where: whereOf(error) };
  return { name: typeof error };
}

const causeOf = (error: unknown) =>
  error instanceof Error ? { name: error.name, ...codeOf(error) } : { name: typeof error };

const codeOf = (error: Error) =>
  "code" in error && typeof error.code === "string" ? { code: error.code } : {};

/** The place in the code; an error's message may quote what somebody wrote, its place cannot. */
function whereOf(error: Error): string | undefined {
  const line = error.stack?.split("\n").find((one) => /^\s+at /.test(one));
  return line?.trim().replace(/\(?(?:file:\/\/)?\/.*\/([^/]+)$/, "$1");
}
