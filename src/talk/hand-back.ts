import { chanceHolds } from "../diagnosis/machine-condition.ts";
import type { Asking } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line, Phrase } from "../domain/effects.ts";
import { type Check, wordKey } from "../domain/knowledge.ts";
import type { CauseGroup } from "../domain/vocabulary.ts";
import { type Choice, stateLabel } from "./choices.ts";
import { line, phrase } from "./decision.ts";
import { type Desk, machineOf } from "./desk.ts";

/**
 * Work on these parts can leave a machine that starts in gear, with the drive engaged or with nobody
 * on the seat: the key's way to the starter runs through them, or they were off to reach it.
 */
const startCircuit: ReadonlySet<CauseGroup> = new Set<CauseGroup>([
  "terminals",
  "ground",
  "power-cable",
  "fuse-breaker",
  "key-switch",
  "interlock",
  "relay-solenoid",
  "starter-motor",
  "starter-drive",
  "wiring-controller",
]);

/** Checks by whose name the knowledge says that they belong to giving a machine back. */
const PREFIX = "hand-back-";
/** Under which name the general question is kept, where the knowledge has no check of its own. */
const GENERAL = "interlocks";
/** Less likely than this the machine does not have what the check is about. */
const LEAST_CHANCE = 0.05;

/** Did this case's work touch what keeps the machine from starting by surprise? */
export function workedOnStartCircuit(state: CaseState, desk: Desk): boolean {
  const { faults, remedies } = desk.knowledge;
  const tried = new Set(
    state.remediesDone.map((done) => done.remedy).filter((id) => remedies.has(id)),
  );
  const touched = [
    ...(state.confirmed?.faults ?? []),
    ...state.remediesDone.map((done) => done.fault),
    ...[...faults.values()]
      .filter((fault) => fault.remedies.length > 0 && fault.remedies.every((id) => tried.has(id)))
      .map((fault) => fault.id),
  ];
  // Words of one's own may mean anything: then it is asked.
  if (state.confirmed !== null && state.confirmed.faults.length === 0) return true;
  return touched.some((id) => {
    const group = faults.get(id)?.group;
    return group !== undefined && startCircuit.has(group);
  });
}

function checksFor(state: CaseState, desk: Desk): string[] {
  const facts = machineOf(state);
  const kind = desk.knowledge.machines.get(facts.kind);
  return [...desk.knowledge.checks.values()]
    .filter((check) => check.id.startsWith(PREFIX))
    .filter((check) => chanceHolds(check.needs, facts, kind, 1) > LEAST_CHANCE)
    .map((check) => check.id);
}

/** Under which name an answer to this question is kept. */
export const handBackName = (asking: { readonly check?: string }): string =>
  asking.check ?? GENERAL;

/** The next thing to be tried before the machine is given back, or null where all is on record. */
export function nextHandBack(state: CaseState, desk: Desk): Asking | null {
  if (!workedOnStartCircuit(state, desk)) return null;
  const onRecord = new Set(
    state.handBack.filter((one) => one.outcome !== "not-fine").map((one) => one.check),
  );
  const checks = checksFor(state, desk);
  if (checks.length === 0) return onRecord.has(GENERAL) ? null : { about: "hand-back" };
  const check = checks.find((id) => !onRecord.has(id));
  return check === undefined ? null : { about: "hand-back", check };
}

type HandBack = Extract<Asking, { about: "hand-back" }>;

const plainChoice = (value: string): Choice => ({ value, label: phrase(`hand-back-${value}`) });

const bandOf = (check: Check | undefined, state: string) =>
  check?.verdicts.find((verdict) => verdict.states.includes(state));

/** The results to press: the check's own states, or fine and not fine; and that it was not tested. */
export function handBackChoices(asking: HandBack, { knowledge }: Desk): readonly Choice[] {
  const check = knowledge.checks.get(asking.check ?? "");
  const states = knowledge.observations.get(check?.yields ?? "")?.states;
  const results =
    states?.map(({ id }): Choice => ({ value: id, label: stateLabel(check?.yields ?? "", id) })) ??
    ["fine", "not-fine"].map(plainChoice);
  return [...results, plainChoice("could-not")];
}

export interface HandBackResult {
  readonly outcome: "fine" | "not-fine" | "could-not";
  /** What it means, in the check's own words. */
  readonly verdict: readonly Line[];
}

/** What a pressed result comes to: a state that a verdict speaks of is one to be put right. */
export function handBackOutcome(asking: HandBack, value: string, desk: Desk): HandBackResult {
  if (value === "could-not" || value === "fine" || value === "not-fine") {
    return { outcome: value, verdict: [] };
  }
  const check = desk.knowledge.checks.get(asking.check ?? "");
  const verdict = bandOf(check, value);
  if (check === undefined || verdict === undefined) return { outcome: "fine", verdict: [] };
  const words = { know: wordKey("verdict", `${check.id}.${verdict.id}`) };
  return { outcome: "not-fine", verdict: [line(words, "caution")] };
}

const checkName = (check: string): Phrase =>
  check === GENERAL ? phrase("hand-back-interlocks") : { know: wordKey("check", check) };

/** What is asked, in the check's own words where it has them. */
export function handBackLines(check: string | undefined, desk: Desk): Line[] {
  const known = check === undefined ? undefined : desk.knowledge.checks.get(check);
  if (known === undefined) {
    return [line(phrase("ask-hand-back"), "heading"), line(phrase("hand-back-how"))];
  }
  const how = known.how === undefined ? [] : [line({ know: wordKey("check", known.id, "how") })];
  return [line({ know: wordKey("check", known.id, "ask") }, "heading"), ...how];
}

/** What could not be tested, for whoever gets the machine back. */
export function untestedLines(state: CaseState): Line[] {
  return state.handBack
    .filter((one) => one.outcome === "could-not")
    .map((one) =>
      line(
        phrase("hand-back-untested", {
          what: { phrase: checkName(one.check) },
          why: one.why ?? "",
        }),
        "caution",
      ),
    );
}
