import { describe, expect, it } from "vitest";
import { alarmCalls, alarmReaders } from "../../src/talk/alarm-calls.ts";
import { Dialog, settings } from "../helpers/dialog.ts";

const NIGHT = Date.parse("2026-11-25T23:00:00Z");
const DAYTIME = Date.parse("2026-11-25T10:00:00Z");
const HOUR = 60 * 60 * 1000;
const duty = [{ person: "3", from: 0, until: Number.MAX_SAFE_INTEGER }];
const deskAt = (now: number, more: object = {}) => ({ ...new Dialog().desk, now, ...more });
const chats = (now: number, minutes: number, more: object = {}) =>
  alarmReaders(deskAt(now, more), minutes).map(({ chat }) => chat);

describe("who is told of a danger", () => {
  it("is everybody at the counter where nobody has the call-outs, at any hour", () => {
    expect(chats(NIGHT, 0)).toEqual(["2"]);
    expect(chats(DAYTIME, 0)).toEqual(["2"]);
  });

  it("is whoever has the call-outs, in the quiet hours alone at first", () => {
    expect(chats(NIGHT, 0, { duty })).toEqual(["3"]);
    expect(chats(NIGHT, 5, { duty })).toEqual(["3"]);
    expect(chats(NIGHT, 10, { duty })).toEqual(["3", "2"]);
    expect(chats(DAYTIME, 0, { duty })).toEqual(["3", "2"]);
  });

  it("changes with the roster while the danger stands", () => {
    const short = [{ person: "3", from: 0, until: NIGHT + 4 * 60_000 }];
    expect(chats(NIGHT, 2, { duty: short })).toEqual(["3"]);
    expect(chats(NIGHT, 5, { duty: short })).toEqual(["2"]);
  });

  it("is told nobody twice", () => {
    const own = [{ person: "2", from: 0, until: Number.MAX_SAFE_INTEGER }];
    expect(chats(DAYTIME, 0, { duty: own })).toEqual(["2"]);
  });
});

describe("the calls", () => {
  it("go on until seen, rarer and rarer, for half a day", () => {
    const dialog = new Dialog();
    const calls = alarmCalls(dialog.state, "fuel-leak", deskAt(NIGHT, { duty }));
    const [first, ...again] = calls;
    expect(first?.cancelIf).toBeUndefined();
    expect(again.every((one) => one.cancelIf !== undefined)).toBe(true);
    const last = Math.max(...again.map((one) => one.notBefore ?? 0));
    expect(last - NIGHT).toBe(12 * HOUR);
  });

  it("let a technician with the call-outs press that they have seen it, but none without", () => {
    const raise = (more: object) => {
      const dialog = new Dialog("en", { shop: settings, ...more });
      dialog.say("petrol garden tractor, it burns, fire");
      const flag = dialog.state.flags[0]?.flag ?? "";
      const press = { case: "4F7K", revision: 0, act: "seen", value: flag };
      const { counter } = dialog;
      counter({ kind: "press", press }, "3");
      return dialog.state.flags[0]?.seenBy;
    };
    expect(raise({ duty })).toBe("3");
    expect(raise({})).toBeNull();
  });
});

describe("an operator in danger", () => {
  it("reads that nobody has seen it until somebody has, and then who to wait for", () => {
    const dialog = new Dialog("en", { shop: settings });
    dialog.say("petrol garden tractor, i smell petrol, there is a puddle");
    expect(dialog.last("1")).toContain("Nobody of the shop has read this yet");
    dialog.say("what now?");
    expect(dialog.last("1")).toContain("Nobody of the shop has read this yet");
    const value = dialog.state.flags[0]?.flag ?? "";
    const press = { case: "4F7K", revision: 0, act: "seen", value };
    dialog.counter({ kind: "press", press }, "2").say("what now?");
    expect(dialog.state.flags[0]?.seenBy).toBe("2");
    expect(dialog.last("1")).not.toContain("Nobody of the shop has read this yet");
  });
});

describe("in the quiet hours", () => {
  it("a slip makes no sound", () => {
    const dialog = new Dialog();
    dialog.say("petrol garden tractor, one click").press("All is safe").press("More …");
    dialog.press("Talk to a person");
    const quiet = dialog.effects.filter(
      (one) => one.effect.do === "revise" && one.effect.slot === "slip-2",
    );
    expect(quiet.length).toBeGreaterThan(0);
    for (const { effect } of quiet) expect(effect).toMatchObject({ quiet: true });
  });
});
