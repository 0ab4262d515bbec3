import type { Evidence, Situation } from "../domain/evidence.ts";
import type { Act, Check, MachineCondition, StateCondition } from "../domain/knowledge.ts";
import type { Reporter } from "../domain/vocabulary.ts";
import { standingReports } from "./arrange.ts";
import { doneAct } from "./done-act.ts";
import { chanceHolds } from "./machine-condition.ts";
import { type Model, NOTHING_SEEN, type Seen } from "./model.ts";
import { refusalOf } from "./refused-act.ts";

/** Below this chance that the machine has the thing at all, it is not worth a question. */
const LIKELY_ENOUGH = 0.2;

/** A condition nobody has spoken about yet must at least be this likely. */
const CONDITION_LIKELY = 0.8;

/** A condition that was spoken about holds when it is more likely than not. */
const CONDITION_HELD = 0.5;

/** What may be asked of, or done by, a person now. */
export interface Candidates {
  readonly checks: readonly Check[];
  /** Open too, but only after one of `checks`. */
  readonly waiting: readonly Check[];
  readonly acts: readonly Act[];
}

export interface Looking {
  readonly model: Model;
  readonly evidence: Evidence;
  readonly situation: Situation;
  /** Belief over all hypotheses, for conditions. */
  readonly probability: Float64Array;
  readonly seen: ReadonlyMap<number, Seen>;
}

/** Whose word a person's answer is. */
export function reporterOf(situation: Situation): Reporter {
  if (situation.performer === "technician") return "technician";
  return situation.place === "for-someone-else" ? "second-hand" : "operator";
}

/** The checks and acts open to this person in this state of the machine, at this place. */
export function candidates(looking: Looking): Candidates {
  const { model } = looking;
  const known = knownObservations(looking);
  const open = [...model.knowledge.checks.values()].filter(
    (check) =>
      model.observations.has(check.yields) &&
      !known.has(check.yields) &&
      allowed(looking, check, check.atMachine) &&
      applies(looking, model.observations.get(check.yields)?.source.needs ?? {}) &&
      conditionsHold(looking, [
        ...check.onlyIf,
        ...(model.observations.get(check.yields)?.source.onlyIf ?? []),
      ]),
  );
  const openIds = new Set(open.map((check) => check.id));
  const waits = (check: Check): boolean => check.after.some((id) => openIds.has(id));
  const acts = [...model.knowledge.acts.values()].filter(
    (act) =>
      allowed(looking, act, true) &&
      !refused(looking, act) &&
      conditionsHold(looking, act.onlyIf) &&
      !looking.evidence.acts.some((done) => done.act === act.id),
  );
  return { checks: open.filter((c) => !waits(c)), waiting: open.filter(waits), acts };
}

/** How much a reporter's word weighs against another's: a technician may measure again. */
const standing: Readonly<Record<Reporter, number>> = {
  "second-hand": 0,
  operator: 1,
  photo: 1,
  technician: 2,
};

function knownObservations({ model, evidence, situation }: Looking): ReadonlySet<string> {
  const mine = standing[reporterOf(situation)];
  const lastStale = new Map<string, number>();
  for (const done of evidence.acts) {
    for (const id of doneAct(model.knowledge, done).makesStale) {
      lastStale.set(id, Math.max(lastStale.get(id) ?? 0, done.epoch));
    }
  }
  const known = new Set<string>();
  for (const { report, since } of standingReports(model, evidence)) {
    const current = since >= (lastStale.get(report.observation) ?? 0);
    if (current && standing[report.reporter] >= mine) known.add(report.observation);
  }
  return known;
}

function allowed(looking: Looking, asked: Check | Act, atMachine: boolean): boolean {
  const { situation } = looking;
  const operator = situation.performer === "operator";
  const away = situation.place === "not-there" || situation.place === "for-someone-else";
  return (
    asked.performers.includes(situation.performer) &&
    !situation.asked.includes(asked.id) &&
    !situation.refused.includes(asked.id) &&
    !(operator && atMachine && away) &&
    !(operator && asked.operatorHas.some((thing) => !situation.has.includes(thing))) &&
    applies(looking, asked.needs)
  );
}

function refused({ model, evidence, situation }: Looking, act: Act): boolean {
  if (situation.performer !== "operator") return false;
  const { facts, knowledge } = model;
  return refusalOf(act, facts, { evidence, knowledge }) !== undefined;
}

function applies({ model }: Looking, needs: MachineCondition): boolean {
  const { facts, knowledge } = model;
  return chanceHolds(needs, facts, knowledge.machines.get(facts.kind), 1) >= LIKELY_ENOUGH;
}

function conditionsHold(looking: Looking, conditions: readonly StateCondition[]): boolean {
  return conditions.every((condition) => {
    const spoken = looking.evidence.reports.some(
      (report) => report.observation === condition.observation && report.said.kind !== "unknown",
    );
    return conditionChance(looking, condition) >= (spoken ? CONDITION_HELD : CONDITION_LIKELY);
  });
}

/** P(the condition holds | everything told), over the known hypotheses. */
function conditionChance({ model, probability, seen }: Looking, by: StateCondition): number {
  const observation = model.observations.get(by.observation);
  const group = model.groups[observation?.group ?? -1];
  if (observation === undefined || group === undefined) return 0;
  const { rows, rowOf, width } = group.predict(
    seen.get(observation.group) ?? NOTHING_SEEN,
    by.observation,
  );
  const wanted = by.anyOf.flatMap((state) => observation.stateIndex.get(state) ?? []);
  let held = 0;
  let mass = 0;
  for (let h = 0; h < rowOf.length; h++) {
    const weight = probability[h] ?? 0;
    mass += weight;
    for (const s of wanted) held += weight * (rows[(rowOf[h] ?? 0) * width + s] ?? 0);
  }
  return mass > 0 ? held / mass : 0;
}
