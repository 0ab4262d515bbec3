import type { CircuitNetwork } from "../domain/circuit.ts";
import type {
  CircuitEvidence,
  JointLikelihood,
  ReadingEvidence,
  ReadingRange,
} from "../domain/joint-likelihood.ts";
import { blunderFloor } from "./evidence-table.ts";
import type { BestFits } from "./leave-out.ts";

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
  evidence: readonly CircuitEvidence[],
  { all, fits }: { readonly all: number; readonly fits: () => BestFits },
): readonly ReadingEvidence[] {
  const bounds = evidence.map((item) =>
    item.kind === "reading" ? Math.log(BLUNDER_FACTOR * blunderFloor(network, item)) : -Infinity,
  );
  // Without an item the rest fits at most perfectly: most often nothing needs to be left out.
  if (all >= Math.max(...bounds)) return [];
  const { without } = fits();
  return evidence.filter((item, i): item is ReadingEvidence => {
    if (item.kind !== "reading") return false;
    return all - (without[i] ?? 0) < (bounds[i] ?? -Infinity);
  });
}
