import { describe, expect, it } from "vitest";
import { coreModel } from "../helpers/core-model.ts";
import { shippedReader } from "../helpers/shipped.ts";
import { loadOpenings, scoreOpenings } from "./score.ts";

/** Asked of every language before it ships: nine of ten things found are right. */
const PRECISION = 0.9;
const RECALL = 0.75;

const reader = await shippedReader(coreModel(), "es");

describe("reading first messages in Spanish", () => {
  it.each(["es", "es-held-out"])("finds what those of %s state, nothing they deny", (name) => {
    const score = scoreOpenings(reader, loadOpenings(name), "es");
    expect(score.precision, score.wrong.join("\n")).toBeGreaterThanOrEqual(PRECISION);
    expect(score.recall, score.missed.join("\n")).toBeGreaterThanOrEqual(RECALL);
    expect(score.denied).toEqual([]);
  });
});
