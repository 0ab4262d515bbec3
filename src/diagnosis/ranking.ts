import type { Evidence, Report } from "../domain/evidence.ts";
import type { RankedCause, Ranking, Reason } from "../domain/triage.ts";
import { standingReports } from "./arrange.ts";
import { type Belief, believe, updateBelief, weighEvidence } from "./belief.ts";
import { technicianProspects } from "./channel.ts";
import { lookAlikes } from "./look-alikes.ts";
import { decibans, type Marginals, marginalsOf } from "./marginals.ts";
import { wouldChangeMind } from "./mind-changer.ts";
import { doesNotFit } from "./misfits.ts";
import type { Model } from "./model.ts";
import { unexplainedReadings } from "./unexplained-readings.ts";

/** Reasons weaker than this say nothing a person could use. */
const LEAST_DECIBANS = 0.05;

/**
 * The causes by falling probability, each with its reasons; they sum to 1 with "something else"
 * and "nothing wrong". The order is the same however the knowledge is sorted.
 * @param belief what `updateBelief` says of the same evidence, where the caller has it
 */
export function rankCauses(model: Model, evidence: Evidence, belief?: Belief): Ranking {
  const believed = belief ?? updateBelief(model, evidence);
  const all = marginalsOf(model, believed.probability);
  const contributions = contributionsOf(model, evidence);
  const given = { evidence, belief: believed, prospects: technicianProspects(model, evidence) };
  const causes = model.hypotheses.faults
    .map((fault, index) => rankedCause(model, { fault, index, all, contributions }))
    .sort((a, b) => b.probability - a.probability || (a.fault < b.fault ? -1 : 1));
  return {
    causes,
    somethingElse: all.somethingElse,
    nothingWrong: all.nothingWrong,
    doesNotFit: doesNotFit(model, evidence, believed),
    unexplained: unexplainedReadings(model, evidence),
    alike: lookAlikes(model, given, causes),
    wouldChangeMind: wouldChangeMind(model, given),
  };
}

/** An answer, a whole group of answers, or what came of an act, and the belief without it. */
interface Contribution {
  readonly said: readonly { readonly observation: string; readonly state: string }[];
  readonly without: Marginals;
}

interface Cause {
  readonly fault: string;
  readonly index: number;
  readonly all: Marginals;
  readonly contributions: readonly Contribution[];
}

function rankedCause(model: Model, cause: Cause): RankedCause {
  const probability = cause.all.faults[cause.index] ?? 0;
  const reasons = cause.contributions
    .map(({ said, without }) => {
      const [head, ...members] = said;
      const weight = decibans(probability, without.faults[cause.index] ?? 0);
      return { ...(head ?? { observation: "", state: "" }), decibans: weight, members };
    })
    .filter((reason) => Math.abs(reason.decibans) >= LEAST_DECIBANS)
    .sort(strongestFirst);
  const group = model.knowledge.faults.get(cause.fault)?.group ?? "other";
  return { fault: cause.fault, group, probability, reasons };
}

function strongestFirst(a: Reason, b: Reason): number {
  const byWeight = Math.abs(b.decibans) - Math.abs(a.decibans);
  return Math.abs(byWeight) > 1e-9 ? byWeight : a.observation < b.observation ? -1 : 1;
}

function contributionsOf(model: Model, evidence: Evidence): readonly Contribution[] {
  const weighed = weighEvidence(model, evidence);
  const byGroup = new Map<number, { observation: string; state: string }[]>();
  for (const { report } of standingReports(model, evidence)) {
    if (report.said.kind === "unknown" || report.hedge === 1) continue;
    const group = model.observations.get(report.observation)?.group ?? -1;
    byGroup.set(group, [...(byGroup.get(group) ?? []), ...wordsOf(model, report)]);
  }
  const groups = [...byGroup].map(([group, said]) => ({
    said: said.sort((a, b) => (a.observation < b.observation ? -1 : 1)),
    without: marginalsOf(model, believe(model, weighed, { group }).probability),
  }));
  const acts = [...evidence.acts]
    .sort((a, b) => a.epoch - b.epoch)
    .flatMap((done, act) => {
      if (done.outcome !== "cured" && done.outcome !== "no-change") return [];
      const without = marginalsOf(model, believe(model, weighed, { act }).probability);
      return [{ said: [{ observation: done.act, state: done.outcome }], without }];
    });
  return [...groups, ...acts].filter(({ said }) => said.length > 0);
}

function wordsOf(model: Model, report: Report): { observation: string; state: string }[] {
  const { observation, said } = report;
  if (said.kind === "states") {
    const [best] = Object.entries(said.weights).sort(
      (a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1),
    );
    return best === undefined ? [] : [{ observation, state: best[0] }];
  }
  if (said.kind === "value") {
    const unit = model.knowledge.observations.get(observation)?.unit;
    return [{ observation, state: unit === undefined ? `${said.value}` : `${said.value} ${unit}` }];
  }
  if (said.kind === "members") {
    const named = said.present.length > 0 ? said.present : said.absent.map((m) => `not ${m}`);
    return named.map((state) => ({ observation, state }));
  }
  return [];
}
