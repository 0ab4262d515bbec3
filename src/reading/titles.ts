import type { ReaderObservation } from "../domain/reading.ts";
import type { Clauses } from "./clauses.ts";
import type { Language } from "./grammar.ts";
import { tokenise } from "./tokens.ts";

export interface TitleInput {
  readonly observation: ReaderObservation;
  readonly offered: readonly { readonly state: string; readonly title: string }[];
  readonly language: Language;
}

/** Longer messages are stories; the phrases read them better. */
const LONGEST_ANSWER = 8;
/** At least this share of a title's words must have been said. */
const LEAST_SHARE = 0.34;

/**
 * The offered state whose title, or id, the message names: every word of the message that says
 * anything is in it, and in no other title as well.
 */
export function matchTitles(
  text: Clauses,
  { observation, offered, language }: TitleInput,
): { readonly state: string; readonly share: number } | null {
  if (text.tokens.length > LONGEST_ANSWER) return null;
  const said = new Set(text.tokens.map((token) => token.stem));
  const titled = [...offered, ...observation.states.map(({ id }) => ({ state: id, title: id }))];
  const scored = titled
    .map(({ state, title }) => ({ state, share: shareOf(said, title, language) }))
    .filter(({ share }) => share >= LEAST_SHARE)
    .sort((a, b) => b.share - a.share);
  const [best] = scored;
  if (best === undefined) return null;
  const rival = scored.find(({ state, share }) => state !== best.state && share === best.share);
  return rival === undefined ? best : null;
}

function shareOf(said: ReadonlySet<string>, title: string, language: Language): number {
  const { lexicon, words } = language;
  const stems = lexicon.tokens(tokenise(title)).map((token) => token.stem);
  const whole = stems.length === said.size && stems.every((stem) => said.has(stem));
  if (whole) return 1;
  const deniedSaid = [...said].some((stem) => words.not.has(stem));
  const deniedTitle = stems.some((stem) => words.not.has(stem));
  if (deniedSaid !== deniedTitle) return 0;
  const telling = (stem: string): boolean => !lexicon.isOrdinary(stem) || words.not.has(stem);
  const content = stems.filter(telling);
  const outside = [...said].filter((stem) => telling(stem) && !stems.includes(stem));
  if (content.length === 0 || outside.length > 0) return 0;
  const common = content.filter((stem) => said.has(stem));
  return (common.length / content.length) * 0.99;
}
