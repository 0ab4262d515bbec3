import { resolve } from "node:path";
import type { Problem, Result } from "./domain/result.ts";

/** What the environment decides; everything about the shop itself is in its settings file. */
export interface Config {
  /** The bot's token; absent: nothing leaves this computer, the rehearsal room opens. */
  readonly token?: string;
  /** Where everything is kept; an absolute path. */
  readonly dataFolder: string;
  /** Another Bot API server than the public one, without a slash at the end. */
  readonly apiRoot?: string;
  /** Where the rehearsal room listens on this computer; 0: any free port. */
  readonly port: number;
  /** Whether starting circuits are simulated; without, the engine weighs by rows alone. */
  readonly simulate: boolean;
}

export type Environment = Readonly<Record<string, string | undefined>>;

const DEFAULT_DATA_FOLDER = ".data";
/** Our own choice: high enough for ordinary users, and not one of the usual development ports. */
const DEFAULT_PORT = 4870;
const LARGEST_PORT = 65_535;
/** The shape in which the platform hands tokens out. */
const TOKEN = /^\d{5,}:[A-Za-z0-9_-]{30,}$/;

const known = [
  "TURNROW_TOKEN",
  "TURNROW_DATA",
  "TURNROW_API_ROOT",
  "TURNROW_PORT",
  "TURNROW_SIMULATE",
];

/**
 * Reads the settings that come from outside. Empty values count as missing, so that a line can be
 * left empty in a service file. Values of secrets are never repeated in a problem.
 */
export function readConfig(environment: Environment, folder = process.cwd()): Result<Config> {
  const problems: Problem[] = [];
  const problem = (at: string, says: string) => void problems.push({ at, says: `${at}: ${says}` });
  const value = (name: string) => environment[name]?.trim() || undefined;

  for (const name of Object.keys(environment)) {
    if (name.startsWith("TURNROW_") && !known.includes(name)) {
      problem(name, `there is no such setting; there are ${known.join(", ")}.`);
    }
  }
  const token = value("TURNROW_TOKEN");
  if (token !== undefined && !TOKEN.test(token)) {
    problem(
      "TURNROW_TOKEN",
      "this is no bot token. It looks like 123456789:AAH…, and @BotFather hands it out. " +
        "Leave it out to open the rehearsal room.",
    );
  }
  const apiRoot = value("TURNROW_API_ROOT")?.replace(/\/+$/, "");
  const wrongRoot = apiRoot === undefined ? null : rootProblem(apiRoot);
  if (wrongRoot !== null) problem("TURNROW_API_ROOT", wrongRoot);
  const port = Number(value("TURNROW_PORT") ?? DEFAULT_PORT);
  if (!Number.isInteger(port) || port < 0 || port > LARGEST_PORT) {
    problem("TURNROW_PORT", `expected a whole number from 0 to ${LARGEST_PORT}, such as 4870.`);
  }
  const simulate = value("TURNROW_SIMULATE") ?? "yes";
  if (simulate !== "yes" && simulate !== "no") {
    problem("TURNROW_SIMULATE", "expected yes, or no on a computer too small for it.");
  }
  if (problems.length > 0) return { ok: false, problems };
  return {
    ok: true,
    value: {
      simulate: simulate === "yes",
      ...(token === undefined ? {} : { token }),
      dataFolder: resolve(folder, value("TURNROW_DATA") ?? DEFAULT_DATA_FOLDER),
      ...(apiRoot === undefined ? {} : { apiRoot }),
      port,
    },
  };
}

/** The token travels in every address, so it may cross a network only encrypted. */
function rootProblem(apiRoot: string): string | null {
  if (!URL.canParse(apiRoot)) return "expected an address such as http://127.0.0.1:8081.";
  const { protocol, hostname } = new URL(apiRoot);
  const isHere = ["127.0.0.1", "localhost", "[::1]"].includes(hostname);
  if (protocol === "https:" || (protocol === "http:" && isHere)) return null;
  return "the bot's token would cross the network in the clear; use https or a server on this computer.";
}
