import { OPEN_OHMS } from "../circuit/resistance.ts";
import type { Spread } from "../domain/circuit.ts";

/** What a figure measures; decides which units it may carry. */
export type Dimension =
  | "volts"
  | "amps"
  | "watts"
  | "ohms"
  | "square-mm"
  | "metres"
  | "share"
  | "torque"
  | "speed"
  | "flux"
  | "oil"
  | "plain";

/** What a value's unit is measured against in one circuit. */
export interface Scale {
  readonly nominalVolts: number;
  /** Resistance of the cranking circuit with the rotor held, in ohms. */
  readonly loopOhms: number;
  /** Names of the oils, in the order in which the circuit holds them. */
  readonly oils: readonly string[];
}

/** How a figure is changed: replaced, added to or multiplied. */
export interface ReadChange {
  readonly how: "becomes" | "plus" | "times";
  readonly value: Spread;
}

const NUMBER = String.raw`-?\d+(?:\.\d+)?`;
const QUANTITY = String.raw`(${NUMBER})(?:\s+([^\d\s(),|:]\S*?))?`;
const WITHIN = String.raw`(?:\s*\(${QUANTITY}\s+to\s+(?:${QUANTITY}|open)\s*\))?`;
const EXACT = new RegExp(`^${QUANTITY}$`);
const EVEN = new RegExp(`^${QUANTITY}\\s+to\\s+${QUANTITY}$`);
const NORMAL = new RegExp(`^(${NUMBER})\\s*\\+-\\s*${QUANTITY}${WITHIN}$`);
const ABOUT = new RegExp(`^about\\s+${QUANTITY},\\s*factor\\s+(${NUMBER})${WITHIN}$`);

const RADIANS_PER_RPM = (2 * Math.PI) / 60;

/** Units of each dimension and what one of them is in the model's own. */
const UNITS: Readonly<
  Record<Exclude<Dimension, "oil" | "plain">, Readonly<Record<string, number>>>
> = {
  volts: { V: 1, mV: 1e-3 },
  amps: { A: 1 },
  watts: { W: 1 },
  ohms: { ohm: 1, mohm: 1e-3 },
  "square-mm": { mm2: 1 },
  metres: { m: 1, cm: 0.01 },
  share: { "%": 0.01 },
  torque: { Nm: 1 },
  speed: { rpm: RADIANS_PER_RPM },
  flux: { "mNm/A": 1e-3, "Nm/A": 1 },
};

/** Where a sentence about a mistake goes. */
export type Complain = (says: string) => undefined;

/**
 * Reads a value with its spread and unit.
 * @returns the spread in SI units (shares as 0 to 1), or nothing after complaining
 */
export function readSpread(
  text: string,
  dimension: Dimension,
  scale: Scale,
  complain: Complain,
): Spread | undefined {
  const choices = text.split("|").map((one) => one.trim());
  if (choices.length === 1 && !/^\d+(\.\d+)?:/.test(text)) {
    return readSimple(text.trim(), dimension, scale, complain);
  }
  const read = choices.map((one) => {
    const found = /^(\d+(?:\.\d+)?)\s*:\s*(.+)$/.exec(one);
    if (found === null) return complain(`"${one}" needs its weight in front, as in "8: ${one}"`);
    const spread = readSimple(found[2] ?? "", dimension, scale, complain);
    return spread === undefined ? undefined : { weight: Number(found[1]), spread };
  });
  const whole = read.filter((choice) => choice !== undefined);
  return whole.length === read.length ? { kind: "choice", choices: whole } : undefined;
}

/** Reads what a fault or an act does to a figure: "becomes …", "plus …" or "times …". */
export function readChange(
  text: string,
  dimension: Dimension,
  scale: Scale,
  complain: Complain,
): ReadChange | undefined {
  const found = /^(becomes|plus|times)\s+(.+)$/.exec(text.trim());
  if (found === null) {
    return complain(`"${text}" must begin with becomes, plus or times`);
  }
  const how = found[1] === "plus" ? "plus" : found[1] === "times" ? "times" : "becomes";
  const measured = how === "times" ? "plain" : dimension;
  const value = readSpread(found[2] ?? "", measured, scale, complain);
  return value === undefined ? undefined : { how, value };
}

