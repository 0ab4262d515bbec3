import { describe, expect, it } from "vitest";
import { loadKnowledge } from "../../src/knowledge/load.ts";
import { createReader } from "../../src/reading/reader.ts";
import { readerModel } from "../../src/reading/reader-model.ts";
import { english } from "../helpers/english-reader.ts";

describe("words that make a sign something else", async () => {
  const loaded = await loadKnowledge("flows", "usable");
  if (!loaded.ok) throw new Error(loaded.problems[0]?.says);
  const reader = createReader([english], readerModel(loaded.value));
  const states = (text: string): readonly string[] =>
    reader
      .read(text, { languages: ["en"] })
      .understood.map((one) => `${one.observation}=${"state" in one ? one.state : one.value}`);

  it.each([
    ["no click at all", "on-start=nothing"],
    ["it grinds", "on-start=grinds"],
    ["rattling", "on-start=fast-clicks"],
    ["seized", "engine-turns=no"],
    ["ran out", "recent-event=ran-dry"],
  ])("the bare words count: %s", (text, state) => expect(states(text)).toContain(state));

  it.each([
    ["no click at all from the shut-off on the pump", "on-start=nothing"],
    ["the gearbox grinds in second", "on-start=grinds"],
    ["there is a rattling in the gearbox", "on-start=fast-clicks"],
    ["the brakes are seized", "engine-turns=no"],
    ["I ran out of daylight", "recent-event=ran-dry"],
  ])("beside another thing they do not: %s", (text, state) =>
    expect(states(text)).not.toContain(state),
  );

  it("only within their clause", () => {
    expect(states("the shut-off is fine, no click at all")).toContain("on-start=nothing");
  });
});
