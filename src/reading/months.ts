import type { Token } from "./language.ts";
import type { Quantity } from "./quantity.ts";

const HOUR = 3_600_000;

export interface MonthWords {
  /** Month (0 = January) by the stem of its name. */
  readonly months: ReadonlyMap<string, number>;
  /** Words that stand before a month that is meant as a date: "since", "in". */
  readonly since: ReadonlySet<string>;
  /** Epoch milliseconds. */
  readonly now: number;
}

/** Names of months as times ago, counted from the middle of the last month of that name. */
export function monthsAgo(tokens: readonly Token[], words: MonthWords): readonly Quantity[] {
  return tokens.flatMap((token, at) => {
    const month = words.months.get(token.stem);
    const before = tokens[at - 1];
    if (month === undefined || before === undefined || !words.since.has(before.stem)) return [];
    const hours = hoursSince(month, words.now);
    const base = { value: hours, spread: 15 * 24, decimal: false, from: at - 1, to: at + 1 };
    return [{ ...base, unit: "ago", saidUnit: "month" }];
  });
}

function hoursSince(month: number, now: number): number {
  const date = new Date(now);
  const year = date.getUTCFullYear() - (date.getUTCMonth() < month ? 1 : 0);
  const middle = Date.UTC(year, month, 15);
  return Math.max(24, (now - middle) / HOUR);
}
