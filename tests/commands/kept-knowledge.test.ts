import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openKnowledgeFiles } from "../../src/commands/kept-knowledge.ts";
import { loadCircuits } from "../../src/knowledge/circuit-files.ts";
import { loadKnowledge } from "../../src/knowledge/load.ts";
import { knownStates, loadPhrases } from "../../src/knowledge/phrases.ts";
import { compileLanguage } from "../../src/reading/grammar.ts";
import { tablesOf } from "../../src/reading/kept-language.ts";

let root: string;
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), "turnrow-kept-knowledge-"));
  cpSync("flows", join(root, "flows"), { recursive: true });
  for (const language of ["en", "es"]) {
    const phrases = join("locales", language, "phrases.yaml");
    cpSync(phrases, join(root, phrases));
  }
});
afterAll(() => rmSync(root, { recursive: true }));

/** Everything the files say, understood without anything kept. */
async function fresh() {
  const knowledge = await loadKnowledge(join(root, "flows"), "usable");
  if (!knowledge.ok) throw new Error("The knowledge cannot be read.");
  const phrases = loadPhrases(root, knownStates(knowledge.value), ["es"]);
  if (!phrases.ok) throw new Error("The phrases cannot be read.");
  const languages = { ok: true, value: phrases.value.map((one) => tablesOf(compileLanguage(one))) };
  return { knowledge, languages, circuits: { ok: true, value: loadCircuits(root).circuits } };
}

async function kept() {
  const files = openKnowledgeFiles(root);
  const knowledge = await files.knowledge();
  if (!knowledge.ok) throw new Error("The knowledge cannot be read.");
  const spoken = await files.languages(knowledge.value, ["es"]);
  if (!spoken.ok) throw new Error("The phrases cannot be read.");
  const languages = { ok: true, value: spoken.value.map((one) => tablesOf(one.open())) };
  return { knowledge, languages, circuits: await files.circuits() };
}

const folder = () => join(root, ".cache", "knowledge");

describe("knowledge that is kept", { timeout: 60_000 }, () => {
  it("is what the files say: at first, as read back, and with every kept file damaged", async () => {
    const expected = await fresh();
    expect(await kept()).toEqual(expected);
    const names = readdirSync(folder());
    expect(names).toEqual(["circuits-ts.kept", "knowledge-ts.kept", "language-es-ts.kept"]);
    expect(await kept()).toEqual(expected);
    for (const name of names) {
      const half = readFileSync(join(folder(), name));
      writeFileSync(join(folder(), name), half.subarray(0, half.length / 2));
    }
    expect(await kept()).toEqual(expected);
  });

  it("follows every change of a file", async () => {
    const path = join(root, "flows", "systems", "battery.yaml");
    const before = readFileSync(path, "utf8");
    const now = () => openKnowledgeFiles(root).knowledge();
    const first = await now();
    writeFileSync(path, before.replace(/^title: .*$/m, "title: Another name"));
    const second = await now();
    expect(second).toEqual(await loadKnowledge(join(root, "flows"), "usable"));
    expect(second).not.toEqual(first);
    writeFileSync(path, before);
    expect(await now()).toEqual(first);
  });

  it("does not hide a mistake", async () => {
    await kept();
    const stray = join(root, "flows", "stray.yaml");
    writeFileSync(stray, "title: Nowhere\n");
    const read = await openKnowledgeFiles(root).knowledge();
    expect(read.ok ? [] : read.problems.map(({ file }) => file)).toEqual(["flows/stray.yaml"]);
    rmSync(stray);
  });
});
