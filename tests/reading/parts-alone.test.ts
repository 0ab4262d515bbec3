import { describe, expect, it } from "vitest";
import { reader } from "../helpers/english-reader.ts";

const acts = (label: string, text: string, mended = true) =>
  reader
    .read(text, { languages: ["en"], label, mended })
    .acts.map(({ act, outcome }) => `${act} ${outcome}`);

describe("nothing but parts under the name of what put the machine right", () => {
  it.each([
    ["fixed by", "battery", ["replace-battery cured"]],
    ["cure", "the starter", ["replace-starter cured"]],
    ["solution", "plug and coil", ["renew-plug cured", "renew-coil cured"]],
    ["cured by", "ignition switch", ["renew-key-switch cured"]],
    ["remedy", "alternator", ["mend-charging cured"]],
  ])("%s: %s tells that they were replaced", (label, text, expected) => {
    expect(acts(label, text)).toEqual(expected);
  });

  it("tells no such thing where more is said", () => {
    expect(acts("result", "battery flat")).toEqual([]);
    expect(acts("result", "coil sparks again")).toEqual([]);
  });

  it("tells no such thing while the machine still stands", () =>
    expect(acts("fixed by", "battery", false)).toEqual([]));
});
