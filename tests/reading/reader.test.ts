import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ReadingResult, Span } from "../../src/domain/reading.ts";
import { read, says } from "../helpers/english-reader.ts";

const spansOf = (result: ReadingResult): readonly Span[] => [
  ...result.notUnderstood,
  ...[
    ...result.understood,
    ...result.ambiguous,
    ...result.denied,
    ...result.earlier,
    ...result.implausible,
    ...result.redFlags,
    ...result.components,
  ].map((one) => one.span),
];

/** A clear result: spans inside the text, probabilities that are probabilities, finite numbers. */
function expectClear(text: string): void {
  const result = read(text, { now: 0 });
  for (const [from, to] of spansOf(result)) {
    expect(from).toBeGreaterThanOrEqual(0);
    expect(to).toBeGreaterThan(from);
    expect(to).toBeLessThanOrEqual(text.length);
  }
  for (const one of result.understood) {
    expect(one.probability).toBeGreaterThan(0);
    expect(one.probability).toBeLessThanOrEqual(1);
    expect(one.hedge).toBeGreaterThanOrEqual(0);
    expect(one.hedge).toBeLessThanOrEqual(1);
    if ("value" in one) expect(Number.isFinite(one.value)).toBe(true);
  }
  for (const { options } of result.ambiguous) {
    expect(options.reduce((sum, option) => sum + option.probability, 0)).toBeCloseTo(1, 9);
  }
}

describe("any text at all", () => {
  it.each([
    ["empty", ""],
    ["blank", " \n\t "],
    ["emoji only", "🚜🔥😀"],
    ["a number beyond all numbers", "1e309 volts at the battery"],
    ["a long number", "9".repeat(400)],
    ["right-to-left marks", "\u202eone click\u202c \u200fdead"],
    ["zero-width characters", "o\u200bne cl\u200dick"],
    ["mixed scripts", "трактор won't start 拖拉机 one click جرار"],
    ["half a surrogate pair", "\ud83d click \ude9c"],
    ["combining marks", "c\u0301l\u0301i\u0301c\u0301k"],
    ["ten thousand characters", "it clicks once. ".repeat(625)],
    ["one endless word", "click".repeat(2000)],
    ["punctuation", "?!?!...,,;;--((("],
  ])("gives a clear result: %s", (_, text) => expectClear(text));

  it("understands through invisible marks", () => {
    expect(says("o\u200bne cl\u00adick")).toEqual(["on-start=one-click"]);
    expect(says("\u202bstone dead\u202c")).toEqual(["on-start=nothing"]);
  });

  it("finds nothing in nothing", () => {
    for (const text of ["", "🚜", "1e309"]) {
      expect(read(text)).toMatchObject({ understood: [], ambiguous: [], command: null });
    }
  });

  it("never fails", () =>
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: "binary", maxLength: 300 }),
          fc
            .array(
              fc.constantFrom(
                ..."not no click one clicks nothing 12,4 V - . , 1/2 between and lights go dim won't start jump ago 3 weeks my son says as if ½ °C to new battery £ 🚜".split(
                  " ",
                ),
              ),
              { maxLength: 60 },
            )
            .map((words) => words.join(" ")),
        ),
        expectClear,
      ),
      { seed: 7, numRuns: 250 },
    ));

  it("reads the same text the same way twice", () =>
    fc.assert(
      fc.property(fc.string({ maxLength: 80 }), (text) => {
        expect(read(text)).toEqual(read(text));
      }),
      { seed: 5, numRuns: 50 },
    ));
});

describe("capitals, full stops and blanks", () => {
  it.each(["ONE CLICK", "one click.", "  one   click  ", "One click!!!", "…one click…"])(
    "do not matter: %s",
    (text) => expect(says(text)).toEqual(["on-start=one-click"]),
  );
});

describe("spans", () => {
  it("point at the words that were read", () => {
    const text = "Hi, the machine just sat there: one loud clunk.";
    const [first] = read(text).understood;
    expect(text.slice(...(first?.span ?? [0, 0]))).toBe("one loud clunk");
  });
});

describe("what is not understood", () => {
  it("is handed back, clause by clause, and greetings are not", () => {
    const text = "Hello, one click, the flux capacitor wobbles badly.";
    const result = read(text);
    expect(result.notUnderstood.map((span) => text.slice(...span))).toEqual([
      "the flux capacitor wobbles badly",
    ]);
  });
});
