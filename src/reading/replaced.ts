import type { ReaderModel, StateReading } from "../domain/reading.ts";
import type { Clauses } from "./clauses.ts";
import type { Aside, Language } from "./grammar.ts";
import type { Match } from "./patterns.ts";
import type { Scopes } from "./scopes.ts";
import { spanOf } from "./span.ts";

/** "changed the plug, the oil and the fuel filter": words between one part and the next. */
const WORDS_BETWEEN = 4;
const SURE_OF_REPLACED = 0.9;

/** Parts within reach of a word of replacing, or of another replaced part in a list. */
export function replacedParts(
  text: Clauses,
  matches: readonly Match<Aside>[],
): readonly Match<Aside>[] {
  const parts = new Set<Match<Aside>>();
  let running: Match<Aside> | null = null;
  let waiting: Match<Aside> | null = null;
  for (const match of matches) {
    const { list } = match.owner;
    if (list === "not-replaced") [running, waiting] = [null, null];
    if (list === "replaced") {
      running = match;
      if (waiting !== null && near(text, waiting, match)) parts.add(waiting);
    }
    if (list !== "component") continue;
    waiting = match;
    if (running === null || !near(text, running, match)) continue;
    parts.add(match);
    running = match;
  }
  return [...parts];
}

function near(text: Clauses, one: Match<Aside>, next: Match<Aside>): boolean {
  const sameSentence = text.sentences[one.from] === text.sentences[next.from];
  return sameSentence && next.from - one.to <= WORDS_BETWEEN;
}

/** The kind of claim that holds for every part. */
const ANY = "any";

export interface ReplacedInput {
  readonly language: Language;
  readonly model: ReaderModel;
  readonly scopes: Scopes;
  /** True for a part that was replaced because of the trouble, in vain or not. */
  readonly isAfter: (part: Match<Aside>) => boolean;
}

/**
 * What it answers that parts were replaced; each claim once, however many parts say it. Work with
 * an outcome came after the trouble: it is no work that may have brought it.
 */
export function replacedReadings(
  text: Clauses,
  parts: readonly Match<Aside>[],
  input: ReplacedInput,
): readonly StateReading[] {
  const { replacedMeans } = input.language.phrases;
  const readings = new Map<string, StateReading>();
  for (const part of parts) {
    const { hedge, source } = input.scopes.of(part.from);
    const told = { probability: SURE_OF_REPLACED, hedge, source, span: spanOf(text, part) };
    for (const id of input.isAfter(part) ? [ANY] : [ANY, part.owner.id]) {
      for (const claim of replacedMeans.get(id) ?? []) {
        const key = `${claim.observation}=${claim.state}`;
        const known = input.model.observations.get(claim.observation);
        const isState = known?.states.some((state) => state.id === claim.state) === true;
        if (isState && !readings.has(key)) readings.set(key, { ...claim, ...told });
      }
    }
  }
  return [...readings.values()];
}
