import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readCircuitTexts, readFlowTexts } from "../../src/knowledge/flow-texts.ts";
import { phraseLanguages, readPhraseText } from "../../src/knowledge/phrase-texts.ts";

let root: string;
const write = (path: string, text: string) => {
  mkdirSync(join(root, path, ".."), { recursive: true });
  writeFileSync(join(root, path), text);
};
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), "turnrow-texts-"));
  write("flows/systems/b.yaml", "b");
  write("flows/systems/a.yaml", "a");
  write("flows/systems/_template.yaml", "hidden");
  write("flows/machines/m.yaml", "m");
  write("flows/machines/old.yml", "old");
  write("flows/loose.yaml", "loose");
  write("flows/circuits/two.yaml", "2");
  write("flows/circuits/one.yaml", "1");
  for (const language of ["de", "en"]) write(`locales/${language}/phrases.yaml`, language);
  write("locales/fr/chat.ftl", "no phrases");
});
afterAll(() => rmSync(root, { recursive: true }));

describe("the texts of the knowledge", () => {
  it("are those of the known folders, in the order of their names", () => {
    const { texts } = readFlowTexts(join(root, "flows"));
    expect(texts.map(({ path, text }) => `${path} ${text}`)).toEqual([
      "systems/a.yaml a",
      "systems/b.yaml b",
      "machines/m.yaml m",
    ]);
  });
  it("leave out files that nobody would read, and say so", () => {
    const { stray } = readFlowTexts(join(root, "flows"));
    expect(stray.map(({ file }) => file).sort()).toEqual([
      "flows/loose.yaml",
      "flows/machines/old.yml",
    ]);
  });
  it("are none where there is no folder", () => {
    expect(readFlowTexts(join(root, "nowhere"))).toEqual({ texts: [], stray: [] });
  });
  it("have those of the circuits beside them", () => {
    expect(readCircuitTexts(root)).toEqual([
      { file: "flows/circuits/one.yaml", text: "1" },
      { file: "flows/circuits/two.yaml", text: "2" },
    ]);
  });
  it("are given for each language that has phrases, English first", () => {
    expect(phraseLanguages(root)).toEqual(["en", "de"]);
    const german = { file: "locales/de/phrases.yaml", text: "de" };
    expect(readPhraseText(root, "de")).toEqual(german);
  });
});
