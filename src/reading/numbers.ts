import type { NumberWords } from "../domain/reading.ts";
import type { Clauses } from "./clauses.ts";
import type { Lexicon, Token } from "./language.ts";

/** A number with its unit, as it stands in the text. */
export interface Quantity {
  readonly value: number;
  /** Half the width of what was said: a range, or "about"; 0 when exact. */
  readonly spread: number;
  /** Canonical unit (V, A, °C, h, bar, SG, Ω, rpm, km, hp …), or null when none was said. */
  readonly unit: string | null;
  /** As the unit was said before it was converted: `h` of "two weeks" was `week`. */
  readonly saidUnit: string | null;
  readonly decimal: boolean;
  readonly from: number;
  readonly to: number;
}

export interface NumberReader {
  quantities(text: Clauses): readonly Quantity[];
}

/** "About" is taken as five per cent either way. */
const ABOUT = 0.05;

/** Numbers of a text with their units, read left to right. */
export function createNumberReader(lexicon: Lexicon, words: NumberWords): NumberReader {
  const stemsOf = (list: readonly string[]): ReadonlySet<string> =>
    new Set(list.flatMap((word) => lexicon.stems(word)));
  const units = new Map<string, string>();
  for (const [unit, names] of words.units) {
    for (const name of names) units.set(lexicon.stems(name).join(" "), unit);
  }
  const values = new Map<string, number>();
  for (const [word, value] of words.words) values.set(lexicon.stems(word).join(" "), value);
  const about = stemsOf(words.about);
  const range = stemsOf(words.rangeWords);
  const quantities = (text: Clauses): readonly Quantity[] => {
    const found: Quantity[] = [];
    let at = 0;
    while (at < text.tokens.length) {
      const read = readOne(text, at, { values, units, about, range, thousands: words.thousands });
      if (read !== null) found.push(read);
      at = read === null ? at + 1 : read.to;
    }
    return found;
  };
  return { quantities };
}

interface Tables {
  readonly values: ReadonlyMap<string, number>;
  readonly units: ReadonlyMap<string, string>;
  readonly about: ReadonlySet<string>;
  readonly range: ReadonlySet<string>;
  readonly thousands: string;
}

interface Plain {
  readonly value: number;
  readonly to: number;
  readonly decimal: boolean;
}

function readOne(text: Clauses, from: number, tables: Tables): Quantity | null {
  const first = plainNumber(text.tokens, from, tables);
  if (first === null) return null;
  const firstUnit = unitAt(text.tokens, first.to, tables);
  const rangeAt = firstUnit?.to ?? first.to;
  const second = rangeEnd(text.tokens, rangeAt, tables);
  const last = second ?? first;
  const unit = unitAt(text.tokens, last.to, tables) ?? firstUnit;
  const to = Math.max(last.to, unit?.to ?? 0);
  const middle = (first.value + last.value) / 2;
  const spread = Math.abs(last.value - first.value) / 2;
  const vague = saidAbout(text, from, tables) && second === null;
  const scaled = toCanonical(middle, unit?.unit ?? null);
  return {
    value: scaled.value,
    spread: (vague ? Math.abs(middle) * ABOUT : spread) * scaled.factor,
    unit: scaled.unit,
    saidUnit: unit?.unit ?? null,
    decimal: first.decimal || last.decimal,
    from,
    to,
  };
}

function saidAbout(text: Clauses, from: number, tables: Tables): boolean {
  const before = text.tokens[from - 1];
  return (
    text.tokens[from]?.before === "~" || (before !== undefined && tables.about.has(before.stem))
  );
}

/** A number in figures or words, with a fraction after it: `12`, `12,4`, `12 1/2`, `half a`. */
function plainNumber(tokens: readonly Token[], from: number, tables: Tables): Plain | null {
  const token = tokens[from];
  if (token === undefined) return null;
  if (!token.number) {
    const value = tables.values.get(token.stem);
    return value === undefined ? null : { value, to: from + 1, decimal: false };
  }
  const value = parseNumber(token.text, tables.thousands);
  if (value === null) return null;
  const sign = isMinus(tokens, from) ? -1 : 1;
  const next = tokens[from + 1];
  if (token.after === "/" && next?.number === true && next.from === token.to + 1) {
    const below = parseNumber(next.text, "");
    return below === null || below === 0
      ? null
      : { value: (sign * value) / below, to: from + 2, decimal: true };
  }
  const fraction =
    next?.number === true && next.after === "/" ? fractionAt(tokens, from + 1) : null;
  if (fraction !== null) return { value: sign * (value + fraction), to: from + 3, decimal: true };
  const mark = VULGAR.get(token.after);
  const decimal = /[.,]/.test(token.text) || mark !== undefined;
  return { value: sign * (value + (mark ?? 0)), to: from + 1, decimal };
}

