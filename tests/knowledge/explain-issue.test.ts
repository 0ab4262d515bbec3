import { describe, expect, it } from "vitest";
import { type Planted, problemsOf } from "./small-flows.ts";

const says = (from: string, to: string, path?: string) => {
  const change: Planted = path === undefined ? { from, to } : { path, from, to };
  return problemsOf(change).map((problem) => problem.says);
};

describe("mistakes in the shape of a file", () => {
  it("names a key that does not belong, and the one that was meant", () => {
    expect(
      says("    explain: The battery is empty.", "    explian: The battery is empty."),
    ).toEqual([
      "This is missing: a text is needed.",
      '"explian" is not a key that belongs here. Did you mean "explain"?',
    ]);
  });

  it("names a word that is not allowed", () => {
    expect(says("group: fuel", "group: fule")[0]).toBe(
      '"fule" is not one of the words allowed here. Did you mean "fuel"?',
    );
    expect(says("blocks: combustion", "blocks: burning")[0]).toMatch(/Known: control, pull-in/);
  });

  it("says when a number, a text or a list is needed", () => {
    expect(says("share: 10", "share: ten")).toEqual(['Here a number is needed, not "ten".']);
    expect(says("share: 10", "share: 0,3")).toEqual([
      'Here a number is needed, not "0,3". Write it with a point: 0.3.',
    ]);
    expect(says("share: 10", "share: 0")).toEqual(["This must be more than 0."]);
    expect(says("title: Battery flat", "title: 1.10")).toEqual([
      "A text is needed here, but this is read as 1.1; put it in quotes.",
    ]);
    expect(says("explain: No fuel.", "explain:")).toEqual([
      "Nothing stands here, but a text is needed.",
    ]);
    expect(says("remedies: charge-it", "remedies: []")).toEqual(["This must not be empty."]);
  });

  it("says how often can be written", () => {
    expect(says("dim: often, dead: often", "dim: oftn, dead: often")[0]).toBe(
      'How often? Here stands "oftn"; write a number from 0 to 1 or one of: never, rarely, sometimes, often, usually, nearly-always.',
    );
    expect(says("charge: 0.8", "charge: 80")[0]).toMatch(/^How often\?/);
  });

  it("refuses ids and spans that are written otherwise", () => {
    expect(says("  new-pump:", "  New_Pump:").join()).toMatch(
      /"New_Pump" cannot stand here as a key/,
    );
    expect(says("plausible: 0 to 15", "plausible: 0-15")).toEqual([
      'Two figures are needed, written like "0 to 15".',
    ]);
    expect(says("plausible: 0 to 15", "plausible: 15 to 0")).toEqual([
      "The first figure must be the smaller one.",
    ]);
  });

  it("refuses texts that do not fit the screen", () => {
    const long = "word ".repeat(80).trim();
    expect(says("explain: No fuel.", `explain: ${long}`)).toEqual([
      `This text is too long: ${long.length} letters, at most 300 fit on the screen.`,
    ]);
  });

  it("says what forms a share of a feature has", () => {
    expect(says("lights: always", "lights: mostly", "machines/atv.yaml")).toEqual([
      'Write "always", or the share of these machines that have it (0 to 1).',
    ]);
  });

  it("uses no word of the schema library", () => {
    const all = [
      ...says("share: 10", "share: [1]"),
      ...says("needs: { features: lights }", "needs: lights"),
      ...says("usual: { bright: usually, dim: sometimes, dead: rarely }", "usual: bright"),
      ...says("reported-by: { operator:", "reported-by: { operatr:"),
      ...says("hidden-by: { charge: 0.2 }", "hidden-by: [charge]"),
    ];
    expect(all.length).toBeGreaterThan(4);
    for (const sentence of all) {
      expect(sentence).not.toMatch(/invalid|expected|received|zod|undefined|object|union|enum/i);
      expect(sentence).toMatch(/[.?]$/);
    }
  });
});
