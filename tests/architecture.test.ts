import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  brokenImports,
  cycles,
  impurities,
  LINE_LIMIT,
  longFiles,
  strayCalls,
  untested,
  untidy,
} from "./helpers/architecture.ts";
import { coveredBy } from "./helpers/covered-by.ts";

const list = (folder: string) =>
  readdirSync(folder, { recursive: true, encoding: "utf8" }).map((name) => `${folder}/${name}`);
const tree = new Map(
  list("src")
    .filter((path) => path.endsWith(".ts"))
    .map((path) => [path, readFileSync(path, "utf8")] as const),
);
const tests = new Set(list("tests").filter((path) => path.endsWith(".test.ts")));
/** The outbox worker's carrier, the callback answer, and what is set once at the start. */
const botApiFiles = ["src/chat/carrier.ts", "src/chat/bot.ts", "src/chat/introduce.ts"];

describe("the house", () => {
  it("keeps its import rules", () => expect(brokenImports(tree)).toEqual([]));
  it("has no cycles", () => expect(cycles(tree)).toEqual([]));
  it("keeps clock, chance, process and waiting out of the pure folders", () =>
    expect(impurities(tree)).toEqual([]));
  it("has no drawers, index files, default exports, any, or long files", () =>
    expect(untidy(tree)).toEqual([]));
  it("calls the Bot API from the outbox and the callback answer only", () =>
    expect(strayCalls(tree, botApiFiles)).toEqual([]));
  it("has a test for every file that holds code", () =>
    expect(untested(tree, tests, coveredBy)).toEqual([]));
  it("lists no long file that is gone or short again", () => {
    for (const path of Object.keys(longFiles)) {
      expect((tree.get(path) ?? "").split("\n").length, path).toBeGreaterThan(LINE_LIMIT);
    }
  });
});

describe("npm test", () => {
  // A bare pattern was once spelt out by the shell into file names, of which all but the first became
  // a filter: seven tests ran and all was green.
  it("leaves nothing to the shell that could narrow it", () => {
    const script: unknown = JSON.parse(readFileSync("package.json", "utf8")).scripts.test;
    expect(script).toContain("vitest run");
    expect(
      String(script)
        .match(/vitest run[^&]*/)?.[0]
        .replaceAll(/"[^"]*"/g, ""),
    ).not.toMatch(/[*?[{]/);
  });
});

describe("the checker catches what is planted", () => {
  const planted = (path: string, code: string) => new Map([[path, code]]);
  const fake = (path: string, code: string) => brokenImports(planted(path, code));

  it("catches an edge package in a pure folder", () =>
    expect(fake("src/diagnosis/x.ts", 'import { Bot } from "grammy";')).toHaveLength(1));
  it("catches a type-only import upwards", () =>
    expect(fake("src/domain/x.ts", 'import type { S } from "../talk/words.ts";')).toHaveLength(1));
  it("catches a re-export across folders", () =>
    expect(fake("src/talk/x.ts", 'export { y } from "../chat/bot.ts";')).toHaveLength(1));
  it("catches a dynamic import", () =>
    expect(fake("src/talk/x.ts", 'const f = () => import("node:fs");')).toHaveLength(1));
  it("catches a folder without a rule", () =>
    expect(fake("src/misc/x.ts", "export const a = 1;")).toHaveLength(1));
  it("ignores a commented-out import", () =>
    expect(fake("src/domain/x.ts", '// import { Bot } from "grammy";')).toEqual([]));
  it("catches a ring", () => {
    const ring = new Map([
      ["src/domain/a.ts", 'import { b } from "./b.ts";'],
      ["src/domain/b.ts", 'import type { a } from "./a.ts";'],
    ]);
    expect(cycles(ring)).toHaveLength(1);
  });
  it.each([
    "export const t = Date.now();",
    "export const r = Math.random();",
    "export const w = async () => 1;",
    'import { readFileSync } from "node:fs";',
    "console.log(1);",
  ])("catches impurity: %s", (code) =>
    expect(impurities(new Map([["src/talk/x.ts", code]]))).not.toEqual([]),
  );
  it("catches a long file, a drawer, an index, a default export and any", () => {
    const found = untidy(
      new Map([
        ["src/talk/long.ts", "//\n".repeat(LINE_LIMIT + 1)],
        ["src/talk/utils.ts", "export const a = 1;"],
        ["src/talk/index.ts", 'export * from "./a.ts";'],
        ["src/talk/d.ts", "export default 1;"],
        ["src/talk/any.ts", "export const a: any = 1;"],
      ]),
    );
    expect(found).toHaveLength(6);
  });
  it("catches a stray reply and an untested file", () => {
    expect(strayCalls(new Map([["src/chat/x.ts", 'ctx.reply("hi")']]), [])).toHaveLength(1);
    expect(strayCalls(new Map([["src/chat/x.ts", "bot.api.getMe()"]]), [])).toHaveLength(1);
    const lonely = new Map([["src/talk/x.ts", "export function f() { return 1; }"]]);
    expect(untested(lonely, new Set(), {})).toHaveLength(1);
  });
});