const VULGAR: ReadonlyMap<string, number> = new Map([
  ["½", 0.5],
  ["¼", 0.25],
  ["¾", 0.75],
]);

function isMinus(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  const previous = tokens[at - 1];
  if (token === undefined || !(token.before === "-" || token.before === "−")) return false;
  return previous === undefined || previous.to < token.from - 1;
}

function fractionAt(tokens: readonly Token[], at: number): number | null {
  const above = tokens[at];
  const below = tokens[at + 1];
  if (above === undefined || below?.number !== true || below.from !== above.to + 1) return null;
  const [top, bottom] = [Number(above.text), Number(below.text)];
  return bottom > 1 && top < bottom && bottom <= 64 ? top / bottom : null;
}

function rangeEnd(tokens: readonly Token[], at: number, tables: Tables): Plain | null {
  const token = tokens[at];
  if (token === undefined) return null;
  const dash = token.number && (token.before === "-" || token.before === "–") && at > 0;
  if (dash && tokens[at - 1]?.to === token.from - 1) {
    const value = parseNumber(token.text, tables.thousands);
    return value === null ? null : { value, to: at + 1, decimal: /[.,]/.test(token.text) };
  }
  if (!tables.range.has(token.stem) || token.gap !== "none") return null;
  return plainNumber(tokens, at + 1, tables);
}

function unitAt(
  tokens: readonly Token[],
  at: number,
  tables: Tables,
): { readonly unit: string; readonly to: number } | null {
  const one = tokens[at];
  const two = tokens[at + 1];
  if (one === undefined || one.gap !== "none") return null;
  const both = two === undefined || two.gap !== "none" ? undefined : `${one.stem} ${two.stem}`;
  const pair = both === undefined ? undefined : tables.units.get(both);
  if (pair !== undefined) return { unit: pair, to: at + 2 };
  const degree = one.before === "°" ? tables.units.get(`degre ${one.stem}`) : undefined;
  const single = degree ?? tables.units.get(one.stem);
  return single === undefined ? null : { unit: single, to: at + 1 };
}

/**
 * Reads `12.4`, `12,4`, `1,265`, `1.265,5` with decimal points and commas.
 *
 * @param thousands the mark that groups thousands in this language, "" for none
 * @returns null where no finite number is meant (`1e309`, `1.2.3`)
 */
export function parseNumber(text: string, thousands: string): number | null {
  const marks = [...text].filter((char) => char === "." || char === ",");
  const [only] = marks;
  const plain = (): string => {
    if (only === undefined) return text;
    const groups = text.split(/[.,]/);
    const grouped = groups.slice(1).every((part) => part.length === 3);
    if (marks.length === 1) {
      const isGroup = only === thousands && grouped && !text.startsWith("0");
      return isGroup ? text.replace(only, "") : text.replace(only, ".");
    }
    const last = marks.at(-1) ?? ".";
    if (marks.every((mark) => mark === last)) return grouped ? groups.join("") : "";
    const cut = text.lastIndexOf(last);
    return `${text.slice(0, cut).replaceAll(/[.,]/g, "")}.${text.slice(cut + 1)}`;
  };
  const digits = plain();
  const value = digits === "" ? Number.NaN : Number(digits);
  return Number.isFinite(value) ? value : null;
}

/** Hours in the units of time people use. */
const hoursIn: Readonly<Record<string, number>> = {
  min: 1 / 60,
  s: 1 / 3600,
  h: 1,
  day: 24,
  week: 168,
  month: 730.5,
  year: 8766,
};

/** Factors to the unit the knowledge uses. */
const factors: Readonly<Record<string, readonly [string, number]>> = {
  psi: ["bar", 0.0689476],
  kPa: ["bar", 0.01],
  mV: ["V", 0.001],
  kW: ["hp", 1.34102],
  mi: ["km", 1.609344],
};

function toCanonical(
  value: number,
  unit: string | null,
): { readonly value: number; readonly unit: string | null; readonly factor: number } {
  if (unit === "°F") return { value: ((value - 32) * 5) / 9, unit: "°C", factor: 5 / 9 };
  const hours = unit === null ? undefined : hoursIn[unit];
  if (hours !== undefined) return { value: value * hours, unit: "h", factor: hours };
  const [to, factor] = (unit === null ? undefined : factors[unit]) ?? [unit, 1];
  // A hydrometer's 1265 and 1.265 are the same reading.
  if (to === "SG" && value >= 1000) return { value: value / 1000, unit: "SG", factor: 0.001 };
  return { value: value * factor, unit: to, factor };
}
