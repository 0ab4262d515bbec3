import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const files = (folder: string) =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".ts"))
    .map((name) => readFileSync(`${folder}/${name}`, "utf8"));
const code = [...files("src/talk"), ...files("src/cases"), ...files("src/commands")].join("\n");
const ftl = ["chat.ftl", "units.ftl"]
  .map((name) => readFileSync(`locales/en/${name}`, "utf8"))
  .join("\n");
const words = new Set([...ftl.matchAll(/^([a-z][a-z0-9-]*) =/gm)].map((match) => match[1] ?? ""));

/** Keys written out, as in phrase("hello"); and both halves of a choice between two. */
const written = [
  ...[...code.matchAll(/\bphrase\(\s*"([^"]+)"/g)].map((match) => match[1] ?? ""),
  ...[...code.matchAll(/phrase\(\s*[^()"`]*\?\s*"([a-z-]+)"\s*:\s*"([a-z-]+)"/g)].flatMap(
    (match) => [match[1] ?? "", match[2] ?? ""],
  ),
];

/** The fixed beginnings of keys that are put together, as in phrase(`fuel-${fuel}`). */
const beginnings = [...code.matchAll(/\bphrase\(\s*`([a-z-]+-)\$\{/g)].map(
  (match) => match[1] ?? "",
);

describe("the chat's words", () => {
  it("exist for every key that is written out", () => {
    expect(written.filter((key) => !words.has(key))).toEqual([]);
    expect(written.length).toBeGreaterThan(80);
  });

  it("exist for every beginning of a key that is put together", () => {
    const found = (start: string) => [...words].some((key) => key.startsWith(start));
    expect(beginnings.filter((start) => !found(start))).toEqual([]);
  });

  it("are all used: no message is left from something that is gone", () => {
    const used = (key: string) =>
      code.includes(`"${key}"`) ||
      beginnings.some((start) => key.startsWith(start)) ||
      /^(unit|mark|list|ask|fuel|outcome|urgency|equipment|trip|drawing|remedy|ran|cause)-/.test(
        key,
      );
    expect([...words].filter((key) => !used(key))).toEqual([]);
  });
});
