import { describe, expect, it } from "vitest";
import { parseCases } from "../../src/commands/case-files.ts";
import { languagesOf } from "../../src/commands/case-languages.ts";

const known = ["en", "de", "es"];
const languages = (...openings: string[]) => {
  const text = openings.map((one, at) => `- { id: c${at}, opening: "${one}" }`).join("\n");
  const parsed = parseCases(text, "cases.yaml");
  return parsed.ok ? languagesOf(parsed.value.cases, known) : [];
};

describe("the languages of written-down cases", () => {
  it("are those they are written in, in the order of those known", () => {
    expect(languages("The tractor only clicks when I turn the key")).toEqual(["en"]);
    expect(
      languages(
        "El tractor no arranca, solo hace un ruido cuando giro la llave",
        "Der Schlepper springt nicht an, es klickt nur einmal",
      ),
    ).toEqual(["de", "es"]);
  });

  it("are all of them where the words are too few to tell", () => {
    expect(languages("The tractor only clicks when I turn the key", "klick")).toEqual(known);
  });
});
