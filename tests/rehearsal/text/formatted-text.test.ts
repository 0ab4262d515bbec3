import { describe, expect, it } from "vitest";
import { formatText } from "../../../src/rehearsal/text/formatted-text.ts";

const rule = { maxChars: 20, tooLong: "message is too long", mayBeEmpty: false };
const format = (text: string, parseMode = "", entities: unknown = undefined) =>
  formatText({ text, parseMode, entities }, rule);

describe("a text on its way to people", () => {
  it("loses blanks at both ends, and its marks move along", () => {
    expect(format("  ab  \n", "", [{ type: "bold", offset: 2, length: 4 }])).toEqual({
      text: "ab",
      entities: [{ type: "bold", offset: 0, length: 2 }],
    });
  });

  it("keeps blanks in front that are marked", () => {
    expect(format("  ab", "", [{ type: "code", offset: 0, length: 4 }]).text).toBe("  ab");
  });

  it("loses carriage returns; other control characters become blanks", () => {
    expect(format("a\r\nb\tc", "", [{ type: "bold", offset: 3, length: 1 }])).toEqual({
      text: "a\nb c",
      entities: [{ type: "bold", offset: 2, length: 1 }],
    });
  });

  it("has commands and links marked, but not inside code", () => {
    expect(format("<code>/a</code> /b", "HTML").entities).toEqual([
      { type: "code", offset: 0, length: 2 },
      { type: "bot_command", offset: 3, length: 2 },
    ]);
  });

  // Limits count after markup is read: Bot API reference text in @grammyjs/types,
  // "1-4096 characters after entities parsing". The unit, UTF-16, is our own choice.
  it("is measured after markup is read, in UTF-16 units", () => {
    expect(format(`<b>${"x".repeat(20)}</b>`, "html").text).toHaveLength(20);
    expect(() => format("x".repeat(21))).toThrow("400 Bad Request: message is too long");
    expect(format("🚜".repeat(10)).text).toHaveLength(20);
    expect(() => format("🚜".repeat(11))).toThrow("message is too long");
  });

  // Wording: source of the library under the Bot API server, public repository tdlib/td.
  it("must not be blank, but a caption may", () => {
    expect(() => format(" \n ")).toThrow("400 Bad Request: message must be non-empty");
    expect(() => format("<b></b>", "HTML")).toThrow("message must be non-empty");
    const caption = { ...rule, mayBeEmpty: true };
    expect(formatText({ text: " ", parseMode: "", entities: undefined }, caption).text).toBe("");
  });

  // Wording: Bot API server source, public repository tdlib/telegram-bot-api.
  it("is refused in an unknown parse mode, and in Markdown, which is not read here", () => {
    expect(() => format("x", "BBCode")).toThrow("400 Bad Request: unsupported parse_mode");
    expect(() => format("x", "MarkdownV2")).toThrow("not Markdown");
  });
});
