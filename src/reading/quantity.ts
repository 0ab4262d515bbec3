/** A number with its unit, as it stands in the text. */
export interface Quantity {
  readonly value: number;
  /** Half the width of what was said: a range, or "about"; 0 when exact. */
  readonly spread: number;
  /** V, A, °C, bar, SG, h, `ago` (hours before now) …; null when none was said. */
  readonly unit: string | null;
  /** The unit before it was converted: `week` for "two weeks". */
  readonly saidUnit: string | null;
  /** True where it was written with a decimal mark. */
  readonly decimal: boolean;
  /** True where words say that there is none: "no volts". */
  readonly none?: true;
  readonly from: number;
  readonly to: number;
}
