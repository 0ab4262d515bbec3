/**
 * A lead-acid battery as a voltage behind a resistance. Figures are for a 12 V battery and scale
 * with its nominal volts.
 *
 * The resistance follows from the definition of cold cranking amps (new, full, −18 °C, rated amps:
 * 7.2 V left), the temperature factor from the trade's table of battery output against cold; the
 * dependence on charge and the freezing line are engineering estimates.
 */
export interface BatteryState {
  /** Nominal volts of this battery: 6, 8 or 12. */
  readonly nominalVolts: number;
  /** Rated cold cranking amps, > 0. */
  readonly cca: number;
  /** State of charge, 0 (empty) to 1 (full). */
  readonly charge: number;
  /** Resistance against that of a new battery, ≥ 0.5. */
  readonly age: number;
  readonly celsius: number;
}

/** Volts a full and an empty 12 V battery show at rest at 25 °C. */
const EMPTY_VOLTS = 11.88;
const CHARGE_VOLTS = 0.78;
const VOLTS_PER_KELVIN = 0.0012;
/** Ohms × CCA of a new, full 12 V battery at 27 °C. */
const OHM_AMPS = 2.2;
/** Below this current the electrodes' activation loss is not yet there. */
export const POLARISATION_AMPS = 15;
const FROZEN_FACTOR = 8;

/** Open-circuit volts at rest. */
export function restVolts(battery: BatteryState): number {
  const { charge, celsius, nominalVolts } = battery;
  const twelve = EMPTY_VOLTS + CHARGE_VOLTS * charge + VOLTS_PER_KELVIN * (celsius - 25);
  return (twelve * nominalVolts) / 12;
}

/** Temperature at which the acid of a battery at this charge begins to freeze, in °C. */
export function freezingCelsius(charge: number): number {
  return -10 - 60 * charge ** 1.3;
}

/** Internal resistance in ohms, > 0. */
export function batteryOhms(battery: BatteryState): number {
  const { cca, charge, age, celsius, nominalVolts } = battery;
  const thin = 1 / (0.08 + 0.92 * charge ** 0.9);
  const cold = Math.exp(0.0185 * (27 - celsius));
  const ice = celsius < freezingCelsius(charge) ? FROZEN_FACTOR : 1;
  return ((OHM_AMPS / cca) * age * thin * cold * ice * nominalVolts) / 12;
}
