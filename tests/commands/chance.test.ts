import { describe, expect, it } from "vitest";
import { realChance } from "../../src/commands/chance.ts";

const many = <T>(make: () => T): T[] => Array.from({ length: 500 }, make);

describe("real chance", () => {
  it("makes case numbers that can be said on the phone", () => {
    for (const id of many(realChance.caseId)) expect(id).toMatch(/^[234679AC-HJKMNP-RT-Y]{5}$/);
  });

  it("makes tokens that fit a link and do not repeat", () => {
    const tokens = many(realChance.token);
    for (const token of tokens) expect(token).toMatch(/^[A-Za-z0-9_-]{32,64}$/);
    expect(new Set(tokens).size).toBe(tokens.length);
  });

  it("makes whole seeds within their range", () => {
    for (const seed of many(realChance.seed)) {
      expect(Number.isInteger(seed) && seed >= 0 && seed < 2 ** 31).toBe(true);
    }
  });
});
