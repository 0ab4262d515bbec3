// Covers also: src/rehearsal/markup/inline-button.ts, src/rehearsal/markup/keyboard-button.ts,
// src/rehearsal/markup/button-fields.ts, src/rehearsal/limits.ts
import { describe, expect, it } from "vitest";
import { PLATFORM_LIMITS } from "../../../src/rehearsal/limits.ts";
import { readReplyMarkup } from "../../../src/rehearsal/markup/reply-markup.ts";

const read = (value: unknown, isPrivate = true) =>
  readReplyMarkup(value, { isPrivate, limits: PLATFORM_LIMITS });
const inline = (...buttons: unknown[]) => ({ inline_keyboard: [buttons] });

describe("inline keyboards", () => {
  it("keep labels, data, links and colours", () => {
    const buttons = [
      { text: "Yes", callback_data: "y", style: "success" },
      { text: "Map", url: "https://farm.example/map" },
      { text: "Copy", copy_text: { text: "12.6 V" } },
      { text: "Off", disabled: {} },
      { text: "Ask", switch_inline_query_current_chat: "" },
      { text: "App", web_app: { url: "https://farm.example/app" } },
    ];
    expect(read(inline(...buttons))).toEqual({
      kind: "inline",
      inline: { inline_keyboard: [buttons] },
    });
  });

  // Bytes, not characters: Bot API reference text in @grammyjs/types, "1-64 bytes".
  // Wording: Bot API server source, public repository tdlib/telegram-bot-api.
  it("take 64 bytes of data and not one more", () => {
    const data = (callback_data: string) => () => read(inline({ text: "a", callback_data }));
    expect(data("x".repeat(64))).not.toThrow();
    expect(data("x".repeat(65))).toThrow("400 Bad Request: BUTTON_DATA_INVALID");
    expect(data("я".repeat(32))).not.toThrow();
    expect(data("я".repeat(33))).toThrow("BUTTON_DATA_INVALID");
  });

  // Wordings: Bot API server source, public repository tdlib/telegram-bot-api.
  it.each([
    [
      "a button that does nothing",
      inline({ text: "a" }),
      "can't parse inline keyboard button: Text buttons are unallowed in the inline keyboard",
    ],
    [
      "empty data",
      inline({ text: "a", callback_data: "" }),
      "Text buttons are unallowed in the inline keyboard",
    ],
    [
      "a button without a label",
      inline({ callback_data: "x" }),
      "can't parse inline keyboard button: Can't find field \"text\"",
    ],
    [
      "a bare text for a button",
      inline("a"),
      "can't parse inline keyboard button: InlineKeyboardButton must be an Object",
    ],
    [
      "one row that is no list",
      { inline_keyboard: ["a"] },
      'field "inline_keyboard" of the InlineKeyboardMarkup must be an Array of Arrays',
    ],
    ["no list at all", { inline_keyboard: {} }, "must be an Array of Arrays"],
    [
      "a number for data",
      inline({ text: "a", callback_data: 5 }),
      'Field "callback_data" must be of type String',
    ],
    ["no object", "keyboard", "object expected as reply markup"],
    // From memory.
    [
      "a link that is none",
      inline({ text: "a", url: "not a link" }),
      "inline keyboard button URL 'not a link' is invalid",
    ],
    // Ours: the platform leaves such a button out without a word.
    ["an empty label", inline({ text: " ", callback_data: "x" }), 'Field "text" must be non-empty'],
  ])("are refused with %s", (_case, markup, reason) => {
    expect(() => read(markup)).toThrow(reason);
  });

  it("that are empty count as none", () => {
    expect(read({ inline_keyboard: [] })).toEqual({ kind: "none" });
    expect(read({ inline_keyboard: [[]] })).toEqual({ kind: "none" });
    expect(read(undefined)).toEqual({ kind: "none" });
  });

  // From memory.
  it("open web apps in private chats only", () => {
    const app = inline({ text: "a", web_app: { url: "https://farm.example" } });
    expect(() => read(app, false)).toThrow("BUTTON_TYPE_INVALID");
  });
});

describe("reply keyboards", () => {
  it("take plain texts and buttons that ask for contact or place", () => {
    const keyboard = [
      ["Yes", { text: "My number", request_contact: true }],
      [{ text: "Here", request_location: true }],
    ];
    expect(
      read({ keyboard, resize_keyboard: true, input_field_placeholder: "Pick" }),
    ).toMatchObject({
      kind: "keyboard",
      keyboard: {
        keyboard: [
          [{ text: "Yes" }, { text: "My number", request_contact: true }],
          [{ text: "Here", request_location: true }],
        ],
        resize_keyboard: true,
        one_time_keyboard: false,
        input_field_placeholder: "Pick",
      },
    });
  });

  // Rule: Bot API reference text in @grammyjs/types, "Available in private chats only".
  // Wordings from memory.
  it("ask for contact and place in private chats only", () => {
    const asking = (field: string) => ({ keyboard: [[{ text: "a", [field]: true }]] });
    expect(() => read(asking("request_contact"), false)).toThrow(
      "400 Bad Request: phone number can be requested in private chats only",
    );
    expect(() => read(asking("request_location"), false)).toThrow(
      "400 Bad Request: location can be requested in private chats only",
    );
  });

  it("can be taken away, or replaced by a forced reply", () => {
    expect(read({ remove_keyboard: true })).toEqual({ kind: "remove" });
    expect(read({ force_reply: true, input_field_placeholder: "Volts" })).toEqual({
      kind: "forceReply",
      placeholder: "Volts",
    });
  });

  // Limit: Bot API reference text in @grammyjs/types, "1-64 characters". Wording is ours.
  it("take a hint of 64 characters", () => {
    const hinted = (count: number) => () =>
      read({ force_reply: true, input_field_placeholder: "x".repeat(count) });
    expect(hinted(64)).not.toThrow();
    expect(hinted(65)).toThrow("input field placeholder is too long");
  });

  it.each([
    [{ keyboard: ["a"] }, 'field "keyboard" must be an Array of Arrays'],
    [
      { keyboard: [[7]] },
      "can't parse keyboard button: KeyboardButton must be a String or an Object",
    ],
  ])("are refused when broken", (markup, reason) => {
    expect(() => read(markup)).toThrow(reason);
  });
});
