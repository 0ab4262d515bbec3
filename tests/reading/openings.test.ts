import { describe, expect, it } from "vitest";
import { readFact } from "../../src/reading/read-fact.ts";
import { model, reader } from "../helpers/english-reader.ts";
import { loadFacts, loadOpenings, scoreOpenings, scoreStates } from "./score.ts";

/** What is asked of the reader: nearly nothing wrong, three quarters found. */
const PRECISION = 0.95;
const RECALL = 0.75;

describe("reading first messages", () => {
  // Made ready before the tests, as that takes longer than any of them.
  reader.read("it clicks", { languages: ["en"] });

  it.each(["written-on", "held-out"])("finds what the openings %s state", (name) => {
    const score = scoreOpenings(reader, loadOpenings(name), "en");
    expect(score.precision, score.wrong.join("\n")).toBeGreaterThanOrEqual(PRECISION);
    expect(score.recall, score.missed.join("\n")).toBeGreaterThanOrEqual(RECALL);
    expect(score.denied).toEqual([]);
  });

  it("finds what entries of written-down cases state", () => {
    const facts = loadFacts();
    const score = scoreStates(facts, ({ key, value }) => {
      const tools = { model, reader, options: { languages: ["en"] } };
      return readFact(key, value, tools).understood;
    });
    expect(score.precision, score.wrong.join("\n")).toBeGreaterThanOrEqual(PRECISION);
    expect(score.recall, score.missed.join("\n")).toBeGreaterThanOrEqual(RECALL);
  });
});
