import type { CircuitNetwork } from "../domain/circuit.ts";

/** What is known of a machine that bears on its circuit. */
export interface CircuitWish {
  readonly kind: string;
  readonly fuel?: string;
  readonly volts?: number;
}

/** A circuit that a machine may have, and how likely. */
export interface CircuitChoice {
  readonly circuit: CircuitNetwork;
  /** In (0, 1]; the weights of a machine's circuits sum to 1. */
  readonly weight: number;
}

/** Volts of a machine of which nobody stated them. */
const USUAL_VOLTS = 12;

/**
 * The circuits a machine may have.
 * @returns none where no circuit of that kind has these volts; several, equally likely, where the
 *   fuel or the volts are unknown and tell circuits apart, as with old tractors of 6 and 12 V
 */
export function chooseCircuits(
  circuits: Iterable<CircuitNetwork>,
  { kind, fuel, volts }: CircuitWish,
): readonly CircuitChoice[] {
  const fitting = [...circuits].filter((circuit) => {
    const used = circuit.uses.some(
      (use) =>
        use.kind === kind &&
        (use.fuels.length === 0 || fuel === undefined || use.fuels.includes(fuel)),
    );
    const unstated = volts === undefined && circuit.weighedUnstated;
    return used && (unstated || circuit.volts === (volts ?? USUAL_VOLTS));
  });
  return fitting.map((circuit) => ({ circuit, weight: 1 / fitting.length }));
}
