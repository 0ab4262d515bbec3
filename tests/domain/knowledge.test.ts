import { describe, expect, it } from "vitest";
import { wordKey } from "../../src/domain/knowledge.ts";

describe("keys of the knowledge's words", () => {
  it("are the kind, the id and the part, as Fluent allows them", () => {
    expect(wordKey("fault", "battery-flat")).toBe("fault-battery-flat");
    expect(wordKey("check", "look-at-joints", "how")).toBe("check-look-at-joints-how");
    expect(wordKey("state", "lights-on.dim")).toBe("state-lights-on-dim");
    expect(wordKey("hazard", "cranking", "safe-1")).toMatch(/^[a-zA-Z][\w-]*$/);
  });
});
