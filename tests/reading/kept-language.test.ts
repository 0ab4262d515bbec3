import { readdirSync, readFileSync } from "node:fs";
import { deserialize, serialize } from "node:v8";
import { describe, expect, it } from "vitest";
import { compileLanguage } from "../../src/reading/grammar.ts";
import { type LanguageTables, openLanguage, tablesOf } from "../../src/reading/kept-language.ts";
import { createReader, createReaderOf } from "../../src/reading/reader.ts";
import { english, model } from "../helpers/english-reader.ts";

const isTables = (value: unknown): value is LanguageTables =>
  typeof value === "object" && value !== null && "signs" in value;

/** The tables as they come back from a file. */
function back(tables: LanguageTables): LanguageTables {
  const value: unknown = deserialize(serialize(tables));
  if (!isTables(value)) throw new Error("These are no tables.");
  return value;
}

const tables = tablesOf(compileLanguage(english));

describe("a language that was kept", () => {
  const folder = "tests/field/openings";
  const texts = [
    ...readdirSync(folder).map((name) => readFileSync(`${folder}/${name}`, "utf8")),
    "no clik at all, the battry is at 12,4 volts and it didnt start since october",
    "flywheel key: sheared",
    "after cleaning: starts",
    "could be the relay, not the starter. My neighbour says the fuel is old",
  ];

  const open = () => openLanguage(back(tables));
  const kept = createReaderOf([{ language: "en", open }], model);
  const fresh = createReader([english], model);
  // Made ready before the tests, as that takes longer than any of them.
  for (const one of [kept, fresh]) one.read("it clicks", { languages: ["en"] });

  it("reads every text as the one it was taken from", () => {
    for (const text of texts) {
      for (const expecting of [{}, { expecting: { observation: "on-start" } }]) {
        const options = { languages: ["en"], ...expecting };
        expect(kept.read(text, options)).toEqual(fresh.read(text, options));
      }
    }
  });

  it("gives the same tables again", () => {
    const given = back(tables);
    expect(serialize(tablesOf(openLanguage(given))).equals(serialize(given))).toBe(true);
  });
});
