import { describe, expect, it } from "vitest";
import { loadPhrases } from "../../src/knowledge/phrases.ts";
import { createReader } from "../../src/reading/reader.ts";
import { coreModel } from "../helpers/core-model.ts";
import { loadOpenings, scoreOpenings } from "./score.ts";

/** Asked of every language before it ships: nine of ten things found are right. */
const PRECISION = 0.9;
const RECALL = 0.75;

const loaded = loadPhrases(".", null);
const german = loaded.ok ? loaded.value.find(({ language }) => language === "de") : undefined;
if (german === undefined) throw new Error("there are no German phrases");
const reader = createReader([german], coreModel());

describe("reading first messages in German", () => {
  it("finds what they state, and nothing they deny", () => {
    const score = scoreOpenings(reader, loadOpenings("de"), "de");
    expect(score.precision, score.wrong.join("\n")).toBeGreaterThanOrEqual(PRECISION);
    expect(score.recall, score.missed.join("\n")).toBeGreaterThanOrEqual(RECALL);
    expect(score.denied).toEqual([]);
  });
});
