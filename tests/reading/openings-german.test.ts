import { describe, expect, it } from "vitest";
import { coreModel } from "../helpers/core-model.ts";
import { shippedReader } from "../helpers/shipped.ts";
import { loadOpenings, scoreOpenings } from "./score.ts";

/** Asked of every language before it ships: nine of ten things found are right. */
const PRECISION = 0.9;
const RECALL = 0.75;

const reader = await shippedReader(coreModel(), "de");

describe("reading first messages in German", () => {
  it("finds what they state, and nothing they deny", () => {
    const score = scoreOpenings(reader, loadOpenings("de"), "de");
    expect(score.precision, score.wrong.join("\n")).toBeGreaterThanOrEqual(PRECISION);
    expect(score.recall, score.missed.join("\n")).toBeGreaterThanOrEqual(RECALL);
    expect(score.denied).toEqual([]);
  });
});
