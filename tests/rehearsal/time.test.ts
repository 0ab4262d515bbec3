import { describe, expect, it } from "vitest";
import { createTestTime, REAL_TIME, unixSeconds } from "../../src/rehearsal/time.ts";

describe("test time", () => {
  it("stands still until it is moved", () => {
    const time = createTestTime(5000);
    expect(time.clock()).toBe(5000);
    time.advance(250);
    expect(time.clock()).toBe(5250);
  });

  it("runs what falls due in the order of its due time, at that time", () => {
    const time = createTestTime(0);
    const seen: string[] = [];
    time.wait(30, () => seen.push(`late at ${time.clock()}`));
    time.wait(10, () => {
      seen.push(`early at ${time.clock()}`);
      time.wait(5, () => seen.push(`between at ${time.clock()}`));
    });
    time.advance(30);
    expect(seen).toEqual(["early at 10", "between at 15", "late at 30"]);
  });

  it("runs nothing that was called off or is not due", () => {
    const time = createTestTime(0);
    const seen: string[] = [];
    time.wait(10, () => seen.push("called off"))();
    time.wait(11, () => seen.push("not due"));
    time.advance(10);
    expect(seen).toEqual([]);
    expect(time.scheduled()).toBe(1);
  });
});

it("real time waits and can be called off", async () => {
  const seen: string[] = [];
  REAL_TIME.wait(1, () => seen.push("called off"))();
  await new Promise<void>((done) => REAL_TIME.wait(2, done));
  expect(seen).toEqual([]);
});

it("dates on the wire are whole seconds", () => {
  expect(unixSeconds(() => 1999)).toBe(1);
});
