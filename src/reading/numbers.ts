import type { NumberWords, TimeWords } from "../domain/phrases.ts";
import type { Clauses } from "./clauses.ts";
import type { Lexicon, Token } from "./language.ts";
import { monthsAgo } from "./months.ts";
import { parseNumber } from "./parse-number.ts";
import type { PatternIndex } from "./patterns.ts";
import { type NumberTables, type Plain, plainNumber } from "./plain-number.ts";
import type { Quantity } from "./quantity.ts";
import { toCanonical } from "./units.ts";

export interface NumberReader {
  /** @param now epoch milliseconds; null: names of months are not read */
  quantities(text: Clauses, now: number | null): readonly Quantity[];
}

/** "last week 3 of them": units of time stand behind their number only. */
const timeUnits: ReadonlySet<string> = new Set(["s", "min", "h", "day", "week", "month", "year"]);

/** Blanks and fraction signs between figures and a unit of one letter: `12½ V`. */
const UNIT_NEAR = 2;

/** "About" is taken as five per cent either way. */
const ABOUT = 0.05;

interface Tables extends NumberTables {
  readonly units: ReadonlyMap<string, string>;
  readonly about: ReadonlySet<string>;
  readonly range: ReadonlySet<string>;
  readonly between: ReadonlySet<string>;
  readonly betweenAnd: ReadonlySet<string>;
  readonly ago: ReadonlySet<string>;
  readonly agoFirst: boolean;
  readonly minus: ReadonlySet<string>;
  readonly belowZero: readonly (readonly string[])[];
}

/** Numbers of a text with their units, and its expressions of time, read left to right. */
export function createNumberReader(
  lexicon: Lexicon,
  words: NumberWords,
  times: PatternIndex<TimeWords>,
): NumberReader {
  const stemsOf = (list: readonly string[]): ReadonlySet<string> =>
    new Set(list.flatMap((word) => lexicon.stems(word)));
  const stem = (word: string): string => lexicon.stems(word).join(" ");
  const tables: Tables = {
    values: new Map([...words.words].map(([word, value]) => [stem(word), value] as const)),
    thousands: words.thousands,
    units: new Map(
      [...words.units].flatMap(([unit, names]) => names.map((name) => [stem(name), unit] as const)),
    ),
    about: stemsOf(words.about),
    range: stemsOf(words.rangeWords),
    between: stemsOf(words.between),
    betweenAnd: stemsOf(words.betweenAnd),
    ago: stemsOf(words.ago),
    agoFirst: words.agoFirst,
    minus: stemsOf(words.minus),
    belowZero: words.belowZero.map((run) => lexicon.stems(run)),
  };
  const months = new Map(
    words.months.flatMap((names, month) => names.map((name) => [stem(name), month] as const)),
  );
  const since = stemsOf(words.since);
  const quantities = (text: Clauses, now: number | null): readonly Quantity[] => {
    // "7 years" is a number with its unit, "years" alone an expression of time.
    const isUnit = ({ from, to }: { readonly from: number; readonly to: number }): boolean =>
      to - from === 1 && (text.tokens[from - 1]?.number ?? false);
    const said = times.longest(text).filter((match) => !isUnit(match));
    const fixed = said.map(
      ({ owner, from, to }): Quantity => ({
        value: owner.hours,
        spread: 0,
        unit: owner.ago ? "ago" : "h",
        saidUnit: null,
        decimal: false,
        from,
        to,
      }),
    );
    const dated = now === null ? [] : monthsAgo(text.tokens, { months, since, now });
    return [...numbersOf(text, tables, fixed), ...fixed, ...dated];
  };
  return { quantities };
}

/** Numbers outside the fixed expressions of time. */
function numbersOf(text: Clauses, tables: Tables, fixed: readonly Quantity[]): readonly Quantity[] {
  const skip = new Map(fixed.map(({ from, to }) => [from, to] as const));
  const found: Quantity[] = [];
  let at = 0;
  while (at < text.tokens.length) {
    const past = skip.get(at);
    const read = past === undefined ? readOne(text, at, tables) : null;
    if (read !== null) found.push(read);
    at = past ?? read?.to ?? at + 1;
  }
  return found;
}

function readOne(text: Clauses, from: number, tables: Tables): Quantity | null {
  const { tokens } = text;
  const first = plainNumber(tokens, from, tables);
  if (first === null) return null;
  const firstUnit = unitAt(tokens, first.to, tables);
  const second = rangeEnd(tokens, { from, at: firstUnit?.to ?? first.to }, tables);
  const last = second ?? first;
  const unit = unitAt(tokens, last.to, tables) ?? firstUnit ?? unitBefore(tokens, from, tables);
  const end = Math.max(last.to, unit?.to ?? 0);
  const cold = belowZero(tokens, { from, end, unit: unit?.unit ?? null }, tables);
  if (cold !== null) return frost((first.value + last.value) / 2, cold);
  // "a", "one", "half" are numbers only in front of a unit.
  if (unit === null && tokens[from]?.number !== true) return null;
  const scaled = toCanonical((first.value + last.value) / 2, unit?.unit ?? null);
  const vague = second === null && saidAbout(tokens, from, tables);
  const width = vague ? Math.abs(first.value) * ABOUT : Math.abs(last.value - first.value) / 2;
  const ago =
    scaled.unit === "h" ? agoAt(tokens, { from: vague ? from - 1 : from, end }, tables) : null;
  return {
    value: scaled.value,
    spread: width * scaled.factor,
    unit: ago === null ? scaled.unit : "ago",
    saidUnit: unit?.unit ?? null,
    decimal: first.decimal || last.decimal,
    from,
    to: ago ?? end,
  };
}

