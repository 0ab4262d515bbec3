import { cp, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { loadKnowledge, readKnowledge } from "../../src/knowledge/load.ts";
import { knowledgeOf, lineOfText, planted, problemsOf } from "./small-flows.ts";

const flows = fileURLToPath(new URL("../../flows", import.meta.url));

describe("loading the knowledge", { timeout: 60_000 }, () => {
  it("reads a small correct set of files", () => {
    expect(problemsOf()).toEqual([]);
    expect([...knowledgeOf().faults.keys()]).toEqual(["flat", "worn", "empty-tank"]);
  });

  it("finds nothing wrong with the files it ships", async () => {
    const read = await loadKnowledge(flows);
    expect(read.ok ? [] : read.problems).toEqual([]);
  });

  it("reports mistakes of every stage at once, in the order of files and lines", () => {
    const changes = [
      { path: "machines/atv.yaml", from: "offer: 1", to: "ofer: 1" },
      { path: "machines/combine.yaml", from: "title: A machine", to: "title: A machine #4" },
      { from: "share: 10", to: "share: ten" },
      { from: "remedies: new-battery", to: "remedies: new-batery" },
      {
        from: "shows: { rest-volts: { good: nearly-always } }",
        to: "shows: { rest-volts: { good: rarely } }",
      },
      { from: "cautions: safe-stop }\n  read-rest", to: "cautions: gas }\n  read-rest" },
    ];
    const found = problemsOf(...changes);
    expect(found.map(({ file, line }) => `${file}:${line}`)).toEqual([
      "flows/machines/atv.yaml:1",
      "flows/machines/atv.yaml:3",
      "flows/machines/combine.yaml:1",
      `flows/systems/starting.yaml:${lineOfText("see-lamps", ...changes)}`,
      `flows/systems/starting.yaml:${lineOfText("share: ten", ...changes)}`,
      `flows/systems/starting.yaml:${lineOfText("rest-volts: { good: rarely", ...changes)}`,
      `flows/systems/starting.yaml:${lineOfText("new-batery", ...changes)}`,
    ]);
  });

  it("does not call an id unknown that stands in a file which cannot be read", () => {
    const found = problemsOf({
      from: "  flat:\n    title: Battery flat",
      to: "  flat:\n\ttitle: x",
    });
    expect(found.map(({ file }) => file)).toEqual(["flows/systems/starting.yaml"]);
    const oneFault = problemsOf({ from: "share: 10", to: "share: -1" });
    expect(oneFault).toHaveLength(1);
  });

  it("gives another version when a fact changes, and the same when only a remark does", () => {
    const version = knowledgeOf().version;
    expect(knowledgeOf({ from: "share: 10", to: "share: 11" }).version).not.toBe(version);
    expect(
      knowledgeOf({ from: "title: Starting\n", to: "# remark\ntitle: Starting\n" }).version,
    ).toBe(version);
  });

  it("does not depend on the order of the files", () => {
    const read = readKnowledge([...planted()].reverse());
    expect(read.ok && [...read.value.faults.keys()].sort()).toEqual(["empty-tank", "flat", "worn"]);
  });

  it("skips files with an underscore, takes the template once it has a name, and reports strays", async () => {
    const folder = await mkdtemp(join(tmpdir(), "flows-"));
    await cp(flows, folder, { recursive: true });
    await writeFile(join(folder, "systems", "_draft.yaml"), "this: is not a system\n");
    await writeFile(join(folder, "systems", "other.yml"), "title: Other\n");
    await cp(join(flows, "systems/_template.yaml"), join(folder, "systems/my-system.yaml"));
    expect((await loadKnowledge(folder)).ok).toBe(false);
    await rm(join(folder, "systems", "other.yml"));
    const filled = await loadKnowledge(folder);
    expect(filled.ok ? filled.value.faults.has("something-worn") : filled.problems).toBe(true);
    await writeFile(join(folder, "systems", "other.yml"), "title: Other\n");
    await writeFile(join(folder, "stray.yaml"), "title: Stray\n");
    const read = await loadKnowledge(folder);
    expect(read.ok ? [] : read.problems.map(({ file }) => file)).toEqual([
      "flows/stray.yaml",
      "flows/systems/other.yml",
    ]);
    await rm(folder, { recursive: true });
  });

  it("says which machine kinds have no file", () => {
    const read = readKnowledge(planted().filter(({ path }) => path !== "machines/atv.yaml"));
    expect(read.ok ? [] : read.problems.map(({ file }) => file)).toEqual([
      "flows/machines/atv.yaml",
    ]);
  });

  it("says when the frequency words or the rates are missing", () => {
    const read = readKnowledge(planted().filter(({ path }) => path !== "shared/all.yaml"));
    const files = read.ok ? [] : read.problems.map(({ file }) => file);
    expect(files).toContain("flows/shared/words.yaml");
    expect(files).toContain("flows/shared/rates.yaml");
  });
});
