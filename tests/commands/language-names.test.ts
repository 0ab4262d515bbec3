import { expect, it } from "vitest";
import { languageNames } from "../../src/commands/language-names.ts";

it("names each language as its own speakers do", () => {
  expect(languageNames("en")).toBe("English");
  expect(languageNames("de")).toBe("Deutsch");
  expect(languageNames("es")).toBe("español");
});
