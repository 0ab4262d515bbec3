import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkLocales } from "../../src/knowledge/locale-check.ts";
import { chatText, readLocales } from "../../src/knowledge/locale-files.ts";
import { expectedWords } from "../../src/knowledge/locale-words.ts";
import { missingGlyphs } from "../../src/paper/glyphs.ts";
import { createKnowledgeWords } from "../../src/wording/knowledge-words.ts";
import { pseudoText } from "../../src/wording/pseudo-locale.ts";
import { createWording } from "../../src/wording/wording.ts";
import { pseudoMessages, pseudoWords } from "../helpers/pseudo-ftl.ts";
import { smallKnowledge } from "../knowledge/locale-words.test-data.ts";

const alphabet = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";

describe("the made-up language", () => {
  it("has no plain letter left, only letters our pictures can draw", () => {
    const text = pseudoText(alphabet, { longer: 0 });
    expect(text).not.toMatch(/[a-z]/i);
    expect([...text]).toHaveLength(52);
    expect(new Set(text).size).toBe(52);
    expect(missingGlyphs(pseudoText(alphabet.repeat(9), { rightToLeft: true }))).toEqual([]);
  });

  it("is forty percent longer than English and keeps the space round a variable", () => {
    const text = fc.string({ unit: fc.constantFrom(..."ab cd,."), minLength: 5 });
    fc.assert(
      fc.property(
        text.map((body) => `a${body}b`),
        (body) => {
          const pseudo = pseudoText(` ${body}\n`);
          expect(pseudo.length).toBe(Math.ceil(body.length * 1.4) + 2);
          expect(pseudo).toMatch(/^ \S[\s\S]*\S\n$/);
        },
      ),
      { seed: 2 },
    );
  });

  it("leaves numbers and signs as they are", () => {
    expect(pseudoText(" → 12 ")).toBe(" → 12 ");
    expect(pseudoText(" ", { rightToLeft: true })).toBe(" ");
  });

  it("begins with a strong mark of its direction and closes every override", () => {
    const text = pseudoText("two words", { rightToLeft: true, longer: 0 });
    expect(text).toBe("\u200F\u202Eťŵó\u202C \u202Eŵóŕđš\u202C");
  });
});

describe("whole locales of it", () => {
  it("pass the check and are spoken, messages and knowledge", async () => {
    const folder = await mkdtemp(join(tmpdir(), "pseudo-"));
    const english = "hello = Hello, { $n ->\n    [one] { $name }\n   *[other] all of you\n}.\n";
    const knowledge = smallKnowledge({ tools: { brush: "[Wire] {brush}", meter: "Voltmeter" } });
    const strange = { rightToLeft: true };
    for (const [name, text] of [
      ["en/chat.ftl", english],
      ["ar-XB/chat.ftl", pseudoMessages(english, strange)],
      ["ar-XB/knowledge.ftl", pseudoWords(expectedWords(knowledge), strange)],
    ] as const) {
      await mkdir(join(folder, name, ".."), { recursive: true });
      await writeFile(join(folder, name), text);
    }
    expect((await checkLocales(folder, knowledge)).problems).toEqual([]);

    const locales = await readLocales(folder);
    const wording = createWording({
      locales: Object.fromEntries(locales.map((texts) => [texts.language, chatText(texts)])),
      knowledgeWord: createKnowledgeWords({
        english: expectedWords(knowledge),
        translations: Object.fromEntries(
          locales.map(({ language, knowledge: text }) => [language, text ?? ""]),
        ),
      }),
      timeZone: "UTC",
      report: (trouble) => expect(trouble).toBeNull(),
    });
    const tool = wording.phrase({ know: "tool-brush" }, "ar-XB");
    expect(tool).toBe(pseudoText("[Wire] {brush}", strange));
    const greeting = wording.phrase({ key: "hello", args: { n: 1, name: "Ana" } }, "ar-XB");
    expect(greeting).toContain("\u2068Ana\u2069");
    expect(greeting).toContain(`\u202E${pseudoText("Hello,", { longer: 0 })}\u202C`);
    await rm(folder, { recursive: true });
  });

  it("can be made of our own English, every message of it", async () => {
    const [english] = await readLocales(fileURLToPath(new URL("../../locales", import.meta.url)));
    const folder = await mkdtemp(join(tmpdir(), "pseudo-"));
    for (const language of ["en", "en-XA"]) await mkdir(join(folder, language));
    for (const [name, text] of Object.entries(english?.chat ?? {})) {
      await writeFile(join(folder, "en", name), text);
      await writeFile(join(folder, "en-XA", name), pseudoMessages(text));
    }
    const { problems, words } = await checkLocales(folder, smallKnowledge({}));
    // What forty percent more makes too long for a button is cut by the wording; see its tests.
    expect(problems.filter(({ says }) => !says.includes("has room for"))).toEqual([]);
    expect(words).toMatchObject({ "en-XA": { missing: 0, stale: 0 } });
    await rm(folder, { recursive: true });
  });
});
