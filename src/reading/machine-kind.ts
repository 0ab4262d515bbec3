import type { MachineHints, MachineSynonyms } from "../domain/reading.ts";
import { fuels } from "../domain/vocabulary.ts";
import { fold, tokenise } from "./tokens.ts";

/** P(the kind is meant) when a name is used that only this kind has. */
const SURE_OF_NAME = 0.9;

interface Name {
  readonly kind: MachineSynonyms["id"];
  readonly words: readonly string[];
}

/** Finds the kind of a machine in free text. */
export type KindMatcher = (text: string) => MachineHints;

/**
 * Prepares the names of machines once, for many texts. The longest name found wins; a name that is
 * also part of other kinds' names ("tractor") is unsure.
 */
export function createKindMatcher(machines: readonly MachineSynonyms[]): KindMatcher {
  const names = machines.flatMap((machine) =>
    machine.synonyms
      .map((synonym): Name => ({ kind: machine.id, words: wordsOf(synonym) }))
      .filter((name) => name.words.length > 0),
  );
  return (text) => {
    const words = wordsOf(text);
    const present = new Set(words);
    const found = names.filter(
      (name) => name.words.every((word) => present.has(word)) && holds(words, name.words),
    );
    const longest = Math.max(0, ...found.map((name) => name.words.length));
    const best = found.find((name) => name.words.length === longest);
    const fuel = fuels.find((one) => present.has(one));
    const known = fuel === undefined ? {} : { fuel };
    if (best === undefined) return { certainty: 0, ...known };
    const sharing = new Set(
      names.filter((name) => holds(name.words, best.words)).map((name) => name.kind),
    );
    return { kind: best.kind, certainty: SURE_OF_NAME / Math.sqrt(sharing.size), ...known };
  };
}

/**
 * What free text says of the machine: "old two-cylinder farm tractor", "ride-on mower, 15 hp".
 *
 * @returns the kind with the certainty that it is meant, and the fuel where it is named
 */
export function matchMachineKind(text: string, machines: readonly MachineSynonyms[]): MachineHints {
  return createKindMatcher(machines)(text);
}

function wordsOf(text: string): readonly string[] {
  return tokenise(text).map((token) => singular(fold(token.text)));
}

/** Names differ from the text by a plural at most. */
function singular(word: string): string {
  return word.length > 3 && word.endsWith("s") && !word.endsWith("ss") ? word.slice(0, -1) : word;
}

function holds(words: readonly string[], part: readonly string[]): boolean {
  for (let at = 0; at + part.length <= words.length; at += 1) {
    if (part.every((word, offset) => words[at + offset] === word)) return true;
  }
  return false;
}
