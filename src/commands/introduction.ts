import type { Introduction } from "../chat/introduce.ts";
import type { Member } from "../domain/documents.ts";
import { phrase } from "../talk/decision.ts";
import { commandsFor } from "../talk/lobby.ts";
import type { Speech } from "./speech.ts";

/** Descriptions and command menus, per language and per role. */
export function introductionOf(
  speech: Speech,
  languages: readonly string[],
  members: readonly Member[],
): Introduction {
  const say = (key: string, language: string) => speech.wording.phrase(phrase(key), language);
  const menu = (names: readonly string[], language: string) =>
    names.map((command) => ({ command, description: say(`command-${command}`, language) }));
  const isTwoLetters = (language: string): language is "en" => /^[a-z]{2}$/.test(language);
  return {
    texts: languages.map((language, index) => ({
      language: index > 0 && isTwoLetters(language) ? language : null,
      description: say("description", language),
      shortDescription: say("description-short", language),
      commands: menu(commandsFor.operator, language),
    })),
    people: members.map((member) => ({
      chat: member.chat,
      commands: menu(commandsFor[member.role], member.language),
    })),
  };
}
