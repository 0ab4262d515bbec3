/** Resistivity of annealed copper at 20 °C in ohm·mm²/m (International Annealed Copper Standard). */
export const COPPER_OHM_SQUARE_MM_PER_METRE = 0.017241;
/** Change of resistance per kelvin at 20 °C (IEC 60028). */
export const COPPER_PER_KELVIN = 0.00393;

/** Factor on a copper resistance that was given at 20 °C. */
export function copperFactor(celsius: number): number {
  return 1 + COPPER_PER_KELVIN * (celsius - 20);
}

/**
 * Resistance of a copper cable at 20 °C.
 * @param squareMm cross-section in mm², > 0
 * @param metres length in metres, ≥ 0
 * @returns ohms
 */
export function cableOhms(squareMm: number, metres: number): number {
  return (COPPER_OHM_SQUARE_MM_PER_METRE * metres) / squareMm;
}

/**
 * Cross-section of an American wire gauge.
 * @param gauge 36 (thin) to 0; 2/0, 3/0 and 4/0 are -1, -2 and -3
 * @returns mm²
 * @source ASTM B258: diameter 0.005 in × 92^((36 − gauge) / 39)
 */
export function gaugeSquareMm(gauge: number): number {
  const diameterMm = 0.127 * 92 ** ((36 - gauge) / 39);
  return (Math.PI / 4) * diameterMm * diameterMm;
}
