import { describe, expect, it } from "vitest";
import { leavesOpen, read, says } from "../helpers/english-reader.ts";

describe("denial", () => {
  it.each([
    ["not a click", ["click-sound=none", "on-start=nothing"]],
    ["it doesn't even click", ["click-sound=none", "on-start=nothing"]],
    ["no crank no click", ["click-sound=none", "engine-turns=no", "on-start=nothing"]],
    ["it isn't slow, it turns over fine", ["engine-turns=normal"]],
    ["there is no white smoke", []],
    ["the lights do not go out when I turn the key", []],
    ["we didn't hit anything", []],
    ["it's not seized", []],
    ["the fuel is not old", ["fuel-age=fresh"]],
    ["it doesn't spin", ["engine-turns=no"]],
    ["it does not fire and die", []],
    ["I have not replaced anything, not even the battery", []],
    ["terminals are not corroded", []],
    ["it's not out of petrol", ["fuel-level=said-enough"]],
    ["rodents: suspected, none found", []],
    ["smoke: none", ["smoke=none"]],
  ])("%s", (text, expected) => expect(says(text)).toEqual(expected));

  it("reaches through hearing, and over 'or', but not over 'just'", () => {
    expect(says("I don't hear it click")).toEqual([]);
    expect(says("won't crank or click")).toContain("on-start=nothing");
    expect(says("it won't start just one click")).toContain("on-start=one-click");
    expect(says("it won't start, it clicks once")).toContain("on-start=one-click");
  });

  it("is reported beside what is understood", () => {
    const { denied } = read("there's no white smoke and no grinding");
    expect(denied.map((one) => `${one.observation}=${one.state}`)).toEqual([
      "smoke=white",
      "on-start=grinds",
    ]);
  });
});

describe("contrast, sequence and time", () => {
  it("settles an ambiguous word by what stands beside it", () => {
    const expected = ["engine-turns=normal", "on-start=turns-no-fire"];
    expect(says("turns over but wont fire")).toEqual(expected);
    expect(says("cranks but won't start")).toEqual(expected);
    expect(leavesOpen("turns over but wont fire")).toEqual([]);
  });

  it("takes the last of a sequence as what happens now", () => {
    const result = read("it clicked once, now nothing");
    expect(says("it clicked once, now nothing")).toEqual(["on-start=nothing"]);
    expect(result.earlier.map((one) => one.state)).toEqual(["one-click"]);
    expect(says("last week it cranked slow, now it just clicks once")).toEqual([
      "on-start=one-click",
    ]);
    expect(says("yesterday it was slow, today nothing")).toEqual(["on-start=nothing"]);
    expect(says("it used to chatter")).toEqual([]);
  });

  it("does not undo what happened before the trouble", () =>
    expect(says("last month we welded on the loader")).toEqual(["recent-event=welded"]));

  it("reads a condition as the pattern", () => {
    expect(says("only when hot")).toEqual(["pattern=only-hot"]);
    expect(says("won't start in the wet")).toEqual(["pattern=only-wet"]);
  });

  it("leaves two states in one breath open", () => {
    const open = leavesOpen("it clicks once or it grinds");
    expect(open).toContain("on-start=one-click");
    expect(open).toContain("on-start=grinds");
  });

  it("does not take a comparison for a fact", () => {
    expect(says("it's just as if somebody had taken the battery out")).toEqual([]);
    expect(says("clicks like a machine gun")).toEqual([
      "click-sound=repeated",
      "on-start=fast-clicks",
    ]);
  });
});

describe("hedges and hearsay", () => {
  it("lowers the reporter's reliability, stronger for what was not checked", () => {
    const hedge = (text: string) => read(text).understood[0]?.hedge ?? Number.NaN;
    expect(hedge("the lights are bright")).toBe(0);
    expect(hedge("i think the lights are bright")).toBeGreaterThan(0);
    expect(hedge("should be plenty of diesel in it")).toBeGreaterThan(
      hedge("i think there is plenty of diesel in it"),
    );
  });

  it("marks what someone else says", () => {
    expect(read("my son says it clicks once").understood[0]?.source).toBe("other");
    expect(read("it clicks once").understood[0]?.source).toBe("self");
    const asked = read("I'm asking for my father. It clicks once.");
    expect(asked.understood.every((one) => one.source === "other")).toBe(true);
  });
});

describe("words of several meanings", () => {
  it.each(["it turns over", "it cranks", "it won't turn over", "won't kick over", "just clicks"])(
    "never enter as certain: %s",
    (text) => {
      expect(says(text)).toEqual([]);
      const [open] = read(text).ambiguous;
      expect(open?.options.length).toBeGreaterThan(1);
      const sum = open?.options.reduce((total, option) => total + option.probability, 0);
      expect(sum).toBeCloseTo(1, 9);
    },
  );

  it.each(["the solenoid", "it's the starter", "the ignition", "there's a short", "it's blown"])(
    "say no state by themselves: %s",
    (text) => expect(says(text)).toEqual([]),
  );

  it("are not asked about when the thing they may tell was said plainly", () =>
    expect(leavesOpen("it cranks, I mean one click")).toEqual([]));
});
