import { describe, expect, it } from "vitest";
import { planCalls } from "../../src/chat/plan-calls.ts";
import type { Rendered } from "../../src/domain/rendered.ts";

const press = { revision: 1, act: "go" };
const plain: Rendered = { text: "hello", entities: [], buttons: [] };
const plan = (rendered: Partial<Rendered>, direct = true) =>
  planCalls(
    { ...plain, ...rendered },
    { direct, encode: ({ act }) => (act === "go" ? "d" : null) },
  );
const buttons = [[{ label: "Go", press }]];
const photo = { id: "p", kind: "photo" } as const;
const share = { kind: "location", label: "Send my place" } as const;

describe("planCalls", () => {
  it("makes one message of words and buttons", () => {
    const [call, ...more] = plan({ buttons });
    expect(more).toEqual([]);
    expect(call).toMatchObject({
      send: "text",
      main: true,
      keyboard: { inline_keyboard: [[{ text: "Go", callback_data: "d" }]] },
    });
  });

  it("cuts long words and puts the buttons under the last piece", () => {
    const calls = plan({ text: "word ".repeat(2000), buttons });
    expect(calls.length).toBeGreaterThanOrEqual(3);
    expect(calls.map(({ main }) => main)).toEqual([...calls.slice(1).map(() => false), true]);
    expect(calls.filter(({ keyboard }) => keyboard !== undefined)).toEqual(calls.slice(-1));
  });

  it("puts short words under the file and long ones after it", () => {
    expect(plan({ file: photo, text: "x".repeat(1024) })).toHaveLength(1);
    const [first, second] = plan({ file: photo, text: "x".repeat(1025), buttons });
    expect(first).toMatchObject({ send: "file", words: { text: "" }, main: false });
    expect(second).toMatchObject({ send: "text", main: true });
  });

  it("gives a sticker no words to carry", () => {
    const calls = plan({ file: { id: "s", kind: "sticker" }, text: "from Ann" });
    expect(calls.map(({ send }) => send)).toEqual(["file", "text"]);
  });

  it("sends a place after the words", () => {
    const calls = plan({ place: { latitude: 1, longitude: 2 } });
    expect(calls.map(({ send, main }) => [send, main])).toEqual([
      ["text", true],
      ["place", false],
    ]);
  });

  it("offers to share with the words, or after them where buttons stand there", () => {
    const [only, ...none] = plan({ share });
    expect(none).toEqual([]);
    expect(only?.keyboard).toMatchObject({
      keyboard: [[{ text: "Send my place", request_location: true }]],
    });
    const [words, offer] = plan({ share: { ...share, kind: "contact" }, buttons });
    expect(words?.keyboard).toHaveProperty("inline_keyboard");
    expect(offer?.keyboard).toMatchObject({ keyboard: [[{ request_contact: true }]] });
    expect(offer?.main).toBe(false);
  });

  it("offers two things to share in one message, and leaves the second when one was used", () => {
    const also = { kind: "contact", label: "My number" } as const;
    const [, offer, ...none] = plan({ share: { ...share, also }, buttons });
    expect(none).toEqual([]);
    expect(offer?.keyboard).toMatchObject({
      keyboard: [[{ request_location: true }], [{ text: "My number", request_contact: true }]],
      one_time_keyboard: false,
    });
  });

  it("takes an offer away with the words, or before them where buttons stand there", () => {
    const [only, ...none] = plan({ endShare: true });
    expect(none).toEqual([]);
    expect(only?.keyboard).toEqual({ remove_keyboard: true });
    const calls = plan({ endShare: true, buttons });
    expect(calls.map(({ main }) => main)).toEqual([false, true]);
    expect(calls[0]?.keyboard).toEqual({ remove_keyboard: true });
  });

  it("offers nothing to share in a group, where the platform refuses it", () => {
    const calls = plan({ share, endShare: true }, false);
    expect(calls).toHaveLength(1);
    expect(calls[0]?.keyboard).toBeUndefined();
  });

  it("leaves out a button that cannot be made, and a row without buttons", () => {
    const bad = { label: "Bad", press: { revision: 1, act: "too long" } };
    const [call] = plan({ buttons: [[bad], [...(buttons[0] ?? []), bad]] });
    expect(call?.keyboard).toEqual({ inline_keyboard: [[{ text: "Go", callback_data: "d" }]] });
    expect(plan({ buttons: [[bad]] })[0]?.keyboard).toBeUndefined();
  });

  it("makes no keyboard that is larger than the platform takes", () => {
    const many = Array.from({ length: 130 }, () => [{ label: "", press }]);
    const [call] = plan({ buttons: many });
    const keyboard = call?.keyboard;
    const rows = keyboard && "inline_keyboard" in keyboard ? keyboard.inline_keyboard : [];
    expect(rows).toHaveLength(100);
    expect(rows.flat().every(({ text }) => text !== "")).toBe(true);
  });

  it("has nothing to send for nothing", () => {
    expect(plan({ text: "" })).toEqual([]);
  });
});
