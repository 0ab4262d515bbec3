import type { JointLikelihood } from "../domain/joint-likelihood.ts";
import type { Fault, Knowledge } from "../domain/knowledge.ts";
import { crankingStates, firingStates, ON_START } from "../domain/vocabulary.ts";
import { EvidenceTranslator, type JointEvidence, TURNS, unforeseen } from "./joint-evidence.ts";
import { type Firing, firingOf } from "./joint-start.ts";
import type { EvidenceGroup, Hypotheses, Measurements, Seen } from "./model.ts";

/**
 * How often a real machine is like none of those simulated: another wiring, two joints bad at once,
 * somebody else's idea of dim. Then it is weighed by rows, as what the trade says on average, lest
 * one answer that the circuit model gets wrong rule the true cause out. The largest share of those
 * tried (0, 0.05, 0.1, 0.2, 0.35, 0.5) that costs at most 0.05 of log loss on simulated machines of
 * another maker, with second faults, told of by a distracted observer, after 4, 8 and 14 answers.
 */
export const UNLIKE_SIMULATED = 0.1;

/** A fault lets the engine turn as if nothing were wrong with the circuit from this chance on. */
const TRANSPARENT = 0.98;

export interface JointParts {
  readonly knowledge: Knowledge;
  readonly hypotheses: Hypotheses;
  readonly joint: JointLikelihood;
  /** The groups that these observations would form without the circuit. */
  readonly rows: readonly EvidenceGroup[];
  readonly volts: number;
}

/** What is worked out once for a machine's circuit. */
export interface JointContext extends JointParts {
  readonly translator: EvidenceTranslator;
  /** Entry of the circuit for each known hypothesis, -1: weighed by rows. */
  readonly entries: Int32Array;
  /** Prior mass of the hypotheses that look up each entry. */
  readonly entryPriors: Float64Array;
  readonly firing: Firing;
  readonly likelihood: (evidence: JointEvidence) => Float64Array;
}

export function jointContext(parts: JointParts): JointContext {
  const { joint, knowledge, hypotheses } = parts;
  const entries = entriesOf(parts);
  const entryPriors = new Float64Array(joint.hypotheses.length);
  for (const [h, entry] of entries.entries()) {
    if (entry >= 0) entryPriors[entry] = (entryPriors[entry] ?? 0) + (hypotheses.prior[h] ?? 0);
  }
  return {
    ...parts,
    translator: new EvidenceTranslator(joint, knowledge.observations, parts.volts),
    entries,
    entryPriors,
    firing: firingOf(knowledge, hypotheses),
    likelihood: remember((evidence) => joint.logLikelihood(evidence.items).map(Math.exp)),
  };
}

/** Evidence asked about is asked about again within one choice: keep the last answers. */
const KEPT = 64;

function remember(compute: (evidence: JointEvidence) => Float64Array) {
  const kept = new Map<string, Float64Array>();
  return (evidence: JointEvidence): Float64Array => {
    const known = kept.get(evidence.key) ?? compute(evidence);
    kept.delete(evidence.key);
    kept.set(evidence.key, known);
    const oldest = kept.keys().next();
    if (kept.size > KEPT && oldest.done !== true) kept.delete(oldest.value);
    return known;
  };
}

function entriesOf({ knowledge, hypotheses, joint }: JointParts): Int32Array {
  const entryOf = new Map(joint.hypotheses.map((id, entry) => [id, entry]));
  const { first, second, faults } = hypotheses;
  return Int32Array.from({ length: hypotheses.count - 1 }, (_, h) => {
    const present = [first[h] ?? -1, second[h] ?? -1].filter((f) => f >= 0);
    const ids = present.map((f) => faults[f] ?? "");
    const inside = ids.filter((id) => entryOf.has(id));
    const outside = ids.filter((id) => !entryOf.has(id));
    if (!outside.every((id) => letsTurn(knowledge.faults.get(id)))) return -1;
    const [a = "nothing-wrong", b] = inside;
    if (b === undefined) return entryOf.get(a) ?? -1;
    return entryOf.get(`${a}+${b}`) ?? entryOf.get(`${b}+${a}`) ?? -1;
  });
}

function letsTurn(fault: Fault | undefined): boolean {
  return (fault?.cranking[crankingStates.indexOf("turns")] ?? 0) >= TRANSPARENT;
}

/** What was seen of the circuit's own observations. */
export function insideOf({ joint }: JointContext, seen: Seen): Seen {
  return new Map([...seen].filter(([id]) => joint.observations.has(id)));
}

/** Splits the evidence by whether the engine turns: the likelihood is the sum of the two. */
export function halves(
  { translator, knowledge, joint }: JointContext,
  seen: Seen,
  measured?: Measurements,
) {
  const translate = (onStart: Readonly<Record<string, number>> | null) =>
    translator.translate(seen, onStart, measured);
  const reported = seen.get(ON_START);
  if (reported === undefined) return { stays: null, turns: translate(null) };
  const states = knowledge.observations.get(ON_START)?.states ?? [];
  const chances = unforeseen(joint, reported);
  const cranking = states.flatMap((state, s) =>
    firingStates.some((firing) => firing === state.id) ? [] : [[state.id, chances[s] ?? 0]],
  );
  return {
    stays: translate({ ...Object.fromEntries(cranking), [TURNS]: 0 }),
    turns: translate({ [TURNS]: 1 }),
  };
}

/** P(reports | hypothesis) by the rows of the groups that they would form without the circuit. */
export function weighRows(rows: readonly EvidenceGroup[], seen: Seen, count: number): Float64Array {
  const like = new Float64Array(count).fill(1);
  for (const group of rows) {
    const weighed = group.weigh(seen);
    for (let h = 0; h < count; h++) {
      like[h] = (like[h] ?? 0) * (weighed.like[weighed.rowOf[h] ?? 0] ?? 0);
    }
  }
  return like;
}
