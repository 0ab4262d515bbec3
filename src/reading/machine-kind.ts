import type { MachineHints, MachineSynonyms } from "../domain/reading.ts";
import { type Fuel, fuels } from "../domain/vocabulary.ts";
import { fold, tokenise } from "./tokens.ts";

/** P(the kind is meant) when a name is used that only this kind has. */
const SURE_OF_NAME = 0.9;

interface Name {
  readonly kind: MachineSynonyms["id"];
  readonly words: readonly string[];
}

/**
 * What free text says of the machine: "old two-cylinder farm tractor", "ride-on mower, 15 hp".
 * The longest name wins; a name that is also part of other kinds' names ("tractor") is unsure.
 */
export function matchMachineKind(text: string, machines: readonly MachineSynonyms[]): MachineHints {
  const words = wordsOf(text);
  const names = machines.flatMap((machine) =>
    machine.synonyms.map((synonym): Name => ({ kind: machine.id, words: wordsOf(synonym) })),
  );
  const found = names.filter((name) => name.words.length > 0 && holds(words, name.words));
  const longest = Math.max(0, ...found.map((name) => name.words.length));
  const [best] = found.filter((name) => name.words.length === longest);
  const fuel = fuelOf(words);
  if (best === undefined) return { certainty: 0, ...(fuel === null ? {} : { fuel }) };
  const sharing = new Set(
    names.filter((name) => holds(name.words, best.words)).map((name) => name.kind),
  );
  return {
    kind: best.kind,
    certainty: SURE_OF_NAME / Math.sqrt(Math.max(1, sharing.size)),
    ...(fuel === null ? {} : { fuel }),
  };
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

function fuelOf(words: readonly string[]): Fuel | null {
  return fuels.find((fuel) => words.includes(fuel)) ?? null;
}
