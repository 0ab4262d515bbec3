import { readFileSync } from "node:fs";
import stemmers from "snowball-stemmers";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { z } from "zod";

/** Stems with the words that have them; where they were published stands in each file. */
const Sample = z.record(z.string(), z.string());

describe.each(["english", "spanish", "german"])("the %s stemmer", (language) => {
  const file = new URL(`./stemmers/${language}.yaml`, import.meta.url);
  const words = Object.entries(Sample.parse(parse(readFileSync(file, "utf8")))).flatMap(
    ([stem, all]) => all.split(" ").map((word) => ({ word, stem })),
  );
  const stemmer = stemmers.newStemmer(language);

  it("turns every word of its published sample into the published stem", () => {
    expect(words.filter(({ word, stem }) => stemmer.stem(word) !== stem)).toEqual([]);
  });

  it("is given two hundred of them", () => expect(words.length).toBeGreaterThanOrEqual(200));
});
