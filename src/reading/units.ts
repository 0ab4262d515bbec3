/** Hours in the units of time people use. */
const hoursIn: Readonly<Record<string, number>> = {
  s: 1 / 3600,
  min: 1 / 60,
  h: 1,
  day: 24,
  week: 168,
  month: 730.5,
  year: 8766,
};

/** Factors to the unit the knowledge uses; exact, or to six digits (NIST SP 811, appendix B). */
const factors: Readonly<Record<string, readonly [string, number]>> = {
  psi: ["bar", 0.0689476],
  kPa: ["bar", 0.01],
  mV: ["V", 0.001],
  mA: ["A", 0.001],
  kΩ: ["Ω", 1000],
  MΩ: ["Ω", 1_000_000],
  kW: ["hp", 1.34102],
  mi: ["km", 1.609344],
};

/** A quantity in the unit the knowledge uses; `factor` scales a width given in the old unit. */
export interface Canonical {
  readonly value: number;
  readonly unit: string | null;
  readonly factor: number;
}

/** Converts pressure to bar, temperature to °C, time to h, and a hydrometer's 1265 to 1.265. */
export function toCanonical(value: number, unit: string | null): Canonical {
  if (unit === null) return { value, unit, factor: 1 };
  if (unit === "°F") return { value: ((value - 32) * 5) / 9, unit: "°C", factor: 5 / 9 };
  const hours = hoursIn[unit];
  if (hours !== undefined) return { value: value * hours, unit: "h", factor: hours };
  if (unit === "SG" && value >= 1000) return { value: value / 1000, unit, factor: 0.001 };
  const [to, factor] = factors[unit] ?? [unit, 1];
  return { value: value * factor, unit: to, factor };
}
