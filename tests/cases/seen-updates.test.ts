import { describe, expect, it } from "vitest";
import { createSeenUpdates } from "../../src/cases/seen-updates.ts";

describe("seen updates", () => {
  it("remembers as many as it may and lets the longest unmentioned go", () => {
    const seen = createSeenUpdates(3);
    seen.add(["a", "b", "c"]);
    seen.add(["a", "d"]);
    expect(["a", "b", "c", "d"].map(seen.has)).toEqual([true, false, true, true]);
  });
});
