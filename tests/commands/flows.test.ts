import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { flowsCommand } from "../../src/commands/flows.ts";
import type { CommandIo } from "../../src/commands/io.ts";

const shipped = fileURLToPath(new URL("../..", import.meta.url));
const folders: string[] = [];
afterAll(() => Promise.all(folders.map((folder) => rm(folder, { recursive: true }))));

async function run(args: readonly string[], root = shipped) {
  const said = { out: "", err: "" };
  const io: CommandIo = {
    stdout: (text) => {
      said.out += text;
    },
    stderr: (text) => {
      said.err += text;
    },
    cwd: root,
    root,
    stdin: () => Promise.resolve(""),
  };
  return { code: await flowsCommand(args, io), ...said };
}

/** A copy of the files that ship, with one text replaced. */
async function copyWith(file: string, from: string, to: string): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "turnrow-"));
  folders.push(folder);
  await cp(join(shipped, "flows"), join(folder, "flows"), { recursive: true });
  await cp(join(shipped, "locales"), join(folder, "locales"), { recursive: true });
  const text = await readFile(join(folder, file), "utf8");
  expect(text).toContain(from);
  await writeFile(join(folder, file), text.replace(from, to));
  return folder;
}

// Each run reads all files that ship; the limit leaves room for a busy machine.
describe("flows", { timeout: 120_000 }, () => {
  it("prints counts, words and problems as JSON, and nothing else", async () => {
    const { code, out, err } = await run(["--json"]);
    const report: unknown = JSON.parse(out);
    expect(report).toMatchObject({ machineKinds: 17, problems: [] });
    expect(report).toMatchObject({
      faults: expect.any(Number),
      observations: expect.any(Number),
      checks: expect.any(Number),
      parts: expect.any(Number),
      words: { en: { missing: 0, stale: 0 } },
    });
    expect({ code, err }).toEqual({ code: 0, err: "" });
  });

  it("says in one line that nothing is wrong", async () => {
    const { code, out } = await run([]);
    expect(out).toMatch(/^No mistakes: \d+ faults, .* 17 kinds of machine/);
    expect(code).toBe(0);
  });

  it("lists a mistake with file, line and a sentence, and fails", async () => {
    const root = await copyWith(
      "flows/systems/battery.yaml",
      "remedies: charge-battery",
      "remedies: charge-batery",
    );
    const { code, out } = await run([], root);
    expect(code).toBe(1);
    expect(out).toMatch(
      /^flows\/systems\/battery\.yaml:\d+ .*\n {4}There is no remedy "charge-batery"\. Did you mean "charge-battery"\?/,
    );
    expect(out).toContain("One mistake. Nothing is used until");
    const json: unknown = JSON.parse((await run(["--json"], root)).out);
    expect(json).toMatchObject({ faults: 0, problems: [{ file: "flows/systems/battery.yaml" }] });
  });

  it("refuses a fault that the circuits simulate and the systems lack", async () => {
    const root = await copyWith("flows/systems/battery.yaml", "    circuit: true\n", "");
    const { code, out } = await run([], root);
    expect(code).toBe(1);
    expect(out).toContain('A circuit simulates "battery-flat"; add "circuit: true".');
  });

  it("lists what a language lacks", async () => {
    const root = await copyWith(
      "flows/systems/battery.yaml",
      "title: Battery flat",
      "title: Battery flat",
    );
    await cp(join(root, "locales/en"), join(root, "locales/xx"), { recursive: true });
    const { code, out } = await run(["words", "xx"], root);
    expect(out).toMatch(/xx: \d{3,} missing/);
    expect(code).toBe(1);
    const whole = await run([], root);
    expect(whole.out).toContain("The knowledge itself is sound; only words");
    expect(whole.code).toBe(1);
    await writeFile(join(root, "locales/xx/phrases.yaml"), "nonsense: 1\n");
    expect((await run([], root)).out).toContain("Nothing is used until they are mended.");
    expect((await run(["words", "yy"], root)).err).toContain('There is no language "yy"');
  });

  it("shows for each fault what is hardest to tell from it", async () => {
    const { code, out } = await run(["apart"]);
    expect(out.split("\n")[0]).toMatch(/^ +\d+\.\d dB {2}[a-z-]+ \/ [a-z-]+: [a-z-]+$/);
    const [, closest = ""] = out.split(/half of them are \d+\.\d dB or more from .*:\n/);
    const pairs = closest.trimEnd().split("\n");
    expect(pairs).toHaveLength(10);
    expect(pairs[0]).toBe(out.split("\n")[0]);
    expect(code).toBe(0);
  });

  it("explains a command line that it does not know", async () => {
    expect((await run(["--jsn"])).code).toBe(2);
    expect((await run(["words"])).code).toBe(2);
    expect((await run(["bogus"])).err).toContain("npm run flows");
  });
});
