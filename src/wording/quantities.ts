import type { Unit } from "../domain/effects.ts";
import type { Formatters } from "./formatters.ts";

interface UnitForm {
  /** The message that holds the sign of the unit. */
  readonly key: string;
  /** Digits after the decimal mark when the message does not say. */
  readonly least: number;
  readonly most: number;
}

/** A number and its unit are never broken over two lines. */
const JOIN = "\u00A0";

/** What a cheap meter shows: one place at least for volts, three for a hydrometer. */
const forms: Readonly<Record<Exclude<Unit, "percent">, UnitForm>> = {
  V: { key: "unit-volt", least: 1, most: 2 },
  A: { key: "unit-ampere", least: 0, most: 1 },
  "°C": { key: "unit-celsius", least: 0, most: 1 },
  h: { key: "unit-hour", least: 0, most: 1 },
  bar: { key: "unit-bar", least: 0, most: 1 },
  SG: { key: "unit-gravity", least: 3, most: 3 },
  Ω: { key: "unit-ohm", least: 0, most: 2 },
  rpm: { key: "unit-rpm", least: 0, most: 0 },
  min: { key: "unit-minute", least: 0, most: 0 },
  km: { key: "unit-kilometre", least: 0, most: 1 },
  dB: { key: "unit-deciban", least: 0, most: 1 },
};

export const unitKeys: readonly string[] = Object.values(forms).map((form) => form.key);

export interface Quantity {
  /** In the unit itself; 37 percent is 37. */
  readonly quantity: number;
  readonly unit: Unit;
  /** Digits after the decimal mark, 0 to 20; absent: what suits the unit. */
  readonly digits?: number;
}

/**
 * A number with its unit, in the decimal marks of the language: `12.4 V`, `12,4 V`.
 * @param sign gives the sign of a unit by its key
 * @returns a dash for what is no finite number
 */
export function formatQuantity(
  value: Quantity,
  language: Formatters,
  sign: (key: string) => string,
): string {
  if (!Number.isFinite(value.quantity)) return "–";
  if (value.unit === "percent") return formatPercent(value.quantity, value.digits, language);
  const form = forms[value.unit];
  const number = language.number(value.quantity, {
    minimumFractionDigits: value.digits ?? form.least,
    maximumFractionDigits: value.digits ?? form.most,
    useGrouping: "min2",
  });
  return `${number}${JOIN}${sign(form.key)}`;
}

/** Whole percents never say that something is certain or impossible when it is not. */
function formatPercent(percent: number, digits: number | undefined, language: Formatters): string {
  const places = digits ?? 0;
  const smallest = 10 ** -places;
  const format = (value: number) =>
    language.number(value / 100, {
      style: "percent",
      minimumFractionDigits: places,
      maximumFractionDigits: places,
    });
  if (percent > 0 && percent < smallest / 2) return `<${format(smallest)}`;
  if (percent < 100 && percent > 100 - smallest / 2) return `>${format(100 - smallest)}`;
  return format(percent);
}
