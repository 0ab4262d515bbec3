import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { drawableText, missingGlyphs } from "../../src/paper/glyphs.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));

function texts(folder: string, ending: string): [string, string][] {
  return readdirSync(`${root}${folder}`, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(ending))
    .map((name) => [`${folder}/${name}`, readFileSync(`${root}${folder}/${name}`, "utf8")]);
}

describe("characters our pictures cannot draw", () => {
  it("are found, each once", () => {
    expect(missingGlyphs("a🚜b漢🚜\n\u2068c\u2069\u00A0\u202F")).toEqual(["🚜", "漢"]);
  });

  it("are left out without a hole", () => {
    expect(drawableText("Anna 🚜 Berg 🚜")).toBe("Anna Berg");
    expect(drawableText("as it  stands")).toBe("as it  stands");
    expect(drawableText("12.4\u00A0V 🚜 now")).toBe("12.4\u00A0V now");
  });

  it("stand in no message and in no word of the knowledge", () => {
    const messages = texts("locales", ".ftl");
    expect(messages.length).toBeGreaterThan(0);
    const missing = [...messages, ...texts("flows", ".yaml")]
      .map(([file, text]) => ({ file, missing: missingGlyphs(text) }))
      .filter((found) => found.missing.length > 0);
    expect(missing).toEqual([]);
  });
});
