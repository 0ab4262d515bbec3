import { describe, expect, it } from "vitest";
import { createTurns } from "../../src/store/turns.ts";

const soon = () => new Promise<void>((resolve) => setImmediate(resolve));

describe("turns", () => {
  it("run one after another for one key, side by side for different ones", async () => {
    const inTurn = createTurns();
    const log: string[] = [];
    const work = (name: string) => async () => {
      log.push(`${name}+`);
      await soon();
      log.push(`${name}-`);
    };
    await Promise.all([inTurn("x", work("a")), inTurn("x", work("b")), inTurn("y", work("c"))]);
    expect(log.indexOf("b+")).toBeGreaterThan(log.indexOf("a-"));
    expect(log.indexOf("c+")).toBeLessThan(log.indexOf("a-"));
  });

  it("go on after a failure, which only its own caller sees", async () => {
    const inTurn = createTurns();
    const failed = inTurn("x", () => Promise.reject(new Error("no")));
    const next = inTurn("x", async () => "yes");
    await expect(failed).rejects.toThrow("no");
    expect(await next).toBe("yes");
  });
});
