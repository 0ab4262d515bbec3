import type { CircuitAct } from "../domain/circuit.ts";
import type { JointContext } from "./joint-context.ts";
import type { JointEvidence } from "./joint-evidence.ts";
import type { Measurements, Seen } from "./model.ts";
import { mistakenReadings } from "./reading-item.ts";

/** What was seen of the circuit, and the numbers among it. */
export interface Numbers {
  readonly seen: Seen;
  readonly measured: Measurements | undefined;
  /** The act it was seen after; absent: as found. */
  readonly after?: CircuitAct;
}

/**
 * Rows know a reading by its band only, simulated machines by its number, and a number is always
 * less likely than its band. Weighed by this factor, P(bands) ÷ P(numbers) over all the simulated
 * hypotheses, numbers decide among those and are to the others what their bands are.
 * @returns positive and finite; 1 where no number was told
 */
export function numberScale(context: JointContext, { seen, measured, after }: Numbers): number {
  const { translator } = context;
  const told = new Map([...seen].filter(([id]) => translator.readings(id, measured).length > 0));
  if (told.size === 0) return 1;
  const chance = (by: Measurements | undefined): number =>
    meanLikelihood(
      context,
      after === undefined
        ? translator.translate(told, null, by)
        : translator.translateAfter(after, { seen: told, measured: by }, null),
    );
  return chance(undefined) / chance(measured);
}

/** P(evidence) over the simulated hypotheses by their priors, up to a constant. */
function meanLikelihood(context: JointContext, evidence: JointEvidence): number {
  const { entryPriors, likelihood } = context;
  return likelihood(evidence).reduce((sum, like, e) => sum + like * (entryPriors[e] ?? 0), 0);
}

/**
 * How much likelier something else makes it that readings contradict each other: it predicts one
 * that no machine can show together with the others half as every value alike, while a known
 * fault allows it as a mistake alone.
 * @returns 1 where some machine can show all of them
 */
export function contradictionLift(context: JointContext, { seen, measured }: Numbers): number {
  const numbers = [...seen.keys()].flatMap((id) => context.translator.readings(id, measured));
  return mistakenReadings(context.joint, numbers).reduce(
    (product, { doubt = 1 }) => product * ((1 + 1 / doubt) / 2),
    1,
  );
}
