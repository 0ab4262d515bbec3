import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { z } from "zod";
import { coreModel } from "../helpers/core-model.ts";
import { shippedPhrases, shippedReader } from "../helpers/shipped.ts";

const Told = z.strictObject({
  dangers: z.record(z.string(), z.array(z.string()).min(1)),
  harmless: z.array(z.string()),
});
const told = z
  .record(z.enum(["en", "de"]), Told)
  .parse(parse(readFileSync("tests/reading/dangers.yaml", "utf8")));

const reader = await shippedReader(coreModel(), "en", "de", "es");
const flagsIn = (language: string, text: string): string[] =>
  reader.read(text, { languages: [language] }).redFlags.map(({ id }) => id);

describe.each(Object.entries(told))("dangers told in %s", (language, { dangers, harmless }) => {
  it.each(Object.entries(dangers))("%s is heard in each of its wordings", (flag, texts) => {
    expect(texts.filter((text) => !flagsIn(language, text).includes(flag))).toEqual([]);
  });

  it("none is heard in what only looks like one", () => {
    const alarms = harmless.flatMap((text) => {
      const flags = flagsIn(language, text);
      return flags.length === 0 ? [] : [`${text}: ${flags.join(", ")}`];
    });
    expect(alarms).toEqual([]);
  });

  it("every red flag has its wordings", async () => {
    const phrases = await shippedPhrases(language);
    const known = [...phrases.redFlags.keys()].filter((id) => id !== "none");
    expect(Object.keys(dangers).sort()).toEqual(known.sort());
  });
});
