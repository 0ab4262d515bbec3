import { describe, expect, it } from "vitest";
import { chooseLanguage, detectLanguage } from "../../src/reading/choose-language.ts";
import { read } from "../helpers/english-reader.ts";

const empty = { ...read(""), language: "es" };

describe("the language of a message", () => {
  it.each([
    ["the tractor will not start this morning", "en"],
    ["el tractor no arranca esta mañana", "es"],
    ["der Traktor springt heute nicht an", "de"],
  ])("is told for: %s", (text, language) =>
    expect(detectLanguage(text, ["en", "es", "de"])).toBe(language),
  );

  it("is not told from fewer than four words", () =>
    expect(detectLanguage("no arranca", ["en", "es"])).toBeNull());

  it("is the one that makes most of the message", () =>
    expect(chooseLanguage("one click", [empty, read("one click")], ["es"]).language).toBe("en"));

  it("is the person's own when none makes more of it", () => {
    const other = read("ok");
    const results = [other, { ...other, language: "es" }];
    expect(chooseLanguage("ok", results, ["es", "en"]).language).toBe("es");
    expect(chooseLanguage("ok", results, ["en", "es"]).language).toBe("en");
  });

  it("needs at least one reading", () => expect(() => chooseLanguage("", [], [])).toThrow());
});