interface Cold {
  readonly unit: string;
  readonly from: number;
  readonly to: number;
}

const degreeUnits: ReadonlySet<string> = new Set(["°", "°C", "°F"]);

/** "minus ten degrees", "ten below zero": told in words; without a unit it is degrees Celsius. */
function belowZero(
  tokens: readonly Token[],
  {
    from,
    end,
    unit,
  }: { readonly from: number; readonly end: number; readonly unit: string | null },
  tables: Tables,
): Cold | null {
  const isDegrees = unit !== null && degreeUnits.has(unit);
  if (isDegrees && tables.minus.has(tokens[from - 1]?.stem ?? "")) {
    return { unit, from: from - 1, to: end };
  }
  if (unit !== null && !isDegrees) return null;
  const run = tables.belowZero.find(
    (stems) =>
      (isDegrees || stems.length > 1) && stems.every((stem, at) => tokens[end + at]?.stem === stem),
  );
  if (run === undefined) return null;
  return { unit: unit === "°F" ? unit : "°C", from, to: end + run.length };
}

function frost(degrees: number, { unit, from, to }: Cold): Quantity {
  const scaled = toCanonical(-Math.abs(degrees), unit);
  const plain = { value: scaled.value, spread: 0, unit: scaled.unit, saidUnit: unit };
  return { ...plain, decimal: false, from, to };
}

/** Where a time ago ends; some languages put the word in front: "hace tres semanas". */
function agoAt(
  tokens: readonly Token[],
  { from, end }: { readonly from: number; readonly end: number },
  tables: Tables,
): number | null {
  if (tables.ago.has(tokens[end]?.stem ?? "")) return end + 1;
  return tables.agoFirst && tables.ago.has(tokens[from - 1]?.stem ?? "") ? end : null;
}

function saidAbout(tokens: readonly Token[], from: number, tables: Tables): boolean {
  const before = tokens[from - 1];
  return tokens[from]?.before === "~" || (before !== undefined && tables.about.has(before.stem));
}

/** The second number of `12-12.5`, `12 to 12.5`, `between 12 and 12.5`. */
function rangeEnd(
  tokens: readonly Token[],
  { from, at }: { readonly from: number; readonly at: number },
  tables: Tables,
): Plain | null {
  const between = tables.between.has(tokens[from - 1]?.stem ?? "");
  const range = between ? tables.betweenAnd : tables.range;
  const token = tokens[at];
  if (token === undefined) return null;
  const dash = token.number && (token.before === "-" || token.before === "–");
  if (dash && tokens[at - 1]?.to === token.from - 1) {
    const value = parseNumber(token.text, tables.thousands);
    return value === null ? null : { value, to: at + 1, decimal: /[.,]/.test(token.text) };
  }
  if (!range.has(token.stem) || token.gap !== "none") return null;
  const second = plainNumber(tokens, at + 1, tables);
  return second !== null && tokens[at + 1]?.number === true ? second : null;
}

/** "battery V 12.7", "volts: 12.7". */
function unitBefore(tokens: readonly Token[], at: number, tables: Tables): UnitAt | null {
  const before = tokens[at - 1];
  if (before === undefined || before.number || tokens[at]?.number !== true) return null;
  const unit = tables.units.get(before.stem);
  const isReading = unit !== undefined && !timeUnits.has(unit);
  return isReading ? { unit, to: at + 1 } : null;
}

interface UnitAt {
  readonly unit: string;
  readonly to: number;
}

function unitAt(tokens: readonly Token[], at: number, tables: Tables): UnitAt | null {
  const one = tokens[at];
  if (one === undefined || one.gap !== "none" || one.number) return null;
  const degrees = tables.units.get(one.stem) === "°";
  const scale = degrees ? tokens[at + 1] : one;
  const unit = tables.units.get(scale?.stem ?? "");
  if (degrees) {
    const named = unit === "°C" || unit === "°F";
    return { unit: named ? unit : "°", to: named ? at + 2 : at + 1 };
  }
  // A single letter is a unit only directly behind figures or the degree sign: not in "uno a uno".
  const behind = tokens[at - 1];
  const isFigures = behind?.number === true && one.from - behind.to <= UNIT_NEAR;
  const close = one.text.length > 1 || isFigures;
  return unit === undefined || !(close || one.before === "°") ? null : { unit, to: at + 1 };
}
