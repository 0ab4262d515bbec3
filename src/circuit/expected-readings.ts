import type { TestPoint } from "../domain/circuit.ts";
import type { CircuitEvidence, JointLikelihood, ReadingRange } from "../domain/joint-likelihood.ts";
import { NOTHING_WRONG } from "./bank.ts";

/** What a meter should show at one test point: on a sound machine, and with each leading cause. */
export interface ExpectedReading {
  readonly testPoint: string;
  readonly quantity: TestPoint["quantity"];
  /** The class of machine, healthy, at this temperature. */
  readonly healthy: ReadingRange;
  /** This machine, by what is known of it, with each cause in the order asked. */
  readonly causes: readonly { readonly hypothesis: string; readonly range: ReadingRange }[];
}

/**
 * The readings to expect, for the plan and the sheet.
 * @param evidence all that is known so far
 * @param causes hypotheses of the joint likelihood, the leading ones first
 */
export function expectedReadings(
  joint: JointLikelihood,
  testPoints: readonly TestPoint[],
  evidence: readonly CircuitEvidence[],
  causes: readonly string[],
): readonly ExpectedReading[] {
  const healthy = testPoints.map(({ id }) => joint.expected([], id, [NOTHING_WRONG])[0]);
  return testPoints.flatMap(({ id, quantity }, i): ExpectedReading[] => {
    const sound = healthy[i];
    if (sound === undefined) return [];
    const ranges = joint.expected(evidence, id, causes);
    const byCause = causes.flatMap((hypothesis, c) => {
      const range = ranges[c];
      return range === undefined ? [] : [{ hypothesis, range }];
    });
    return [{ testPoint: id, quantity, healthy: sound, causes: byCause }];
  });
}
