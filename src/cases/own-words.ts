import type { Member } from "../domain/documents.ts";
import type { Incoming } from "../domain/incoming.ts";
import type { Reader } from "../domain/reading.ts";
import type { Desk } from "../talk/desk.ts";
import { commandsFor } from "../talk/lobby.ts";
import { typedCommand } from "../talk/typed-command.ts";
import { promptedCase } from "./case-of.ts";
import type { Directory } from "./directory.ts";
import type { Lobby } from "./lobby.ts";
import type { Received } from "./ports.ts";

export interface OwnWordsParts {
  readonly directory: Directory;
  readonly reader: Reader;
  readonly lobby: Lobby;
}

/** What is known of whoever writes. */
export interface Writer {
  readonly member: Member | null;
  readonly language: string;
  readonly desk: Desk;
}

/** In a case that goes to the case: it is how people ask for somebody. */
const caseWords: ReadonlySet<string> = new Set(["person", "help"]);

/**
 * Words that belong to no case: a command written out, or what was asked about a machine of one's
 * own. A danger is never taken for either.
 * @returns the command's name, what came of the words, or null where they belong to a case
 */
export function ownWords(
  text: string,
  incoming: Incoming,
  { directory, reader, lobby, ...writer }: OwnWordsParts & Writer,
): { readonly command: string } | Promise<Received> | null {
  const { member, desk, language } = writer;
  const { id } = incoming.from;
  if (promptedCase(directory, id, member) !== null) return null;
  const isInCase = directory.cases({ operator: id, open: true }).length > 0;
  const names = commandsFor[member?.role ?? "operator"].filter(
    (name) => !(isInCase && caseWords.has(name)) && name !== "person",
  );
  const command = typedCommand(text, names, { desk, language });
  if (command !== null) return { command };
  const { redFlags } = reader.read(text, { languages: desk.shop.languages });
  return redFlags.length > 0 ? null : lobby.written(text, incoming);
}
