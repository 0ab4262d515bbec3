// Also covers speaker.ts, language-pack.ts, moments.ts and trouble.ts, which it drives through render and phrase.
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Arg, Line, Message, Phrase } from "../../src/domain/effects.ts";
import type { WordingTrouble } from "../../src/wording/trouble.ts";
import { createWording } from "../../src/wording/wording.ts";

const units = readFileSync(new URL("../../locales/en/units.ftl", import.meta.url), "utf8");
const english = `${units}
hello = Hello, { $name }.
only-english = Only here: { $volts }
both = { $first } and { $second }
minutes = { $count ->
    [one] one minute
   *[other] { $count } minutes
}
button-yes = Yes
`;
const german = `
mark-caution = Achtung:
unit-volt = V
hello = Guten Tag, { $name }.
both = { $first } und { $second } und { $third }
minutes = { $count ->
    [one] eine Minute
   *[other] { $count } Minuten
}
`;
const hebrew = `
mark-caution = זהירות:
hello = שלום { $name }!
`;
const words: Record<string, Record<string, string>> = {
  en: { "fault-earth": "Corroded earth strap", "fault-new": "A new fault" },
  de: { "fault-earth": "Masseband korrodiert" },
};

function setUp(locales: Record<string, string> = { en: english, de: german, he: hebrew }) {
  const troubles: WordingTrouble[] = [];
  const wording = createWording({
    locales,
    knowledgeWord: (key, language) => words[language]?.[key] ?? null,
    timeZone: "Europe/Berlin",
    report: (trouble) => troubles.push(trouble),
  });
  const say = (key: string, args: Record<string, Arg>, language: string) =>
    wording.phrase({ key, args }, language);
  return { wording, troubles, say };
}

describe("phrases", () => {
  it("come from the language asked for", () => {
    expect(setUp().say("hello", { name: "Ana" }, "de")).toBe("Guten Tag, Ana.");
  });

  it("come from the same language elsewhere, then from English", () => {
    expect(setUp().say("hello", { name: "Ana" }, "de-AT")).toBe("Guten Tag, Ana.");
    expect(setUp().say("hello", { name: "Ana" }, "fr")).toBe("Hello, Ana.");
  });

  it("use the plural rules of the language", () => {
    const { say } = setUp();
    expect(say("minutes", { count: 1 }, "de")).toBe("eine Minute");
    expect(say("minutes", { count: 2 }, "de")).toBe("2 Minuten");
  });

  it("fall back to English as a whole, numbers too, and report it", () => {
    const { say, troubles } = setUp();
    const text = say("only-english", { volts: { quantity: 12.4, unit: "V" } }, "de");
    expect(text).toBe("Only here: 12.4\u00A0V");
    expect(troubles).toEqual([
      { language: "de", key: "only-english", says: "There is no such message." },
    ]);
  });

  it("fall back to English where only the translation wants a variable nobody gives", () => {
    const { say, troubles } = setUp();
    expect(say("both", { first: "a", second: "b" }, "de")).toBe("a and b");
    expect(troubles).toHaveLength(1);
  });

  it("show the name of a missing variable in plain form", () => {
    const { say, troubles } = setUp();
    expect(say("both", { first: "a" }, "en")).toBe("a and second");
    expect(troubles[0]?.says).toContain("second");
  });

  it("show a key nobody has in plain form", () => {
    const { say, troubles } = setUp();
    expect(say("ask-meter-ready", {}, "de")).toBe("ask meter ready");
    expect(troubles).toHaveLength(1);
  });

  it("survive a message with more placeables than Fluent allows", () => {
    const { say } = setUp({ en: `much = ${"{ $name }".repeat(150)}` });
    expect(say("much", { name: "x" }, "en")).toBe("much");
  });

  it("hold words of the knowledge, in English where a translation is missing", () => {
    const { wording, troubles } = setUp();
    expect(wording.phrase({ know: "fault-earth" }, "de")).toBe("Masseband korrodiert");
    expect(wording.phrase({ know: "fault-new" }, "de")).toBe("A new fault");
    expect(wording.phrase({ know: "fault-gone" }, "de")).toBe("fault gone");
    expect(troubles.map((trouble) => trouble.key)).toEqual(["fault-new", "fault-gone"]);
  });

  it("never interpret a person's words", () => {
    const { wording, say } = setUp();
    const nasty = '{ $name } { hello } <b>&amp; {"x"} -term *[other]';
    expect(wording.phrase({ raw: nasty }, "en")).toBe(nasty);
    expect(say("hello", { name: nasty }, "en")).toBe(`Hello, ${nasty}.`);
  });

  it("take out of a person's words what would turn the text around them", () => {
    const { say } = setUp();
    expect(say("hello", { name: "A\u202Enn\u0007\uD800" }, "en")).toBe("Hello, Ann\uFFFD.");
  });

  it("keep a name that runs the other way apart", () => {
    const { say } = setUp();
    expect(say("hello", { name: "אבי" }, "en")).toBe("Hello, \u2068אבי\u2069.");
    expect(say("hello", { name: "Ana" }, "he")).toBe("שלום \u2068Ana\u2069!");
  });

  it("join a list as the language does", () => {
    const { say } = setUp();
    const list = { list: ["a", "b", { know: "fault-earth" }] };
    expect(say("hello", { name: list }, "en")).toBe("Hello, a, b and Corroded earth strap.");
    expect(say("hello", { name: list }, "de")).toBe("Guten Tag, a, b und Masseband korrodiert.");
    expect(say("hello", { name: { list: [] } }, "en")).toBe("Hello, none.");
  });

  it("show a moment in the shop's time zone", () => {
    const { say } = setUp();
    const noonInJuly = Date.UTC(2025, 6, 1, 12, 5);
    expect(say("hello", { name: { time: noonInJuly, style: "hour" } }, "de")).toContain("14:05");
    const text = say("hello", { name: { time: noonInJuly, style: "day-hour" } }, "en");
    expect(text).toMatch(/Tue,? 1 Jul.*14:05/);
    expect(say("hello", { name: { time: Number.NaN, style: "day" } }, "en")).toBe("Hello, –.");
  });
});

