import type { ActDone, Evidence, Report } from "../domain/evidence.ts";
import type { Observation } from "../domain/knowledge.ts";
import { OutOfRange, UnknownId } from "../domain/result.ts";
import { ON_START, type Reporter } from "../domain/vocabulary.ts";
import { doneAct } from "./done-act.ts";
import type { CompiledObservation, Measured, Measurements, Model, Seen } from "./model.ts";
import { reportLikelihood } from "./report-likelihood.ts";

/** What was seen at one stretch of time: group index → its reports. */
export interface Layer {
  /** The epoch in which the stretch begins. */
  readonly epoch: number;
  readonly groups: ReadonlyMap<number, Seen>;
  /** How much likelier they were told because they come from the trouble; 1 where not named. */
  readonly unasked: ReadonlyMap<number, number>;
  readonly measured: Measurements;
}

/** Reports by stretch of time, and the acts between them, oldest first. */
export interface Arranged {
  readonly layers: readonly Layer[];
  readonly acts: readonly ActDone[];
}

/** Reports that stand, each with the epoch in which the fact it tells began. */
export interface StandingReport {
  readonly report: Report;
  readonly since: number;
}

/**
 * The reports that stand: the latest of each observation and reporter since an act last made the
 * observation stale. The same thing told again after an act that has nothing to do with it is the
 * same fact. Reports on observations that the knowledge cannot use are left out.
 * @throws UnknownId for an observation or act that does not exist, OutOfRange for an odd epoch
 */
export function standingReports(model: Model, evidence: Evidence): readonly StandingReport[] {
  const stale = new Map<string, number[]>();
  for (const done of evidence.acts) {
    checkEpoch(done.act, done.epoch);
    for (const id of doneAct(model.knowledge, done).makesStale)
      stale.set(id, [...(stale.get(id) ?? []), done.epoch]);
  }
  const standing = new Map<string, StandingReport>();
  for (const report of evidence.reports) {
    const id = report.observation;
    checkEpoch(id, report.epoch);
    if (!model.observations.has(id)) {
      if (!model.knowledge.observations.has(id)) throw new UnknownId("observation", id);
      continue;
    }
    const since = (stale.get(id) ?? [])
      .filter((epoch) => epoch <= report.epoch)
      .reduce((latest, epoch) => Math.max(latest, epoch), 0);
    const key = `${since} ${report.reporter} ${id}`;
    const before = standing.get(key);
    if (before === undefined || before.report.epoch <= report.epoch) {
      standing.set(key, { report, since });
    }
  }
  return [...standing.values()];
}

function checkEpoch(id: string, epoch: number): void {
  if (!(Number.isInteger(epoch) && epoch >= 0)) throw new OutOfRange(id, epoch, "an epoch from 0");
}

/**
 * The standing reports as likelihoods over true states, by stretch of time and group. Several
 * reporters of one fact are independent witnesses of one true state.
 */
export function arrange(model: Model, evidence: Evidence, volts: number): Arranged {
  const layers = new Map<number, Map<number, Map<string, Float64Array>>>();
  const unasked = new Map<number, Map<number, number>>();
  const measured = new Map<number, Map<string, readonly Measured[]>>();
  for (const { report, since } of standingReports(model, evidence)) {
    const observation = model.observations.get(report.observation);
    if (observation === undefined) continue;
    const likelihood = reportLikelihood(observation, report, volts);
    if (likelihood === null) continue;
    const layer = layers.get(since) ?? new Map<number, Map<string, Float64Array>>();
    layers.set(since, layer);
    const most = unasked.get(since) ?? new Map<number, number>();
    unasked.set(since, most);
    if (report.unasked === true && isPickedOut(observation.source)) {
      const times = model.knowledge.rates.unasked[report.reporter] ?? 1;
      most.set(observation.group, Math.max(times, most.get(observation.group) ?? 1));
    }
    const seen = layer.get(observation.group) ?? new Map<string, Float64Array>();
    layer.set(observation.group, seen);
    if (report.said.kind === "value" || report.probes !== undefined) {
      const told = measured.get(since) ?? new Map<string, readonly Measured[]>();
      const earlier = told.get(report.observation) ?? [];
      measured.set(
        since,
        told.set(report.observation, [...earlier, measuredOf(report, observation)]),
      );
    }
    const before = seen.get(report.observation);
    seen.set(
      report.observation,
      before === undefined ? likelihood : likelihood.map((value, s) => value * (before[s] ?? 1)),
    );
  }
  return {
    layers: [...layers]
      .sort(([a], [b]) => a - b)
      .map(([epoch, groups]) => ({
        epoch,
        unasked: unasked.get(epoch) ?? new Map<number, number>(),
        measured: measured.get(epoch) ?? new Map<string, readonly Measured[]>(),
        groups: new Map([...groups].sort(([a], [b]) => a - b)),
      })),
    acts: [...evidence.acts].sort((a, b) => a.epoch - b.epoch),
  };
}

/** Only a number that was plainly told is taken as a number. */
function measuredOf({ said, hedge, probes, reporter }: Report, of: CompiledObservation): Measured {
  return {
    ...(said.kind === "value" && hedge === 0 ? { value: said.value } : {}),
    ...(probes === undefined ? {} : { probes }),
    doubt: doubtOf(of, reporter),
  };
}

/** One reading in a hundred is a mistake whoever takes it. Estimate. */
const LEAST_DOUBT = 0.01;

/** Chance that this reporter tells something else than what is, on average over the states. */
export function doubtOf({ source }: CompiledObservation, reporter: Reporter): number {
  const right = source.confusion[reporter].map((row, state) => row[state] ?? 0);
  const mean = right.reduce((sum, value) => sum + value, 0) / Math.max(1, right.length);
  return Math.max(LEAST_DOUBT, 1 - mean);
}

/**
 * True where that it was told at all says something: the complaint itself everybody tells, and what
 * is only ever told unasked has that in its own numbers.
 */
function isPickedOut({ id, follows, toldOnly }: Observation): boolean {
  return id !== ON_START && follows?.observation !== ON_START && toldOnly !== true;
}
