import type { Pattern, PhraseLists } from "../domain/phrases.ts";
import type { MachineHints, MachineSynonyms } from "../domain/reading.ts";
import { fuels } from "../domain/vocabulary.ts";
import { fold, tokenise } from "./tokens.ts";

/** P(the kind is meant) when a name is used that only this kind has. */
const SURE_OF_NAME = 0.9;

interface Name {
  readonly kind: MachineSynonyms["id"];
  readonly words: readonly string[];
}

/** Words that may stand inside a name: "old two-cylinder farm tractor" is an old tractor. */
const WORDS_INSIDE = 3;

/** The kinds with what a language calls them beside their own names; its blanks are left aside. */
export function withNames(
  machines: readonly MachineSynonyms[],
  names: PhraseLists,
): readonly MachineSynonyms[] {
  return machines.map((machine) => {
    const said = (names.get(machine.id) ?? []).flatMap(waysToSay);
    return { ...machine, synonyms: [...machine.synonyms, ...said] };
  });
}

/** "olive|grape harvester": every choice written out. */
function waysToSay(pattern: Pattern): readonly string[] {
  return pattern.reduce<readonly string[]>(
    (begun, piece) =>
      piece.kind === "words"
        ? begun.flatMap((words) => [
            ...piece.any.map((word) => `${words} ${word.replace(/^=/, "").replaceAll("-", " ")}`),
            ...(piece.optional ? [words] : []),
          ])
        : begun,
    [""],
  );
}

/** Finds the kind of a machine in free text. */
export type KindMatcher = (text: string) => MachineHints;

interface Found {
  readonly name: Name;
  readonly at: number;
}

/**
 * Prepares the names of machines once, for many texts. The longest name found wins, of equals the
 * one that begins first; a name that is part of other kinds' names too ("tractor") is unsure. Where
 * no name is found, the last word of names ("mower") gives a guess.
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
    const fuel = fuels.find((one) => present.has(one));
    const known = fuel === undefined ? {} : { fuel };
    const found = names.flatMap((name): readonly Found[] => {
      if (!name.words.every((word) => present.has(word))) return [];
      const at = placeOf(words, name.words);
      return at === null ? [] : [{ name, at }];
    });
    const [best] = found.sort((a, b) => b.name.words.length - a.name.words.length || a.at - b.at);
    if (best === undefined) return { ...guessByLastWord(words, names), ...known };
    const sharing = new Set(
      names
        .filter((name) => placeOf(name.words, best.name.words) !== null)
        .map((name) => name.kind),
    );
    return { kind: best.name.kind, certainty: SURE_OF_NAME / Math.sqrt(sharing.size), ...known };
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

/**
 * The kind with the most names that end in a word of the text; as unsure as a shared name. A word
 * that as often stands elsewhere in names is no thing: "zero *turn* mower", "ride *on*".
 */
function guessByLastWord(words: readonly string[], names: readonly Name[]): MachineHints {
  const isThing = (word: string): boolean => {
    const holding = names.filter((name) => name.words.includes(word));
    return 2 * holding.filter((name) => lastOf(name) === word).length > holding.length;
  };
  const things = new Set(words.filter(isThing));
  const ending = names.filter((name) => name.words.length > 1 && things.has(lastOf(name)));
  const counts = new Map<Name["kind"], number>();
  for (const { kind } of ending) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const [best] = [...counts].sort((a, b) => b[1] - a[1]);
  if (best === undefined) return { certainty: 0 };
  return { kind: best[0], certainty: (SURE_OF_NAME / 2) * (best[1] / ending.length) };
}

function lastOf(name: Name): string {
  return name.words.at(-1) ?? "";
}

function wordsOf(text: string): readonly string[] {
  return tokenise(text).map((token) => singular(fold(token.text)));
}

/** Names differ from the text by a plural at most. */
function singular(word: string): string {
  return word.length > 3 && word.endsWith("s") && !word.endsWith("ss") ? word.slice(0, -1) : word;
}

/** Where the words stand one after the other, with few others between; null where they do not. */
function placeOf(words: readonly string[], part: readonly string[]): number | null {
  for (let at = words.indexOf(part[0] ?? ""); at !== -1; ) {
    let next = at;
    const fits = part.slice(1).every((word) => {
      const step = words.slice(next + 1, next + 2 + WORDS_INSIDE).indexOf(word);
      next += step + 1;
      return step !== -1;
    });
    if (fits) return at;
    at = words.indexOf(part[0] ?? "", at + 1);
  }
  return null;
}