describe("messages", () => {
  const press = { revision: 3, act: "answer", value: "yes" };

  it("carry buttons, offers, files and places through", () => {
    const { wording } = setUp();
    const message: Message = {
      lines: [{ say: { raw: "Well?" } }],
      buttons: [[{ label: { key: "button-yes" }, press }], [{ label: { raw: "" }, press }]],
      offer: { share: "location", label: { raw: "Share my place" } },
      endOffer: true,
      file: { id: "f1", kind: "photo" },
      place: { latitude: 1, longitude: 2 },
    };
    expect(wording.render(message, "en")).toEqual({
      text: "Well?",
      entities: [],
      buttons: [[{ label: "Yes", press }], [{ label: "…", press }]],
      share: { kind: "location", label: "Share my place" },
      endShare: true,
      file: { id: "f1", kind: "photo" },
      place: { latitude: 1, longitude: 2 },
    });
  });

  it("leave out what was not given", () => {
    const { wording } = setUp();
    expect(wording.render({ lines: [] }, "en")).toEqual({ text: "", entities: [], buttons: [] });
  });

  it("warn with a word of the language", () => {
    const { wording } = setUp();
    const lines: Line[] = [{ say: { raw: "Key off." }, style: "caution" }];
    expect(wording.render({ lines }, "de").text).toBe("Achtung: Key off.");
    expect(wording.render({ lines }, "he").text).toBe("זהירות: Key off.");
  });

  it("hold whole characters only, entities inside the text, whatever people write", () => {
    const { wording } = setUp();
    const anyText = fc.oneof(
      fc
        .array(fc.integer({ min: 1, max: 0x10ffff }))
        .map((codes) => String.fromCodePoint(...codes)),
      fc.string({ unit: fc.constantFrom("a", " ", "\n", "{", "🚜", "ע", "\u2068") }),
      fc.array(fc.integer({ min: 0, max: 0xffff })).map((codes) => String.fromCharCode(...codes)),
    );
    const phrase: fc.Arbitrary<Phrase> = fc.oneof(
      anyText.map((raw) => ({ raw })),
      anyText.map((name) => ({ key: "hello", args: { name: { list: [name, name] } } })),
      anyText.map((key) => ({ key, args: { a: 1 } })),
    );
    const line = fc.record({
      say: phrase,
      style: fc.constantFrom("heading", "bullet", "quote", "caution", "step" as const),
      gap: fc.boolean(),
    });
    const message = fc.record({
      lines: fc.array(line, { maxLength: 4 }),
      buttons: fc.array(
        fc.array(fc.record({ label: phrase, press: fc.constant(press) }), { maxLength: 2 }),
        { maxLength: 2 },
      ),
    });
    fc.assert(
      fc.property(message, fc.constantFrom("en", "de", "he", "xx", ""), (given, language) => {
        const { text, entities, buttons } = wording.render(given, language);
        expect(text).not.toMatch(/\p{Surrogate}/u);
        expect(text).toBe(text.trim());
        for (const { offset, length } of entities) {
          expect(length).toBeGreaterThan(0);
          expect(offset + length).toBeLessThanOrEqual(text.length);
          const inside = text.slice(offset, offset + length);
          expect(inside).toBe(inside.trim());
          expect(inside).not.toMatch(/\p{Surrogate}/u);
        }
        for (const { label } of buttons.flat()) {
          expect(label.length).toBeGreaterThan(0);
          expect(label.length).toBeLessThanOrEqual(64);
          expect(label).not.toMatch(/\p{Surrogate}|\n/u);
        }
      }),
      { seed: 11, numRuns: 100 },
    );
  });
});
