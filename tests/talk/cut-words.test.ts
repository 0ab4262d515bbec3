import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutWords } from "../../src/talk/cut-words.ts";
import { Dialog } from "../helpers/dialog.ts";

describe("words that are cut", () => {
  it("stay as they are where they are few, and end at a word where they are many", () => {
    expect(cutWords("one click", 9)).toBe("one click");
    expect(cutWords("one click and then nothing", 14)).toBe("one click and…");
    expect(cutWords("Donaudampfschifffahrtsgesellschaft", 10)).toBe("Donaudamp…");
  });

  it("are never longer than there is room, and never end in half a letter", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: "grapheme", maxLength: 60 }),
        fc.integer({ min: 2, max: 40 }),
        (text, most) => {
          const cut = cutWords(text, most);
          expect(cut.length).toBeLessThanOrEqual(Math.max(most, 1));
          // A single surrogate cannot be written in a web address (ECMA-262, encodeURIComponent).
          expect(() => encodeURIComponent(cut)).not.toThrow();
        },
      ),
      { seed: 7, numRuns: 300 },
    );
  });
});

describe("a slip and a sheet", () => {
  it("stay one message, however much is written, so that they change in place", () => {
    const first = new Dialog().say("petrol garden tractor, one click, lights stay bright");
    const standing = first.desk.triage(first.state, "technician");
    const long = (what: string) => `${what} ${"on and on about it ".repeat(200)}`;
    const dialog = new Dialog("en", { triage: () => standing })
      .say("petrol garden tractor, one click, lights stay bright")
      .press("All is safe")
      .happened(
        ...Array.from(
          { length: 9 },
          (_, n) => ({ type: "words.said", text: long(`${n}`) }) as const,
        ),
        ...Array.from(
          { length: 9 },
          (_, n) => ({ type: "note.added", text: long(`note ${n}`), from: "dispatcher" }) as const,
        ),
        { type: "urgency.told", urgency: "high", words: long("urgent") },
        { type: "where.told", words: long("behind the barn") },
        { type: "operator.asked", text: long("question"), photo: false },
        { type: "visit.cut-short", missing: long("a part") },
        { type: "shop.told" },
      );
    dialog.press("More …").press("Talk to a person");
    dialog.press("Hand to a technician", "2").press("Ilse", "2");
    const of = (slot: string) => dialog.shown.findLast((one) => one.slot === slot)?.rendered;
    // Bot API, sendMessage: 1 to 4096 characters.
    for (const slot of ["slip-2", "sheet-3"]) {
      expect(of(slot)?.text.length, slot).toBeGreaterThan(500);
      expect(of(slot)?.text.length, slot).toBeLessThanOrEqual(4096);
    }
  });
});
