import type { Arg, Line, Phrase, Unit } from "../domain/effects.ts";
import { type Knowledge, wordKey } from "../domain/knowledge.ts";
import type { RankedCause, Reason } from "../domain/triage.ts";
import { ON_START } from "../domain/vocabulary.ts";
import { shownChance } from "./chance.ts";
import { line, phrase } from "./decision.ts";

/** An answer that moves the odds by less than this is not worth a person's eye. */
const WORTH_SAYING_DECIBANS = 1;

/** What a list's denied member begins with. */
const DENIED = "not ";

/** Members of a group that are named; the rest would not be read. */
const MEMBERS_NAMED = 4;

type Answer = Pick<Reason, "observation" | "state">;

const kindOf = (id: string, { acts, remedies }: Knowledge) =>
  acts.has(id) ? "act" : remedies.has(id) ? "remedy" : "observation";

const units: readonly Unit[] = ["V", "A", "°C", "h", "bar", "SG", "Ω", "rpm"];

/** A reading as text, `12.5 V`, as a figure that each language writes its own way. */
function readingArg(state: string): Arg {
  const [, figure = "", sign] = /^(-?\d+(?:\.\d+)?) ?(\S*)$/.exec(state) ?? [];
  const unit = units.find((one) => one === sign);
  if (figure === "") return state;
  return unit === undefined ? state : { quantity: Number(figure), unit };
}

/** The state in words: a reading as it stands, an act's outcome, or a state of the knowledge. */
function stateArg({ observation, state }: Answer, knowledge: Knowledge): Arg {
  if (/^[-\d]/.test(state)) return readingArg(state);
  if (kindOf(observation, knowledge) !== "observation")
    return { phrase: phrase(`outcome-${state}`) };
  const denied = state.startsWith(DENIED);
  const id = denied ? state.slice(DENIED.length) : state;
  const word: Arg = { know: wordKey("state", `${observation}.${id}`) };
  return denied ? { phrase: phrase("reason-not", { state: word }) } : word;
}

/** What was told, each once: told again by somebody else it is still the same answer. */
function answersOf(reason: Reason): readonly Answer[] {
  const seen = new Set<string>();
  return [reason, ...reason.members].filter(({ observation, state }) => {
    const key = `${observation} ${state}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function reasonPhrase(reason: Reason, knowledge: Knowledge): Phrase {
  const weight: Arg = { quantity: Math.abs(reason.decibans), unit: "dB", digits: 0 };
  const name = ({ observation }: Answer): Arg => ({
    know: wordKey(kindOf(observation, knowledge), observation),
  });
  const speaksFor = reason.decibans > 0;
  const answers = answersOf(reason);
  if (answers.length === 1) {
    const said = { what: name(reason), state: stateArg(reason, knowledge), weight };
    return phrase(speaksFor ? "reason-for" : "reason-against", said);
  }
  const list = answers.slice(0, MEMBERS_NAMED).map((one): Arg => {
    const named = { name: name(one), state: stateArg(one, knowledge) };
    return { phrase: phrase("reason-member", named) };
  });
  return phrase(speaksFor ? "reason-for-together" : "reason-against-together", {
    what: { list },
    weight,
  });
}

/** Answers named in a brief reason: more would be cut. */
const BRIEF = 3;

/** The strongest answer for or against a cause in a few words, for a picture; null: none counts. */
export function briefReason(cause: RankedCause, knowledge: Knowledge): Phrase | null {
  const [reason] = cause.reasons;
  if (reason === undefined || Math.abs(reason.decibans) < WORTH_SAYING_DECIBANS) return null;
  const list = briefAnswers(reason, knowledge);
  return phrase(reason.decibans > 0 ? "brief-for" : "brief-against", { what: { list } });
}

function briefAnswers(reason: Reason, knowledge: Knowledge): Arg[] {
  return answersOf(reason)
    .slice(0, BRIEF)
    .map((one): Arg => {
      const state = stateArg(one, knowledge);
      // A figure or an outcome alone says nothing; a state's own words say what they are about.
      const kind = kindOf(one.observation, knowledge);
      const isFigure =
        typeof state === "string" || typeof state === "number" || "quantity" in state;
      if (!isFigure && kind === "observation") return state;
      const name = { know: wordKey(kind, one.observation) };
      return { phrase: phrase("reason-member", { name, state }) };
    });
}

/** Which answers a brief reason names, whatever their order; null: none. */
function answersNamed({ reasons: [reason] }: RankedCause): string | null {
  if (reason === undefined) return null;
  const named = answersOf(reason).slice(0, BRIEF);
  return named
    .map(({ observation, state }) => `${observation} ${state}`)
    .sort()
    .join();
}

/**
 * The strongest reason of each cause in a few words, in their order; where it is the answers that
 * stand with the first cause only that is said: the same line six times is read by nobody.
 */
export function briefReasons(
  causes: readonly RankedCause[],
  knowledge: Knowledge,
): readonly (Phrase | null)[] {
  const [first] = causes;
  return causes.map((cause) => {
    const brief = briefReason(cause, knowledge);
    if (cause === first || first === undefined || brief === null) return brief;
    if (answersNamed(cause) !== answersNamed(first)) return brief;
    const speaksFor = (cause.reasons[0]?.decibans ?? 0) > 0;
    return phrase(speaksFor ? "brief-for-same" : "brief-against-same");
  });
}

const causeLine = ({ fault, probability }: RankedCause): Line =>
  line(
    phrase("cause-line", {
      cause: { know: wordKey("fault", fault) },
      chance: { quantity: shownChance(probability), unit: "percent" },
    }),
    "step",
  );

/**
 * Causes and what speaks for them, in lines: the first with its reasons, the others briefly.
 * @param most reasons told of the first cause
 */
export function causesWithReasons(
  causes: readonly RankedCause[],
  most: number,
  knowledge: Knowledge,
): Line[] {
  const brief = briefReasons(causes, knowledge);
  return causes.flatMap((cause, rank) => {
    const few = brief[rank] ?? null;
    const short = few === null ? [] : [line(few, "bullet")];
    return [causeLine(cause), ...(rank === 0 ? reasonLines(cause, most, knowledge) : short)];
  });
}

/** Why it may be this, for somebody to whom a weight says nothing: the answers that speak for it. */
export function plainReason(cause: RankedCause, knowledge: Knowledge): Line[] {
  const reason = cause.reasons.find(({ decibans }) => decibans >= WORTH_SAYING_DECIBANS);
  if (reason === undefined) return [];
  const list = [reason, ...reason.members].slice(0, BRIEF).map((one): Arg => {
    const state = stateArg(one, knowledge);
    if (one.observation === ON_START) return state;
    const name = { know: wordKey(kindOf(one.observation, knowledge), one.observation) };
    return { phrase: phrase("reason-member", { name, state }) };
  });
  const said = { what: { list, parted: true } } as const;
  return [line(phrase("reason-plain", said), "bullet")];
}

/** The strongest answers for and against a cause, strongest first. */
export function reasonLines(cause: RankedCause, most: number, knowledge: Knowledge): Line[] {
  return cause.reasons
    .filter((reason) => Math.abs(reason.decibans) >= WORTH_SAYING_DECIBANS)
    .slice(0, most)
    .map((reason) => line(reasonPhrase(reason, knowledge), "bullet"));
}
