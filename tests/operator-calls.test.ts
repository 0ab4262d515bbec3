import { readdirSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import type { WholeCall } from "../src/commands/whole-call.ts";
import { gradeOf, MOST_GRADE } from "./helpers/reading-grade.ts";
import { playWhole, toldCall } from "./helpers/whole-call.ts";

/** One call of each complaint. */
const CALLS = readdirSync("tests/golden").filter((name) => name.endsWith("-1"));
/** Messages that an operator can be asked to read in one call. Our own aim. */
const MOST_MESSAGES = 16;
/** The value that so much of a list lies at or under. */
function quantile(list: readonly number[], share: number): number {
  const sorted = [...list].sort((a, b) => a - b);
  return sorted[Math.ceil(share * sorted.length) - 1] ?? 0;
}

const played: (WholeCall & { readonly name: string })[] = [];

beforeAll(() => {
  for (const name of CALLS) {
    played.push({ name, ...playWhole(toldCall(name)) });
  }
}, 300_000);

describe("whole calls as the operator sees them", () => {
  it("are there for every complaint", () => expect(CALLS.length).toBeGreaterThan(14));

  it("are read at the age of ten, every one of them", () => {
    const hard = played.filter(({ texts }) => gradeOf(texts) > MOST_GRADE);
    expect(hard.map(({ name }) => name)).toEqual([]);
  });

  it("are measured by a rule that knows hard words", () => {
    const hard =
      "Notwithstanding aforementioned considerations, electrical continuity necessitates";
    expect(gradeOf([hard])).toBeGreaterThan(MOST_GRADE);
    expect(gradeOf(["Turn the key. What do you hear?"])).toBeLessThan(2);
  });

  it("take no more than sixteen messages in the middle one, and a few more at most", () => {
    const messages = played.map((one) => one.messages);
    expect(quantile(messages, 0.5)).toBeLessThanOrEqual(MOST_MESSAGES);
    expect(quantile(messages, 0.9)).toBeLessThanOrEqual(MOST_MESSAGES + 4);
  });

  it("tell an operator of no decibels", () => {
    for (const { name, texts } of played) expect(texts.join("\n"), name).not.toMatch(/\bdB\b/);
  });
});
