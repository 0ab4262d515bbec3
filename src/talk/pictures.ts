import type { CaseState } from "../domain/case-state.ts";
import type { Phrase, PlannedEffect } from "../domain/effects.ts";
import type { ReadingRange } from "../domain/joint-likelihood.ts";
import { type Knowledge, type Observation, wordKey } from "../domain/knowledge.ts";
import type { CauseBar, CausesCard, CircuitCard, CircuitWish } from "../domain/paper.ts";
import type { Triage } from "../domain/triage.ts";
import { ON_START } from "../domain/vocabulary.ts";
import { shownChance } from "./chance.ts";
import { stateLabel } from "./choices.ts";
import { type Decision, nothingToDo, phrase, say } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { plainState } from "./place.ts";
import { briefReasons } from "./reasons.ts";

const CAUSES_DRAWN = 6;
/** Causes whose reading stands beside a healthy machine's: more would not be read. */
const CAUSES_BESIDE = 2;

const percent = (chance: number): Phrase =>
  phrase("share-only", { chance: { quantity: shownChance(chance), unit: "percent" } });

/** The leading causes as bars, each with its strongest reason. */
export function causeBars(
  { ranking }: Triage,
  most: number,
  knowledge: Knowledge,
): readonly CauseBar<Phrase>[] {
  const drawn = ranking.causes.slice(0, most);
  const reasons = briefReasons(drawn, knowledge);
  return drawn.map((cause, rank) => {
    const reason = reasons[rank] ?? null;
    return {
      name: { know: wordKey("fault", cause.fault) },
      share: Math.min(1, cause.probability),
      shareText: percent(cause.probability),
      ...(reason === null ? {} : { reason }),
    };
  });
}

const machineTitle = (state: CaseState): Phrase =>
  phrase("sheet-title", {
    number: state.id,
    machine: { know: wordKey("machine", state.machine.kind ?? "other") },
  });

/** The likely causes as a picture: what stands out is seen before a line of it is read. */
export function causesCard(state: CaseState, desk: Desk): CausesCard<Phrase> {
  const triage = desk.triage(state, "technician");
  const { somethingElse } = triage.ranking;
  const symptom = plainState(state, ON_START);
  const complaint = symptom === null ? phrase("symptom-unknown") : stateLabel(ON_START, symptom);
  const rest: CauseBar<Phrase> = {
    ...{ name: phrase("share-else"), share: somethingElse, hollow: true },
    shareText: percent(somethingElse),
  };
  return {
    ...{ kind: "causes", name: `causes-${state.id}`, title: machineTitle(state) },
    subtitle: phrase("slip-complaint", { what: { phrase: complaint } }),
    bars: [...causeBars(triage, CAUSES_DRAWN, desk.knowledge), rest],
  };
}

function rangeArgs({ median, low, high }: ReadingRange, unit: "V" | "A" | "Ω") {
  const value = (quantity: number) => ({ quantity, unit, digits: 1 });
  return { median: value(median), low: value(low), high: value(high) };
}

/** Less than this a pocket meter does not show, in its own unit: common practice. */
const SHOWN_BY_A_METER = 0.1;

/** A cause whose usual reading a healthy machine shows as well says nothing at this point. */
const isTelling = (healthy: ReadingRange, { median }: ReadingRange) =>
  median < healthy.low - SHOWN_BY_A_METER || median > healthy.high + SHOWN_BY_A_METER;

/** What the meter should show at a test point: on a healthy machine and with the leading causes. */
export function readingPhrase(observation: Observation, state: CaseState, desk: Desk): Phrase {
  const name = { know: wordKey("observation", observation.id) };
  const { unit } = observation;
  const electric = unit === "V" || unit === "A" || unit === "Ω" ? unit : null;
  const found = electric === null ? null : (desk.expected?.(state, observation.id) ?? null);
  if (found === null || electric === null) return phrase("point-only", { name });
  const healthy = phrase("expected-healthy", rangeArgs(found.healthy, electric));
  const causes = found.causes
    .filter(({ range }) => isTelling(found.healthy, range))
    .slice(0, CAUSES_BESIDE)
    .map(({ fault, range }) => ({
      phrase: phrase("point-cause", {
        cause: { know: wordKey("fault", fault) },
        median: rangeArgs(range, electric).median,
      }),
    }));
  const readings = [{ phrase: healthy }, ...causes];
  return phrase(`point-readings-${readings.length}`, {
    name,
    ...Object.fromEntries(readings.map((reading, i) => [`reading${i + 1}`, reading])),
  });
}

/** The machine's starting circuit, the leading cause's parts marked, with a reading at each point. */
export function circuitWish(state: CaseState, desk: Desk): CircuitWish<Phrase> {
  const { kind = "other", fuel, volts } = state.machine;
  const fault = desk.triage(state, "technician").ranking.causes[0]?.fault;
  const points = [...desk.knowledge.observations.values()].filter(({ unit }) => unit === "V");
  return {
    ...{ title: phrase("sheet-circuit"), kind },
    ...(fuel === undefined ? {} : { fuel }),
    ...(volts === undefined ? {} : { volts }),
    ...(fault === undefined ? {} : { fault }),
    headings: {
      supply: phrase("circuit-supply"),
      control: phrase("circuit-control"),
      power: phrase("circuit-power"),
    },
    readings: points.map((one) => ({ point: one.id, words: readingPhrase(one, state, desk) })),
  };
}

/** The circuit with its readings as a picture. */
export function circuitCard(state: CaseState, desk: Desk): CircuitCard<Phrase> {
  return { kind: "circuit", name: `circuit-${state.id}`, circuit: circuitWish(state, desk) };
}

interface Reader {
  readonly chat: string;
  readonly language: string;
  readonly topic?: number;
}

/** The picture of the causes as a message of its own, once anything is known. */
export function causesEffects(to: Reader, state: CaseState, desk: Desk): PlannedEffect[] {
  if (state.answers.length === 0) return [];
  return [say(to, { lines: [], paper: causesCard(state, desk) })];
}

/** One of the pictures for whoever pressed for it. */
export function pictureTo(
  to: Reader,
  which: "causes" | "circuit",
  given: { readonly state: CaseState; readonly desk: Desk },
): Decision {
  const { state, desk } = given;
  if (state.answers.length === 0) return { ...nothingToDo, toast: phrase("sheet-too-early") };
  const paper = which === "causes" ? causesCard(state, desk) : circuitCard(state, desk);
  return { happenings: [], effects: [say(to, { lines: [], paper })] };
}
