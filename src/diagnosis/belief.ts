import type { Evidence } from "../domain/evidence.ts";
import { type Arranged, arrange } from "./arrange.ts";
import { actSomethingElse, logThroughActs } from "./epochs.ts";
import { type Term, termsOf, weighTerm } from "./evidence-terms.ts";
import type { LayerLog, PassageLog } from "./fault-path.ts";
import { type Model, type Seen, somethingElseOf } from "./model.ts";
import { passagesOf } from "./passages.ts";
import { logSomethingElse, logSum } from "./something-else.ts";

export interface Belief {
  /** P(hypothesis | evidence), one entry a hypothesis; sums to 1 within 1e-12. */
  readonly probability: Float64Array;
  /** Natural logarithm of P(evidence). */
  readonly logEvidence: number;
  /** True where no known hypothesis can explain the evidence: all belief is on something else. */
  readonly knownExcluded: boolean;
}

/** Evidence to leave out, for asking what it contributed. */
export interface LeftOut {
  /** Index of a group whose reports are left out. */
  readonly group?: number;
  /** Position, in order of epochs, of an act whose outcome is left out. */
  readonly act?: number;
}

/** The evidence of a case weighed group by group, once for each possible system voltage. */
export interface Weighed {
  readonly perVolts: readonly {
    readonly share: number;
    readonly arranged: Arranged;
    readonly terms: readonly Term[];
  }[];
  /** True where what one group says can depend on what another said. */
  readonly entangled: boolean;
}

/**
 * P(hypothesis | evidence) over all hypotheses, exactly, from scratch: no state is kept, so a
 * withdrawn or changed answer needs nothing special. The order of reports within an epoch does not
 * matter. Unknown system volts are averaged over as one unknown of the whole case.
 * @throws UnknownId, OutOfRange for evidence that names what does not exist
 */
export function updateBelief(model: Model, evidence: Evidence): Belief {
  return believe(model, weighEvidence(model, evidence));
}

/** @throws UnknownId, OutOfRange for evidence that names what does not exist */
export function weighEvidence(model: Model, evidence: Evidence): Weighed {
  const perVolts = model.volts.map(({ volts, share }) => {
    const arranged = arrange(model, evidence, volts);
    return { share, arranged, terms: termsOf(model, arranged) };
  });
  const entangled =
    evidence.acts.length > 0 ||
    evidence.reports.some(
      ({ observation }) => (model.observations.get(observation)?.source.onlyIf.length ?? 0) > 0,
    );
  return { perVolts, entangled };
}

/** The belief that weighed evidence gives, part of it left out where asked. */
export function believe(model: Model, weighed: Weighed, leftOut: LeftOut = {}): Belief {
  const joint = weighed.perVolts.map(({ share, arranged, terms }) => {
    const rest = without(arranged, leftOut);
    const kept = weighed.entangled
      ? termsOf(model, rest)
      : terms.filter((term) => term.group !== leftOut.group);
    return { share, log: logJoint(model, rest, kept) };
  });
  const [only] = joint;
  if (joint.length === 1 && only !== undefined) return normalise(only.log);
  const mixed = Float64Array.from({ length: model.hypotheses.count }, (_, h) =>
    logSum(joint.map(({ share, log }) => Math.log(share) + (log[h] ?? -Infinity))),
  );
  return normalise(mixed);
}

/** log P(hypothesis, evidence) for every hypothesis. */
function logJoint(model: Model, arranged: Arranged, terms: readonly Term[]): Float64Array {
  const known =
    arranged.acts.length === 0
      ? sumTerms(model, terms)
      : logThroughActs(model, arranged, {
          layers: layerLogs(model, arranged, terms),
          passages: passageLogs(model, arranged, terms),
        });
  const { prior, count } = model.hypotheses;
  const log = new Float64Array(count);
  for (let h = 0; h < count - 1; h++) log[h] = Math.log(prior[h] ?? 0) + (known[h] ?? 0);
  const other = somethingElseOf(model.hypotheses);
  const acts = arranged.acts.reduce(
    (sum, done) => sum + Math.log(actSomethingElse(model, done)),
    0,
  );
  log[other] =
    Math.log(prior[other] ?? 0) + logSomethingElse(asRepeated(model, arranged, terms)) + acts;
  return log;
}

/** Σ log P(reports of a group | hypothesis): one logarithm a distinct row. */
function sumTerms(model: Model, terms: readonly Term[]): Float64Array {
  const log = new Float64Array(model.hypotheses.count - 1);
  for (const { weighed } of terms) addLog(log, weighed);
  return log;
}

