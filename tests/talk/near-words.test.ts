import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { nearWords } from "../../src/talk/near-words.ts";

/** Slips of people who write in a hurry, in gloves, or never learnt it; our own. */
const slips: readonly (readonly [string, string])[] = [
  ["al saef", "all safe"],
  ["evrybody is safe", "everybody is safe"],
  ["evry time", "Every time"],
  ["I dont kno", "I don't know"],
  ["i do'nt know", "I don't know"],
  ["yes besid it", "Yes, beside it"],
  ["allgood", "all good"],
  ["todo bein", "todo bien"],
  ["estmos bien", "estamos bien"],
  ["no se", "No sé"],
  ["ales gut", "alles gut"],
  ["kein Gefahr", "Keine Gefahr"],
  ["weiss ich nich", "Weiß ich nicht"],
  ["jeds mal", "Jedes Mal"],
];

/** One letter away, and something else. */
const others: readonly (readonly [string, string])[] = [
  ["everything is fire", "everything is fine"],
  ["fire", "fine"],
  ["not safe", "now safe"],
  ["one hurt", "none hurt"],
  ["einer verletzt", "keiner verletzt"],
  ["jemand verletzt", "niemand verletzt"],
  ["algún peligro", "ningún peligro"],
  ["hay peligro", "no hay peligro"],
  ["glut", "gut"],
  ["hot", "not"],
  ["on", "no"],
  ["", "all safe"],
  ["stop", "shop"],
];

describe("words that are badly spelt", () => {
  it.each(slips)("are these: %s, %s", (typed, meant) => {
    expect(nearWords(typed, meant)).toBe(true);
  });

  it.each(others)("are not others: %s, %s", (typed, other) => {
    expect(nearWords(typed, other)).toBe(false);
  });

  it("are themselves, whatever the case and marks", () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[a-zäöüñ]{1,9}( [a-zäöüñ]{1,9}){0,3}$/), (words) => {
        expect(nearWords(`${words.toUpperCase()}!`, words)).toBe(true);
      }),
      { seed: 5 },
    );
  });

  it("of one short word are never another of three letters", () => {
    const word = fc.stringMatching(/^[a-z]{3}$/).filter((one) => !/(.)\1/.test(one));
    fc.assert(
      fc.property(word, word, (one, other) => {
        fc.pre(one !== other);
        expect(nearWords(one, other)).toBe(false);
      }),
      { seed: 6 },
    );
  });
});
