import { GrammyError, HttpError } from "grammy";
import type { Carried } from "../cases/ports.ts";

/** Without a word from the other side: how long to leave it alone at least. */
const PAUSE_MILLISECONDS = 1_000;
const MOST_REASON_CHARACTERS = 200;

/** What went wrong with a call, by what is to be done about it. */
export type Trouble =
  | { readonly is: "final"; readonly carried: Exclude<Carried, { outcome: "done" | "partly" }> }
  /** An edit that would change nothing: what was wanted is so already. */
  | { readonly is: "unchanged" }
  /** The message to change is gone, or of a kind that cannot be changed this way. */
  | { readonly is: "gone" }
  /** The topic was closed or deleted. */
  | { readonly is: "no-topic" }
  /** The file cannot be sent (again). */
  | { readonly is: "no-file" };

/** The platform tells these apart by their wording alone (observed server sources, May 2026). */
const wordings: readonly [RegExp, Exclude<Trouble["is"], "final">][] = [
  [/message is not modified/i, "unchanged"],
  [/message to edit not found|message can't be edited|MESSAGE_ID_INVALID/i, "gone"],
  [/there is no (text|caption) in the message to edit/i, "gone"],
  [/message thread not found|TOPIC_(CLOSED|DELETED|ID_INVALID)/i, "no-topic"],
  [/wrong file|file is temporarily unavailable|can't use file of type|FILE_REFERENCE/i, "no-file"],
];
const nobodyThere = /chat not found|PEER_ID_INVALID|user is deactivated|bot was kicked/i;

/** Judges what a call of the Bot API was rejected with. */
export function judgeTrouble(error: unknown): Trouble {
  // No answer, or one that is no answer, such as a proxy's web page.
  if (error instanceof HttpError) return wait("network");
  if (!(error instanceof GrammyError)) return refused(nameOf(error));
  const { error_code: code, description, parameters } = error;
  if (code === 429) return wait("busy", (parameters.retry_after ?? 1) * 1000);
  if (code >= 500) return wait("server");
  if (code === 401 || code === 404) return wait("network");
  if (parameters.migrate_to_chat_id !== undefined) {
    const to = String(parameters.migrate_to_chat_id);
    return { is: "final", carried: { outcome: "moved", to } };
  }
  if (code === 403 || nobodyThere.test(description)) {
    return { is: "final", carried: { outcome: "unreachable" } };
  }
  const [, is] = wordings.find(([wording]) => wording.test(description)) ?? [];
  if (is !== undefined) return { is };
  return refused(`${code} ${description}`.slice(0, MOST_REASON_CHARACTERS));
}

const refused = (reason: string): Trouble => ({
  is: "final",
  carried: { outcome: "refused", reason },
});
const nameOf = (error: unknown) => (error instanceof Error ? error.name : "unknown error");

const wait = (
  because: "busy" | "network" | "server",
  milliseconds = PAUSE_MILLISECONDS,
): Trouble => ({ is: "final", carried: { outcome: "wait", milliseconds, because } });
