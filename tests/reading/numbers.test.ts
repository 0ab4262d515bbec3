import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutClauses } from "../../src/reading/clauses.ts";
import { compileLanguage } from "../../src/reading/grammar.ts";
import { createNumberReader } from "../../src/reading/numbers.ts";
import { parseNumber } from "../../src/reading/parse-number.ts";
import { tokenise } from "../../src/reading/tokens.ts";
import { toCanonical } from "../../src/reading/units.ts";
import { english } from "../helpers/english-reader.ts";

const language = compileLanguage(english);
const numbers = createNumberReader(language.lexicon, english.numbers, language.times);
const march20 = Date.UTC(2026, 2, 20);

function quantities(text: string, now: number | null = null) {
  const tokens = language.lexicon.tokens(tokenise(text));
  return numbers.quantities(cutClauses(tokens, language.words), now);
}

describe("parseNumber", () => {
  it.each([
    ["12.4", ",", 12.4],
    ["12,4", ",", 12.4],
    ["1,265", ",", 1265],
    ["1,265", ".", 1.265],
    ["1.265", ",", 1.265],
    ["1.265", ".", 1265],
    ["0,265", ",", 0.265],
    ["1.234.567", ",", 1234567],
    ["1.234,5", ".", 1234.5],
    ["1,234.5", ",", 1234.5],
    ["1e3", ",", 1000],
  ])("reads %s with thousands mark %s", (text, thousands, value) =>
    expect(parseNumber(text, thousands)).toBe(value),
  );

  it.each(["1e309", "1.2.3", "1,2.3.4,5"])("refuses %s", (text) =>
    expect(parseNumber(text, "") ?? "none").toBe("none"),
  );

  it("never gives an infinite number or NaN", () =>
    fc.assert(
      fc.property(fc.stringMatching(/^[0-9][0-9.,]{0,30}(e[+-]?[0-9]{1,4})?$/), (text) => {
        const value = parseNumber(text, ",");
        expect(value === null || Number.isFinite(value)).toBe(true);
      }),
      { seed: 11, numRuns: 300 },
    ));
});

describe("quantities", () => {
  it.each([
    ["12.4 volts", 12.4, "V"],
    ["12,4v", 12.4, "V"],
    ["12 1/2 V", 12.5, "V"],
    ["12½ V", 12.5, "V"],
    ["3/4 V", 0.75, "V"],
    ["-5 °C", -5, "°C"],
    ["minus it is 10 c", 10, "°C"],
    ["1265 sg", 1.265, "SG"],
    ["1.265 sg", 1.265, "SG"],
    ["three weeks", 504, "h"],
    ["an hour ago", 1, "ago"],
    ["2 years back", 17532, "ago"],
    ["battery V 12.7", 12.7, "V"],
    ["500 mV", 0.5, "V"],
    ["800 km", 800, "km"],
    ["twenty five minutes", 25 / 60, "h"],
  ])("reads %s", (text, value, unit) => {
    const [found] = quantities(text);
    expect(found?.value).toBeCloseTo(value, 9);
    expect(found?.unit).toBe(unit);
  });

  it("reads ranges as their middle with half their width", () => {
    for (const text of ["12-13 V", "12 to 13 volts", "between 12 and 13 volts"]) {
      expect(quantities(text)[0]).toMatchObject({ value: 12.5, spread: 0.5, unit: "V" });
    }
  });

  it("gives 'about' a width, and plain numbers none", () => {
    expect(quantities("about 12 volts")[0]?.spread).toBeCloseTo(0.6, 9);
    expect(quantities("12 volts")[0]?.spread).toBe(0);
  });

  it("takes a bare article for no number", () =>
    expect(quantities("a battery and one tractor")).toEqual([]));

  it("reads a month as a time ago only when it knows the date", () => {
    expect(quantities("not since october")).toEqual([]);
    const [found] = quantities("not since october", march20);
    // 15 October 2025 to 20 March 2026: 156 days.
    expect(found).toMatchObject({ unit: "ago", value: 156 * 24 });
  });
});

describe("toCanonical", () => {
  // NIST Special Publication 811, appendix B: 1 psi = 6.894757 kPa; 32 °F = 0 °C, 212 °F = 100 °C.
  it.each([
    [100, "psi", 6.894757, "bar"],
    [250, "kPa", 2.5, "bar"],
    [212, "°F", 100, "°C"],
    [32, "°F", 0, "°C"],
    [-40, "°F", -40, "°C"],
    [1, "mi", 1.609344, "km"],
  ])("turns %d %s into %d %s", (value, unit, expected, to) => {
    const got = toCanonical(value, unit);
    expect(got.value).toBeCloseTo(expected, 4);
    expect(got.unit).toBe(to);
  });
});
