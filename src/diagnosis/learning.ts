import type { Report } from "../domain/evidence.ts";
import type { Knowledge, Observation, Row } from "../domain/knowledge.ts";
import { OutOfRange, UnknownId } from "../domain/result.ts";
import { type MachineKindId, ON_START, type Reporter, reporters } from "../domain/vocabulary.ts";
import type { LearnedConfusion } from "./compile.ts";
import { sharesOf } from "./hypotheses.ts";
import { composeStart, startRow } from "./start-rows.ts";

/** What a closed case says about its cause. */
export interface Closing {
  readonly case: string;
  /** Milliseconds since 1970 UTC; with the case's id it fixes the order of summing. */
  readonly at: number;
  readonly kind: MachineKindId;
  /** The faults that were confirmed; with several acts at once, all that were dealt with. */
  readonly faults: readonly string[];
  readonly how: "ran-after-this" | "measured" | "several-at-once" | "guess";
  /** The trouble came back within the window: the cause was not what it was taken for. */
  readonly cameBack: boolean;
  /** What was told before anything was done to the machine. */
  readonly reports: readonly Report[];
}

export interface Learned {
  /** Factor on each fault's share for a machine kind; 1 is left out. */
  readonly times: ReadonlyMap<string, number>;
  readonly confusion: LearnedConfusion;
}

/** Reports that a shipped row of a confusion table is worth. Estimate: one busy season's. */
export const REPORTER_STRENGTH = 40;

/**
 * How much each closing counts for each of its faults: 1 where one act or a measurement confirmed
 * it, shared where several things were done at once, 0 for a guess or after a comeback.
 */
export function weightOf(closing: Closing): number {
  if (closing.cameBack || closing.how === "guess" || closing.faults.length === 0) return 0;
  // Several things were done even where one alone is named: it has to share with what is not.
  return closing.how === "several-at-once" ? 1 / Math.max(2, closing.faults.length) : 1;
}

/**
 * Everything the closings teach, summed anew from the list in a fixed order: taking a closing away
 * gives exactly what there was without it.
 * @throws UnknownId for a fault that the knowledge no longer holds; see `usableClosings`
 */
export function learn(
  knowledge: Knowledge,
  closings: readonly Closing[],
  kind: MachineKindId,
): Learned {
  const ordered = inOrder(closings);
  return {
    times: learnRates(knowledge, ordered, kind),
    confusion: learnReporters(knowledge, ordered),
  };
}

/** Closings whose faults the knowledge still holds. */
export function usableClosings(
  knowledge: Knowledge,
  closings: readonly Closing[],
): readonly Closing[] {
  return closings.filter((closing) => closing.faults.every((id) => knowledge.faults.has(id)));
}

function inOrder(closings: readonly Closing[]): readonly Closing[] {
  return [...closings].sort((a, b) => a.at - b.at || (a.case < b.case ? -1 : 1));
}

/**
 * Dirichlet counts with the shipped shares of the kind as prior: (strength·shipped + count) ÷
 * (strength + all counts), as a factor on the shipped share. `rates.shareStrength` is in closings.
 */
export function learnRates(
  knowledge: Knowledge,
  closings: readonly Closing[],
  kind: MachineKindId,
): ReadonlyMap<string, number> {
  const strength = knowledge.rates.shareStrength;
  if (!(strength > 0)) throw new OutOfRange("rates.shareStrength", strength, "above 0");
  const shares = sharesOf(knowledge, { kind }, new Map());
  const whole = [...shares.values()].reduce((sum, share) => sum + share, 0);
  const counts = new Map<string, number>();
  let total = 0;
  for (const closing of inOrder(closings)) {
    if (closing.kind !== kind) continue;
    const weight = weightOf(closing);
    for (const fault of weight > 0 ? closing.faults : []) {
      if (!knowledge.faults.has(fault)) throw new UnknownId("fault", fault);
      counts.set(fault, (counts.get(fault) ?? 0) + weight);
      total += weight;
    }
  }
  const times = new Map<string, number>();
  if (total === 0) return times;
  for (const [fault, share] of shares) {
    const shipped = share / whole;
    const learned = (strength * shipped + (counts.get(fault) ?? 0)) / (strength + total);
    times.set(fault, learned / shipped);
  }
  return times;
}

/**
 * Confusion tables by expected counts: a report of a closed case counts for each true state with
 * P(true state | confirmed fault, report). Observations nobody reported keep the shipped table.
 */
export function learnReporters(
  knowledge: Knowledge,
  closings: readonly Closing[],
): LearnedConfusion {
  const counts = new Map<string, Partial<Record<Reporter, number[][]>>>();
  for (const closing of inOrder(closings)) {
    const weight = weightOf(closing);
    const [fault] = closing.faults;
    if (weight < 1 || closing.faults.length !== 1 || fault === undefined) continue;
    for (const report of closing.reports) count(knowledge, counts, { report, fault });
  }
  return new Map(
    [...counts].map(([id, byReporter]) => {
      const observation = observationOf(knowledge, id);
      const rows: Partial<Record<Reporter, readonly Row[]>> = {};
      for (const who of reporters) {
        const counted = byReporter[who];
        if (counted !== undefined) rows[who] = shrunk(observation.confusion[who], counted);
      }
      return [id, rows] as const;
    }),
  );
}

function observationOf(knowledge: Knowledge, id: string): Observation {
  const observation = knowledge.observations.get(id);
  if (observation === undefined) throw new UnknownId("observation", id);
  return observation;
}

/** Adds the expected counts of one plain report; readings, lists and hedged words teach nothing. */
function count(
  knowledge: Knowledge,
  counts: Map<string, Partial<Record<Reporter, number[][]>>>,
  of: { readonly report: Report; readonly fault: string },
): void {
  const { report, fault } = of;
  const observation = knowledge.observations.get(report.observation);
  if (observation?.kind !== "states" || report.said.kind !== "states" || report.hedge > 0) return;
  const { weights } = report.said;
  const truth = truthOf(knowledge, observation, fault);
  if (truth === undefined) return;
  const confusion = observation.confusion[report.reporter];
  const byReporter = counts.get(observation.id) ?? {};
  counts.set(observation.id, byReporter);
  const size = observation.states.length;
  const counted = byReporter[report.reporter] ?? truth.map(() => new Array<number>(size).fill(0));
  byReporter[report.reporter] = counted;
  const told = observation.states.map((state) => weights[state.id] ?? 0);
  for (const [s, weight] of told.entries()) {
    const joint = truth.map((chance, t) => chance * (confusion[t]?.[s] ?? 0));
    const total = joint.reduce((sum, value) => sum + value, 0);
    if (weight === 0 || total <= 0) continue;
    for (const [t, value] of joint.entries()) {
      const row = counted[t];
      if (row !== undefined) row[s] = (row[s] ?? 0) + (weight * value) / total;
    }
  }
}

function truthOf(knowledge: Knowledge, observation: Observation, id: string): Row | undefined {
  const fault = knowledge.faults.get(id);
  if (fault === undefined || observation.id !== ON_START) return fault?.rows.get(observation.id);
  return composeStart(
    startRow(fault),
    observation.states.map((state) => state.id),
  );
}

function shrunk(shipped: readonly Row[], counted: readonly (readonly number[])[]): readonly Row[] {
  return shipped.map((row, t) => {
    const own = counted[t] ?? [];
    const total = own.reduce((sum, value) => sum + value, 0);
    return row.map(
      (value, s) => (REPORTER_STRENGTH * value + (own[s] ?? 0)) / (REPORTER_STRENGTH + total),
    );
  });
}