function addLog(log: Float64Array, weighed: Term["weighed"]): void {
  const { rowOf } = weighed;
  const logs = weighed.like.map(Math.log);
  for (let h = 0; h < log.length; h++) log[h] = (log[h] ?? 0) + (logs[rowOf[h] ?? 0] ?? 0);
}

function layerLogs(model: Model, arranged: Arranged, terms: readonly Term[]): LayerLog[] {
  return arranged.layers.map((layer, index) => {
    const here = terms.filter((term) => term.layer === index);
    const fresh = sumTerms(model, here);
    const untouched = new Float64Array(fresh.length);
    for (const term of here) {
      const repeat = repeatOf(model, arranged, { term, terms });
      if (repeat === null) addLog(untouched, term.weighed);
      else addRepeat(untouched, { ...repeat, term, rate: model.knowledge.rates.repeatsItself });
    }
    return { epoch: layer.epoch, fresh, untouched };
  });
}

/** Each passage with what the other groups say of the time after it. */
function passageLogs(model: Model, arranged: Arranged, terms: readonly Term[]): PassageLog[] {
  return passagesOf(model, arranged).map(({ epoch, group, passed }) => {
    const others = layerLogs(
      model,
      arranged,
      terms.filter((term) => term.group !== group),
    );
    const none = new Float64Array(model.hypotheses.count - 1);
    const besides = others.find((layer) => layer.epoch === epoch);
    return { epoch, passed, besides: besides ?? { fresh: none, untouched: none } };
  });
}

interface Repeat {
  /** The earlier stretch's reports of the group. */
  readonly earlier: Term;
  /** Both as reports of one and the same happening. */
  readonly merged: Term;
}

function repeatOf(
  model: Model,
  arranged: Arranged,
  of: { readonly term: Term; readonly terms: readonly Term[] },
): Repeat | null {
  const { layer, group, seen } = of.term;
  const earlier = of.terms.findLast((term) => term.group === group && term.layer < layer);
  if (earlier === undefined) return null;
  const both = new Map<string, Float64Array>(earlier.seen);
  for (const [id, likelihood] of seen) {
    const before = both.get(id);
    both.set(
      id,
      before === undefined ? likelihood : likelihood.map((v, s) => v * (before[s] ?? 1)),
    );
  }
  const merged = weighTerm(model, { arranged, layer, group }, both satisfies Seen);
  return { earlier, merged };
}

/** P(again | before) = rate·P(both at once)/P(before) + (1 − rate)·P(again). */
function addRepeat(log: Float64Array, of: Repeat & { term: Term; rate: number }): void {
  const { earlier, merged, term, rate } = of;
  for (let h = 0; h < log.length; h++) {
    const before = earlier.weighed.like[earlier.weighed.rowOf[h] ?? 0] ?? 0;
    const both = merged.weighed.like[merged.weighed.rowOf[h] ?? 0] ?? 0;
    const fresh = term.weighed.like[term.weighed.rowOf[h] ?? 0] ?? 0;
    const again = before > 0 ? rate * (both / before) + (1 - rate) * fresh : fresh;
    log[h] = (log[h] ?? 0) + Math.log(again);
  }
}

/** The terms as something else sees them: what was told before is likely to be told again. */
function asRepeated(model: Model, arranged: Arranged, terms: readonly Term[]) {
  if (arranged.layers.length < 2) return terms;
  const rate = model.knowledge.rates.repeatsItself;
  return terms.map((term) => {
    const repeat = repeatOf(model, arranged, { term, terms });
    if (repeat === null || repeat.earlier.predicted <= 0) return term;
    const again = repeat.merged.predicted / repeat.earlier.predicted;
    return { ...term, predicted: rate * again + (1 - rate) * term.predicted };
  });
}

function without(arranged: Arranged, leftOut: LeftOut): Arranged {
  const { group, act } = leftOut;
  return {
    layers:
      group === undefined
        ? arranged.layers
        : arranged.layers.map((layer) => ({
            ...layer,
            groups: new Map([...layer.groups].filter(([index]) => index !== group)),
          })),
    acts:
      act === undefined
        ? arranged.acts
        : arranged.acts.map((done, index) =>
            index === act ? { ...done, outcome: "unknown" as const } : done,
          ),
  };
}

function normalise(log: Float64Array): Belief {
  const logEvidence = logSum(log);
  const other = log.length - 1;
  const knownExcluded = log.every((value, h) => h === other || value === -Infinity);
  if (logEvidence === -Infinity) {
    // Not even something else allows it, for example a list that denies the impossible.
    const probability = new Float64Array(log.length);
    probability[other] = 1;
    return { probability, logEvidence, knownExcluded };
  }
  const probability = log.map((value) => Math.exp(value - logEvidence));
  return { probability, logEvidence, knownExcluded };
}
