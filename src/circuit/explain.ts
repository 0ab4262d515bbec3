import type {
  CircuitEvidence,
  CircuitNetwork,
  JointLikelihood,
  ReadingEvidence,
  ReadingRange,
} from "../domain/circuit.ts";
import { blunderFloor } from "./evidence-table.ts";

/** One item of evidence as a hypothesis sees it. */
export interface ItemReason {
  readonly item: CircuitEvidence;
  /** P(item | hypothesis, all other items), in natural logarithm. */
  readonly log: number;
  /** For a reading: what the machines that fit all the other items would show. */
  readonly expected?: ReadingRange;
}

/**
 * Each item against what the machines that fit all the other items show, so that answers which say
 * the same thing are not counted twice.
 * @param hypothesis one of the joint likelihood's
 */
export function explainItems(
  joint: JointLikelihood,
  evidence: readonly CircuitEvidence[],
  hypothesis: string,
): readonly ItemReason[] {
  const h = joint.hypotheses.indexOf(hypothesis);
  if (h < 0) throw new RangeError(`the joint likelihood has no hypothesis "${hypothesis}"`);
  const all = joint.logLikelihood(evidence)[h] ?? 0;
  return evidence.map((item, i) => {
    const others = evidence.toSpliced(i, 1);
    const log = all - (joint.logLikelihood(others)[h] ?? 0);
    if (item.kind !== "reading") return { item, log };
    const expected = joint.expected(others, item.observation, [hypothesis])[0];
    return expected === undefined ? { item, log } : { item, log, expected };
  });
}

/** A reading counts as unexplained while a blunder explains it about as well as any machine. */
const BLUNDER_FACTOR = 5;

/**
 * The readings that no simulated machine which fits the other evidence could show, whatever its
 * fault: 48 V on a 12 V machine, 13 V at the starter with 6 V at the post. Where the probes were is
 * then worth asking. The best hypothesis speaks for all: that few faults explain a reading makes it
 * no riddle.
 */
export function unexplained(
  network: CircuitNetwork,
  joint: Pick<JointLikelihood, "logLikelihood">,
  evidence: readonly CircuitEvidence[],
): readonly ReadingEvidence[] {
  const best = (items: readonly CircuitEvidence[]) => Math.max(...joint.logLikelihood(items));
  const all = best(evidence);
  return evidence.filter((item, i): item is ReadingEvidence => {
    if (item.kind !== "reading") return false;
    return (
      all - best(evidence.toSpliced(i, 1)) < Math.log(BLUNDER_FACTOR * blunderFloor(network, item))
    );
  });
}
