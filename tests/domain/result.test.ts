import { describe, expect, it } from "vitest";
import { OutOfRange, TurnrowError, UnknownId } from "../../src/domain/result.ts";

describe("mistakes in calls", () => {
  it("name the id and are of our own kind", () => {
    const unknown = new UnknownId("fault", "battery-full");
    expect(unknown).toBeInstanceOf(TurnrowError);
    expect(unknown.message).toContain("battery-full");
    expect(new OutOfRange("share", 2, "in [0, 1]").message).toBe("share: 2 is not in [0, 1]");
  });
});
