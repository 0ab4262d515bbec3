import { describe, expect, it } from "vitest";
import { benchReader } from "../../src/commands/bench-reader.ts";
import { reader } from "../helpers/english-reader.ts";

describe("the bench of the reader", () => {
  it("reads a message of the length it tells, in one language and in all, beside its peer", () => {
    const lengths = new Set<number>();
    const counted: typeof reader = {
      read: (text, options) => {
        if (options.languages.length === 0) lengths.add(text.length);
        return reader.read(text, options);
      },
    };
    const texts = ["It just clicks once", "battery 12.4 volts", "fuel tap shut"];
    const found = benchReader(counted, { language: "en", texts }, 3);
    expect([...lengths]).toEqual([found.characters]);
    expect(found.medianMs).toBeGreaterThan(0);
    expect(found.peer.name).toBe("tinyld");
    expect(found.peer.ratio).toBeGreaterThan(0);
    expect(Number.isFinite(found.growth)).toBe(true);
  });
});
