import { describe, expect, it } from "vitest";
import { compileLanguage } from "../../src/reading/grammar.ts";
import { createLabelReader } from "../../src/reading/labels.ts";
import { english, model, read, says } from "../helpers/english-reader.ts";

const labelOf = createLabelReader(compileLanguage(english), model);

describe("labels before an answer", () => {
  it.each([
    ["fuse-look", "fuse-look"],
    ["oil look", "oil-look"],
    ["Fuses", "fuse-look"],
    ["spark plug", "plug-look"],
    ["engine oil", "oil-look"],
    ["last use", "last-use"],
  ])("%s is %s", (label, observation) => expect(labelOf(label)).toBe(observation));

  it.each(["battery", "fuse box lid colour", "", "neighbour", "fuse and spark plug"])(
    "%s is none",
    (label) => expect(labelOf(label)).toBeNull(),
  );

  it("make a short answer of what follows, and leave its place in the text", () => {
    expect(says("spark plug: wet")).toEqual(["plug-look=wet"]);
    expect(says("oil: milky")).toEqual(["oil-look=milky"]);
    expect(says("spark: seen")).toEqual(["spark=good"]);
    const text = "spark: seen";
    const found = read(text).understood.map(({ span }) => text.slice(...span).trim());
    expect(found).toEqual(["seen"]);
  });

  it("are part of the text where what follows is no answer to them", () => {
    expect(says("noise: it clicks away")).toContain("on-start=fast-clicks");
    expect(says("Fuses: it turns over very slowly")).toContain("on-start=slow");
    expect(says("spark:")).toEqual([]);
  });
});
