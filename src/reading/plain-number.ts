import type { Token } from "./language.ts";
import { parseNumber } from "./parse-number.ts";

/** A number without its unit, and the token after it. */
export interface Plain {
  readonly value: number;
  readonly to: number;
  /** True where it was written with a decimal mark or a fraction. */
  readonly decimal: boolean;
}

export interface NumberTables {
  /** Number words by stem. */
  readonly values: ReadonlyMap<string, number>;
  readonly thousands: string;
}

const vulgar: ReadonlyMap<string, number> = new Map([
  ["½", 0.5],
  ["¼", 0.25],
  ["¾", 0.75],
]);

/** Fractions on scales and spanners are no finer than this. */
const FINEST_FRACTION = 64;

/** A number in figures or words at a token: `12`, `12,4`, `12 1/2`, `-5`, `twelve`, `half a`. */
export function plainNumber(
  tokens: readonly Token[],
  from: number,
  tables: NumberTables,
): Plain | null {
  const token = tokens[from];
  if (token === undefined) return null;
  if (!token.number) return inWords(tokens, from, tables);
  const value = parseNumber(token.text, tables.thousands);
  if (value === null) return null;
  const sign = isMinus(tokens, from) ? -1 : 1;
  const alone = fractionAt(tokens, from);
  if (alone !== null) return { value: sign * alone, to: from + 2, decimal: true };
  const added = fractionAt(tokens, from + 1);
  if (added !== null) return { value: sign * (value + added), to: from + 3, decimal: true };
  const mark = vulgar.get(token.after);
  const decimal = /[.,]/.test(token.text) || mark !== undefined;
  return { value: sign * (value + (mark ?? 0)), to: from + 1, decimal };
}

/** More number words in a row are no number: "one two three four". */
const MOST_WORDS = 3;

/** `six`, `half an`, `a few`, `twenty five`: articles multiply, the others add up. */
function inWords(tokens: readonly Token[], from: number, tables: NumberTables): Plain | null {
  let value = tables.values.get(tokens[from]?.stem ?? "");
  if (value === undefined) return null;
  let to = from + 1;
  while (to - from < MOST_WORDS) {
    const next = tables.values.get(tokens[to]?.stem ?? "");
    if (next === undefined) break;
    value = value === 1 || next === 1 ? value * next : value + next;
    to += 1;
  }
  return { value, to, decimal: false };
}

function isMinus(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  const previous = tokens[at - 1];
  if (token === undefined || !(token.before === "-" || token.before === "−")) return false;
  return previous === undefined || previous.to < token.from - 1;
}

function fractionAt(tokens: readonly Token[], at: number): number | null {
  const above = tokens[at];
  const below = tokens[at + 1];
  if (above?.number !== true || above.after !== "/" || below?.number !== true) return null;
  if (below.from !== above.to + 1) return null;
  const [top, bottom] = [Number(above.text), Number(below.text)];
  return bottom > 1 && top < bottom && bottom <= FINEST_FRACTION ? top / bottom : null;
}
