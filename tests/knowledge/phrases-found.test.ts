import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readPhrases } from "../../src/knowledge/phrases.ts";

const file = "locales/en/phrases.yaml";
const shipped = readFileSync(file, "utf8");

const relay = `  names:
    relay:
      means: found-bad=start-relay
      bad: welded|burnt
      names: start relay, relays
      say: relay .. sticks now
`;

function withParts(parts: string) {
  const start = shipped.indexOf("\nparts:\n");
  const end = shipped.indexOf("\ntogether:\n");
  expect(start).toBeGreaterThan(0);
  expect(end).toBeGreaterThan(start);
  const text = `${shipped.slice(0, start)}\nparts:\n${parts}${shipped.slice(end)}`;
  return readPhrases(file, text, null);
}

function said(text: string, id: string): readonly string[] | undefined {
  const sign = withParts(text).phrases?.signs.find((one) => one.id === id);
  return sign?.say.map((pattern) =>
    pattern.map((piece) => (piece.kind === "words" ? piece.any.join("|") : piece.kind)).join(" "),
  );
}

describe("parts that somebody looked at", () => {
  const both = `  bad: $part is? $bad\n  good: $part tested good\n${relay}`;

  it("are bad in each phrase with each name, in their own words where they have some", () => {
    expect(said(both, "relay-found-bad")).toEqual([
      "start relay is welded|burnt",
      "relays is welded|burnt",
      "relay gap sticks now",
    ]);
  });

  it("are good in the phrases for that, which rules out that they are bad", () => {
    const sign = withParts(both).phrases?.signs.find(({ id }) => id === "relay-found-good");
    const bad = [{ observation: "found-bad", state: "start-relay" }];
    expect(said(both, "relay-found-good")).toEqual([
      "start relay tested good",
      "relays tested good",
    ]);
    expect(sign).toMatchObject({ means: [], rulesOut: bad, denied: { means: bad } });
  });

  it("need no words for a good one", () => {
    expect(said(`  bad: $part is? $bad\n${relay}`, "relay-found-good")).toBeUndefined();
  });

  it("have their mistakes told with the line", () => {
    const { problems } = withParts(`  bad: $part is? $unheard-of\n${relay}`);
    const at = shipped.slice(0, shipped.indexOf("\nparts:\n")).split("\n").length + 2;
    expect(problems.map(({ line }) => line)).toEqual(problems.map(() => at));
    expect(problems.map(({ says }) => says).join(" ")).toContain("$unheard-of");
  });
});
