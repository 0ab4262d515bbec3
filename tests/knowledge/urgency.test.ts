import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import type { UrgencyFacts } from "../../src/domain/urgency.ts";
import { machineKinds } from "../../src/domain/vocabulary.ts";
import { loadKnowledge } from "../../src/knowledge/load.ts";
import {
  loadUrgency,
  readUrgency,
  type UrgencyRules,
  urgencyOf,
} from "../../src/knowledge/urgency.ts";

const folder = fileURLToPath(new URL("../../flows", import.meta.url));
const quiet: UrgencyFacts = {
  stated: null,
  kind: "ride-on-mower",
  month: 1,
  flags: [],
  comeback: false,
  waitedHours: 0,
};

describe("the shipped rules of urgency", () => {
  let rules: UrgencyRules;
  beforeAll(async () => {
    const knowledge = await loadKnowledge(folder);
    if (!knowledge.ok) throw new Error(knowledge.problems.map(({ says }) => says).join("\n"));
    const read = await loadUrgency(folder, new Set(knowledge.value.redFlags.keys()));
    if (!read.ok) throw new Error(read.problems.map(({ says }) => says).join("\n"));
    rules = read.value;
  }, 60_000);

  const facts = fc.record<UrgencyFacts>({
    stated: fc.constantFrom("low", "normal", "high", null),
    kind: fc.constantFrom(...machineKinds),
    month: fc.integer({ min: 1, max: 12 }),
    flags: fc.subarray(["bad-place", "alone-and-far", "fuel-leak"]),
    comeback: fc.boolean(),
    waitedHours: fc.double({ min: 0, max: 100, noNaN: true }),
  });

  it("give points that are the sum of the reasons told", () => {
    fc.assert(
      fc.property(facts, (one) => {
        const { points, reasons } = urgencyOf(rules, one);
        expect(reasons.reduce((sum, reason) => sum + reason.points, 0)).toBe(points);
      }),
      { seed: 11 },
    );
  });

  it("never call somebody less urgent who has waited longer, or who says it cannot wait", () => {
    fc.assert(
      fc.property(facts, fc.double({ min: 0, max: 100, noNaN: true }), (one, more) => {
        const now = urgencyOf(rules, one).points;
        const later = { ...one, waitedHours: one.waitedHours + more };
        expect(urgencyOf(rules, later).points).toBeGreaterThanOrEqual(now);
        expect(urgencyOf(rules, { ...one, stated: "high" }).points).toBeGreaterThanOrEqual(now);
      }),
      { seed: 12 },
    );
  });

  it("call a combine in harvest more urgent than a mower in winter", () => {
    const combine = urgencyOf(rules, { ...quiet, kind: "combine", month: 8 });
    expect(combine.points).toBeGreaterThan(urgencyOf(rules, quiet).points);
    expect(combine.reasons.map(({ rule }) => rule)).toContain("grain-harvest");
    expect(urgencyOf(rules, { ...quiet, stated: "high" }).level).toBe("high");
    expect(urgencyOf(rules, quiet).level).toBe("normal");
    expect(urgencyOf(rules, { ...quiet, stated: "low" }).level).toBe("low");
  });
});

describe("rules with mistakes", () => {
  const text = (when: string, levels = "{ high: 4, normal: 0 }") =>
    `source: test\nurgency:\n  levels: ${levels}\n  rules:\n` +
    `    one: { when: ${when}, points: 1, because: Why. }\n`;
  const flags = new Set(["bad-place"]);

  it.each([
    ["an unknown red flag", text("{ flags: bad-plaice }"), /no red flag "bad-plaice"/],
    ["no condition", text("{}"), /when the rule holds/],
    [
      "levels the wrong way round",
      text("{ comeback: true }", "{ high: 0, normal: 4 }"),
      /High must/,
    ],
  ])("tell of %s", (_, content, says) => {
    const read = readUrgency(content, flags);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.problems.map((problem) => problem.says).join("\n")).toMatch(says);
  });

  it("are only what is wrong", () => {
    expect(readUrgency(text("{ flags: bad-place }"), flags).ok).toBe(true);
  });
});