function readSimple(
  text: string,
  dimension: Dimension,
  scale: Scale,
  complain: Complain,
): Spread | undefined {
  if (dimension === "oil") return readOil(text, scale, complain);
  if (text === "open" && dimension === "ohms") return { kind: "exact", value: OPEN_OHMS };
  const unit = (name: string | undefined) => unitFactor(name, dimension, scale, text, complain);
  const about = ABOUT.exec(text);
  if (about !== null) return readAbout(about, unit, text, complain);
  const normal = NORMAL.exec(text);
  if (normal !== null) return readNormal(normal, unit);
  const even = EVEN.exec(text);
  if (even !== null) return readEven(even, unit, text, complain);
  const exact = EXACT.exec(text);
  if (exact === null) return complain(`"${text}" is not a value; write for instance "3 to 5 ohm"`);
  const factor = unit(exact[2]);
  return factor === undefined ? undefined : { kind: "exact", value: Number(exact[1]) * factor };
}

type Unit = (name: string | undefined) => number | undefined;

function readAbout(
  found: RegExpExecArray,
  unit: Unit,
  text: string,
  complain: Complain,
): Spread | undefined {
  const [, middle, name, factor] = found;
  const size = unit(name);
  if (size === undefined) return undefined;
  if (Number(factor) < 1) return complain(`"${text}": the factor must be 1 or more`);
  const limits = readLimits(found.slice(4), size, unit);
  if (limits === undefined) return undefined;
  return { kind: "about", middle: Number(middle) * size, spread: Number(factor), ...limits };
}

function readNormal(found: RegExpExecArray, unit: Unit): Spread | undefined {
  const [, middle, spread, name] = found;
  const size = unit(name);
  if (size === undefined) return undefined;
  const limits = readLimits(found.slice(4), size, unit);
  if (limits === undefined) return undefined;
  return {
    kind: "normal",
    middle: Number(middle) * size,
    spread: Number(spread) * size,
    ...limits,
  };
}

function readEven(
  found: RegExpExecArray,
  unit: Unit,
  text: string,
  complain: Complain,
): Spread | undefined {
  const [, from, fromUnit, to, toUnit] = found;
  const high = unit(toUnit);
  const low = fromUnit === undefined ? high : unit(fromUnit);
  if (low === undefined || high === undefined) return undefined;
  const ends = { low: Number(from) * low, high: Number(to) * high };
  if (ends.low > ends.high) return complain(`"${text}": the smaller value comes first`);
  return { kind: "even", ...ends };
}

/** "(4.5 to 8)" after a value: the unit is that of the value where none is written. */
function readLimits(
  found: readonly (string | undefined)[],
  size: number,
  unit: Unit,
): { low?: number; high?: number } | undefined {
  const [from, fromUnit, to, toUnit] = found;
  if (from === undefined) return {};
  const low = fromUnit === undefined ? size : unit(fromUnit);
  const high = toUnit === undefined ? size : unit(toUnit);
  if (low === undefined || high === undefined) return undefined;
  return { low: Number(from) * low, high: to === undefined ? OPEN_OHMS : Number(to) * high };
}

function readOil(text: string, scale: Scale, complain: Complain): Spread | undefined {
  const number = scale.oils.indexOf(text);
  if (number >= 0) return { kind: "exact", value: number };
  return complain(`there is no oil "${text}"; there are ${scale.oils.join(", ")}`);
}

function unitFactor(
  name: string | undefined,
  dimension: Exclude<Dimension, "oil">,
  scale: Scale,
  text: string,
  complain: Complain,
): number | undefined {
  if (dimension === "plain") {
    return name === undefined ? 1 : complain(`"${text}" is a plain number and takes no unit`);
  }
  const units = { ...UNITS[dimension] };
  if (dimension === "volts") Object.assign(units, { nominal: scale.nominalVolts });
  if (dimension === "ohms") Object.assign(units, { loop: scale.loopOhms });
  const allowed = Object.keys(units).join(" or ");
  if (name === undefined) return complain(`"${text}" has no unit; write it in ${allowed}`);
  return units[name] ?? complain(`"${text}" must be in ${allowed}, not in "${name}"`);
}
