import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { z } from "zod";
import type { ReadingResult } from "../../src/domain/reading.ts";
import { readerModel } from "../../src/reading/reader-model.ts";
import { shippedKnowledge, shippedReader } from "../helpers/shipped.ts";

const claims = z.array(z.string()).default([]);
const Sentences = z.array(
  z.strictObject({ say: z.string(), states: claims, cleared: claims, acts: claims, may: claims }),
);

/** Said with any work on a part; neither asked for nor wrong. */
const ALWAYS = new Set(["recent-event=parts-replaced", "on-start=starts"]);

const reader = await shippedReader(readerModel(await shippedKnowledge()), "en", "de", "es");

describe.each(["es", "de"])("parts that somebody looked at, in %s", (language) => {
  const file = new URL(`./parts/${language}.yaml`, import.meta.url);
  const sentences = Sentences.parse(parse(readFileSync(file, "utf8")));
  const wrong: string[] = [];
  const missed: string[] = [];
  let [found, stated] = [0, 0];
  for (const { say, states, cleared, acts, may } of sentences) {
    const read = told(reader.read(say, { languages: [language] }));
    const meant = [
      ...states,
      ...cleared.map((one) => `no ${one}`),
      ...acts.map((one) => `did ${one}`),
    ];
    found += read.length;
    stated += meant.length;
    const fitting = [...meant.flatMap((one) => one.split("|")), ...may];
    wrong.push(...read.filter((one) => !fitting.includes(one)).map(at(say)));
    const isMissed = (one: string): boolean => !one.split("|").some((way) => read.includes(way));
    missed.push(...meant.filter(isMissed).map(at(say)));
  }

  it("are read as bad, as good, or as mended with what came of it", () => {
    const [precision, recall] = [1 - wrong.length / found, 1 - missed.length / stated];
    const figures = `precision ${precision.toFixed(3)}, recall ${recall.toFixed(3)}`;
    process.stdout.write(`parts in ${language}: ${figures}\n`);
    expect(precision, wrong.join("\n")).toBeGreaterThanOrEqual(0.95);
    expect(recall, missed.join("\n")).toBeGreaterThanOrEqual(0.95);
  });

  it("are fifty", () => expect(sentences).toHaveLength(50));
});

const at = (say: string) => (one: string) => `${say}: ${one}`;

function told(result: ReadingResult): readonly string[] {
  const states = result.understood.map(
    (one) => `${one.observation}=${"state" in one ? one.state : one.value}`,
  );
  const ruledOut = result.denied.map((one) => `no ${one.observation}=${one.state}`);
  const acts = result.acts.map(({ act, outcome }) => `did ${act} ${outcome}`);
  return [...new Set([...states, ...ruledOut, ...acts])].filter((one) => !ALWAYS.has(one));
}
