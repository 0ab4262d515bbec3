import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import {
  exampleFolder,
  exampleSettings,
  loadPartFile,
  loadShopSettings,
  parseShopSettings,
  withShopRates,
} from "../../src/commands/shop-settings.ts";
import { workshop } from "../helpers/dialog.ts";

const LEAST = 'name: Hill Farm\nphone: "555 0100"\nemergency: "112"\n';
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "turnrow-settings-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

const linesOf = (text: string) => {
  const read = parseShopSettings(text, "shop.yaml");
  return read.ok ? [] : read.problems.map(({ line, at, says }) => [line, at, says]);
};

describe("the shop's settings", () => {
  it("need a name, a phone and an emergency number; the rest has defaults", () => {
    expect(parseShopSettings(LEAST, "shop.yaml")).toMatchObject({
      ok: true,
      value: { name: "Hill Farm", languages: ["en"], comebackDays: 30 },
    });
    expect(parseShopSettings("{}", "shop.yaml").ok).toBe(false);
  });

  it("come back with every mistake at once, each with its line, in plain words", () => {
    const found = linesOf(`${LEAST}comebackDays: 0\nlanguages: [english]\nhourz: {}\n`);
    expect(found.map(([line, at]) => [line, at])).toEqual([
      [4, "comebackDays"],
      [5, "languages.0"],
      [6, "hourz"],
    ]);
    for (const [, , says] of found) expect(says).not.toMatch(/Invalid|undefined|expected \w+,/);
  });

  it("say that a number for a phone belongs in quotes", () =>
    expect(linesOf("name: X1\nphone: 5550100\nemergency: '112'\n")[0]?.[2]).toContain("quotes"));

  it("say where the text itself cannot be read", () =>
    expect(linesOf('name: "Hill\nphone: 1\n')[0]?.[0]).toBeGreaterThan(0));

  it("the example can be read", () => expect(exampleSettings(".").ok).toBe(true));

  it("puts the example into an empty data folder, and refuses to serve it", () => {
    const data = join(folder, "new");
    const first = loadShopSettings(".", data);
    expect(first.ok).toBe(false);
    const file = join(data, "shop.yaml");
    expect(readFileSync(file, "utf8")).toBe(readFileSync("flows/demo/shop.yaml", "utf8"));
    expect(loadShopSettings(".", data)).toMatchObject({ ok: false, problems: [{ file }] });
    writeFileSync(file, LEAST);
    expect(loadShopSettings(".", data)).toMatchObject({ ok: true, value: { emergency: "112" } });
  });
});

describe("the shop's own figures and parts", () => {
  const parts = new Set(workshop.knowledge.parts.keys());
  const settings = (text: string) => {
    const read = parseShopSettings(LEAST + text, "shop.yaml");
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    return read.value;
  };

  it("stand in the place of the shipped rates; what is left out stays", () => {
    const own = settings("rates: { travelMinutes: 55 }\n");
    const { rates } = withShopRates(workshop.knowledge, own);
    expect(rates).toEqual({ ...workshop.knowledge.rates, travelMinutes: 55 });
    expect(linesOf(`${LEAST}rates: { travelMinutes: -3, tea: 1 }\n`)).toHaveLength(2);
  });

  it("name skills by the kinds of causes there are", () => {
    expect(settings("skills: { electrics: [battery] }\n").skills).toEqual({
      electrics: ["battery"],
    });
    expect(linesOf(`${LEAST}skills: { electrics: [baterry] }\n`)[0]?.[2]).toContain("battery");
  });

  it("are read from a part file in the same folder, which must be there where it is named", () => {
    const own = settings("partFile: parts.csv\n");
    const missing = loadPartFile(own, folder, parts);
    expect(missing.ok).toBe(false);
    writeFileSync(join(folder, "parts.csv"), "part,number\nbattery,B-1\n");
    expect(loadPartFile(own, folder, parts)).toMatchObject({
      ok: true,
      value: [{ number: "B-1" }],
    });
    expect(loadPartFile(settings(""), folder, parts)).toEqual({ ok: true, value: [] });
    expect(linesOf(`${LEAST}partFile: ../secret.csv\n`)).toHaveLength(1);
  });

  it("come with an example that can be read", () => {
    const example = exampleSettings(".");
    if (!example.ok) throw new Error("unreadable");
    const stock = loadPartFile(example.value, exampleFolder("."), parts);
    expect(stock.ok && stock.value.length).toBeGreaterThan(10);
  });
});
