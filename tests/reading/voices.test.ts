import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { z } from "zod";
import type { Understood } from "../../src/domain/reading.ts";
import { readerModel } from "../../src/reading/reader-model.ts";
import { shippedKnowledge, shippedReader } from "../helpers/shipped.ts";
import { followsFrom, nameOf } from "./said-score.ts";

const claims = z.array(z.string()).default([]);
const Voices = z.array(
  z.strictObject({ say: z.string(), means: claims, unsure: claims, may: claims }),
);

/** From here on a reading that somebody states of his own machine is as good as certain. */
const CERTAIN = 0.75;

/**
 * Messages in the voices of different people, by language. The bounds are a little under what was
 * reached; wrong readings that are as good as certain are counted apart, as they cost most.
 */
const files = [
  { name: "voices", language: "en", count: 150, precision: 0.93, recall: 0.86, certain: 0.07 },
  { name: "voices-es", language: "es", count: 60, precision: 0.95, recall: 0.88, certain: 0.05 },
  { name: "voices-de", language: "de", count: 60, precision: 0.97, recall: 0.95, certain: 0.03 },
] as const;

const reader = await shippedReader(readerModel(await shippedKnowledge()), "en", "es", "de");

describe.each(files)("messages of $name", ({ name, language, count, ...bounds }) => {
  const file = new URL(`./${name}.yaml`, import.meta.url);
  const voices = Voices.parse(parse(readFileSync(file, "utf8")));
  // Made ready before the tests, as that takes longer than any of them.
  reader.read("", { languages: [language] });

  it("are read as meant, and what is doubtful is not taken for certain", () => {
    const wrong: string[] = [];
    const missed: string[] = [];
    let [found, stated, certain] = [0, 0, 0];
    for (const { say, means, unsure, may } of voices) {
      const readings = reader.read(say, { languages: [language] }).understood;
      const names = new Set(readings.map(nameOf));
      const meant = [...means.flatMap((one) => one.split("|")), ...may];
      const isMeant = (one: string): boolean => meant.includes(one) || followsFrom(one, meant);
      const surest = readings.filter(isCertain).map(nameOf);
      const bad = [...names].filter(
        (one) => !isMeant(one) && (!unsure.includes(one) || surest.includes(one)),
      );
      found += names.size;
      stated += means.length;
      certain += bad.filter((one) => surest.includes(one)).length;
      wrong.push(...bad.map((one) => `${say}: ${one}`));
      const isMissed = (one: string): boolean => !one.split("|").some((way) => names.has(way));
      missed.push(...means.filter(isMissed).map((one) => `${say}: ${one}`));
    }
    const [precision, recall] = [1 - wrong.length / found, 1 - missed.length / stated];
    const figures = `precision ${precision.toFixed(3)}, recall ${recall.toFixed(3)}`;
    process.stdout.write(`${name}: ${figures}, wrong for certain ${certain} of ${found}\n`);
    expect(precision, wrong.join("\n")).toBeGreaterThanOrEqual(bounds.precision);
    expect(recall, missed.join("\n")).toBeGreaterThanOrEqual(bounds.recall);
    expect(certain / found, wrong.join("\n")).toBeLessThanOrEqual(bounds.certain);
  });

  it(`are ${count}`, () => expect(voices).toHaveLength(count));
});

function isCertain(reading: Understood): boolean {
  return reading.source === "self" && reading.probability * (1 - reading.hedge) >= CERTAIN;
}
