import { describe, expect, it } from "vitest";
import { loadPhrases } from "../../src/knowledge/phrases.ts";
import { createReader } from "../../src/reading/reader.ts";
import { coreModel } from "../helpers/core-model.ts";
import { loadOpenings, scoreOpenings } from "./score.ts";

/** Asked of every language before it ships: nine of ten things found are right. */
const PRECISION = 0.9;
const RECALL = 0.75;

const loaded = loadPhrases(".", null);
const spanish = loaded.ok ? loaded.value.find(({ language }) => language === "es") : undefined;
if (spanish === undefined) throw new Error("there are no Spanish phrases");
const reader = createReader([spanish], coreModel());

describe("reading first messages in Spanish", () => {
  it.each(["es", "es-held-out"])("finds what those of %s state, nothing they deny", (name) => {
    const score = scoreOpenings(reader, loadOpenings(name), "es");
    expect(score.precision, score.wrong.join("\n")).toBeGreaterThanOrEqual(PRECISION);
    expect(score.recall, score.missed.join("\n")).toBeGreaterThanOrEqual(RECALL);
    expect(score.denied).toEqual([]);
  });
});
