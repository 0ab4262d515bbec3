import { describe, expect, it } from "vitest";
import { says } from "../helpers/english-reader.ts";

describe("an entry that tells what came of a trial", () => {
  it("does not tell how things were found", () => {
    expect(says("tank nearly empty: keeps running")).toEqual([]);
    expect(says("lights dim: no change")).toEqual([]);
    expect(says("tank nearly empty: pump makes a noise")).toEqual(["fuel-level=low"]);
  });

  it("still tells what was done", () => {
    expect(says("new battery: no change")).toContain("recent-event=parts-replaced");
  });
});
