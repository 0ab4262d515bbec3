import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import { z } from "zod";

/** Plural rules of the Unicode CLDR, with its sample numbers: package cldr-core. */
const Rules = z.object({
  supplemental: z.object({
    "plurals-type-cardinal": z.record(z.string(), z.record(z.string(), z.string())),
  }),
});
const path = createRequire(import.meta.url).resolve("cldr-core/supplemental/plurals.json");
const published = Rules.parse(JSON.parse(readFileSync(path, "utf8"))).supplemental;
const PREFIX = "pluralRule-count-";

function categoriesOf(language: string): ReadonlyMap<string, readonly number[]> {
  const rules = published["plurals-type-cardinal"][language] ?? {};
  return new Map(
    Object.entries(rules).map(([key, rule]) => [key.slice(PREFIX.length), wholeSamples(rule)]),
  );
}

/** "@integer 0, 2~16, 100, …": what stands there in plain figures. */
function wholeSamples(rule: string): readonly number[] {
  const list = /@integer ([^@]*)/.exec(rule)?.[1] ?? "";
  return list.split(",").flatMap((part) => {
    const [from, to] = part.trim().split("~").map(Number);
    if (from === undefined || !Number.isInteger(from)) return [];
    return Array.from({ length: (to ?? from) - from + 1 }, (_, at) => from + at);
  });
}

const languages = readdirSync("locales").filter((name) => /^[a-z]{2}$/.test(name));

describe.each(languages)("plurals in %s", (language) => {
  const categories = categoriesOf(language);

  it("are chosen as the CLDR publishes them, for each of its whole sample numbers", () => {
    const rules = new Intl.PluralRules(language);
    const samples = [...categories].flatMap(([category, numbers]) =>
      numbers.map((number) => [number, category] as const),
    );
    expect(samples.length).toBeGreaterThan(15);
    expect(samples.filter(([number, category]) => rules.select(number) !== category)).toEqual([]);
  });

  it("have forms that the language knows, and one for all the rest", () => {
    for (const name of readdirSync(`locales/${language}`).filter((one) => one.endsWith(".ftl"))) {
      const text = readFileSync(`locales/${language}/${name}`, "utf8");
      const forms = [...text.matchAll(/\[(zero|one|two|few|many)\]/g)].map(
        ([, form]) => form ?? "",
      );
      expect(forms.filter((form) => !categories.has(form))).toEqual([]);
      const open = text.match(/\[(?:zero|one|two|few|many)\]/g)?.length ?? 0;
      expect(text.match(/\*\[/g)?.length ?? 0).toBeGreaterThanOrEqual(open);
    }
  });
});

describe("decimal marks", () => {
  // Unicode CLDR, numbers of en, de and es: "." in English, "," in the others (from memory).
  it.each([
    ["en", "."],
    ["de", ","],
    ["es", ","],
  ])("in %s it is %s, and the reader's thousands mark is another one", (language, mark) => {
    const parts = new Intl.NumberFormat(language).formatToParts(12.4);
    expect(parts.find(({ type }) => type === "decimal")?.value).toBe(mark);
    const phrases = readFileSync(`locales/${language}/phrases.yaml`, "utf8");
    expect(/^ {2}thousands: "(.)"$/m.exec(phrases)?.[1]).not.toBe(mark);
  });
});
