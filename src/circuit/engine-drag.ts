import type { Oil } from "../domain/circuit.ts";

/** Share of the drag at working speed that does not come from the oil, and that is there at rest. */
const DRY_SHARE = 0.4;
const STILL_SHARE = 0.6;
/** How steeply drag follows the oil's thickness. */
const OIL_EXPONENT = 0.3;
/** Working temperature that the drag figures and oils refer to, in °C. */
const REFERENCE_CELSIUS = 27;

/**
 * Dynamic viscosity of an oil in mPa·s.
 * @param oil viscosity at a cold and a warm temperature
 * @param celsius −40 to 60
 * @source straight line of log log viscosity over log absolute temperature (Walther; ASTM D341)
 */
export function oilViscosity(oil: Oil, celsius: number): number {
  const height = (viscosity: number) => Math.log(Math.log(viscosity + 0.7));
  const place = (c: number) => Math.log(c + 273.15);
  const [coldC, coldV] = oil.cold;
  const [warmC, warmV] = oil.warm;
  const slope = (height(warmV) - height(coldV)) / (place(warmC) - place(coldC));
  return Math.exp(Math.exp(height(coldV) + slope * (place(celsius) - place(coldC)))) - 0.7;
}

/**
 * How much harder an engine turns than warm with its usual oil.
 * @param oil what is in it
 * @param usual what the drag figure was given for
 */
export function coldFactor(oil: Oil, usual: Oil, celsius: number): number {
  const ratio = oilViscosity(oil, celsius) / oilViscosity(usual, REFERENCE_CELSIUS);
  return DRY_SHARE + (1 - DRY_SHARE) * ratio ** OIL_EXPONENT;
}

/**
 * Drag at the crankshaft over its speed, as a straight line.
 * @param dragNm drag at 27 °C and at `referenceSpeed`
 * @param factor from `coldFactor`, times whatever else drags
 * @param referenceSpeed crankshaft speed in rad/s, > 0
 */
export function crankshaftDrag(
  dragNm: number,
  factor: number,
  referenceSpeed: number,
): { readonly fixedNm: number; readonly perRadianNm: number } {
  return {
    fixedNm: dragNm * factor * STILL_SHARE,
    perRadianNm: (dragNm * factor * (1 - STILL_SHARE)) / referenceSpeed,
  };
}
