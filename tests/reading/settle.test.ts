import { describe, expect, it } from "vitest";
import type { StateReading } from "../../src/domain/reading.ts";
import type { Claim } from "../../src/reading/claims.ts";
import { settle } from "../../src/reading/settle.ts";
import { model, read, says } from "../helpers/english-reader.ts";

const reading = (observation: string, state: string): StateReading => ({
  observation,
  state,
  probability: 0.9,
  hedge: 0,
  source: "self",
  span: [0, 1],
});
const claim = (observation: string, state: string, more: Partial<Claim> = {}): Claim => ({
  reading: reading(observation, state),
  when: "unsaid",
  at: 0,
  past: false,
  givesWay: false,
  ...more,
});
const settled = (stated: readonly Claim[], sequence: readonly number[] = []) =>
  settle({ stated, denied: [], open: [] }, { model, sequence: new Set(sequence) });
const states = (result: ReturnType<typeof settled>) => result.understood.map((one) => one.state);

describe("claims on one observation", () => {
  it("now stands over unsaid, unsaid over before", () => {
    const before = claim("on-start", "slow", { when: "before" });
    const unsaid = claim("on-start", "one-click");
    const now = claim("on-start", "nothing", { when: "now" });
    expect(states(settled([before, unsaid, now]))).toEqual(["nothing"]);
    expect(states(settled([before, unsaid]))).toEqual(["one-click"]);
    expect(settled([before, unsaid]).earlier.map((one) => one.state)).toEqual(["slow"]);
    expect(states(settled([before]))).toEqual([]);
  });

  it("the last of a sequence stands", () => {
    const first = claim("on-start", "one-click", { at: 1 });
    const second = claim("on-start", "nothing", { at: 5 });
    expect(states(settled([first, second], [3]))).toEqual(["nothing"]);
    expect(settled([first, second]).ambiguous[0]?.options).toHaveLength(2);
  });

  it("what gives way gives way", () => {
    const starts = claim("on-start", "starts", { givesWay: true });
    expect(states(settled([starts, claim("on-start", "slow")]))).toEqual(["slow"]);
    expect(states(settled([starts]))).toEqual(["starts"]);
  });

  it("members of a list do not compete", () =>
    expect(
      states(settled([claim("recent-event", "welded"), claim("recent-event", "charged")])),
    ).toEqual(["welded", "charged"]));

  it("observations that are not known are left out", () =>
    expect(states(settled([claim("no-such-thing", "yes")]))).toEqual([]));
});

describe("signs that belong together", () => {
  it.each([
    ["jumped it and it started right up", "jump-start=cured"],
    ["tried a jump, still nothing", "jump-start=no-change"],
    ["fires then stalls", "on-start=fires-then-dies"],
    ["starter spins but does not turn the engine", "on-start=spins-alone"],
    ["I wiggled the lever and it started", "controls-moved=then-started"],
    ["the tank is full, I looked", "fuel-level=seen-enough"],
    ["sputters and quits", "how-stopped=faded"],
  ])("%s", (text, expected) => expect(says(text)).toContain(expected));

  it("do not when they stand in different stories", () =>
    expect(
      says("We jumped my truck last week. It was cold. The tractor sits there. Nothing."),
    ).not.toContain("jump-start=no-change"));

  it("span from the first to the last", () => {
    const text = "It cranks fine but won't fire.";
    const found = read(text).understood.find((one) => one.observation === "on-start");
    expect(text.slice(...(found?.span ?? [0, 0]))).toBe("cranks fine but won't fire");
  });
});
