import { describe, expect, it } from "vitest";
import { checkOffsets, readEntities, timeFormat } from "../../../src/rehearsal/text/entities.ts";

const bold = (offset: number, length: number) => ({ type: "bold", offset, length }) as const;

describe("entities a bot sends", () => {
  it("are taken over with the fields their type needs", () => {
    const given = [
      bold(0, 1),
      { type: "pre", offset: 0, length: 1, language: "c" },
      { type: "text_link", offset: 0, length: 1, url: "https://farm.example" },
      {
        type: "text_mention",
        offset: 0,
        length: 1,
        user: { id: 4, is_bot: false, first_name: "Z" },
      },
      { type: "custom_emoji", offset: 0, length: 1, custom_emoji_id: "5" },
      { type: "date_time", offset: 0, length: 1, unix_time: 9, date_time_format: "wD" },
    ];
    expect(readEntities(given)).toEqual(given);
  });

  it("that the server finds itself are passed over, and no list counts as none", () => {
    expect(readEntities([{ type: "url", offset: 0, length: 3 }])).toEqual([]);
    expect([readEntities(undefined), readEntities("x")]).toEqual([[], []]);
  });

  // Wordings: Bot API server source, public repository tdlib/telegram-bot-api.
  it.each([
    ["no object", "bold", "expected an Object"],
    ["an unknown type", { type: "huge", offset: 0, length: 1 }, "Unsupported type specified"],
    ["no offset", { type: "bold", length: 1 }, 'Can\'t find field "offset"'],
    [
      "a broken offset",
      { type: "bold", offset: 0.5, length: 1 },
      'Field "offset" must be of type Number',
    ],
    ["a link to nowhere", { type: "text_link", offset: 0, length: 1 }, 'Can\'t find field "url"'],
    [
      "a number for a type",
      { type: 3, offset: 0, length: 1 },
      'Field "type" must be of type String',
    ],
    [
      "nobody mentioned",
      { type: "text_mention", offset: 0, length: 1 },
      'Can\'t find field "user"',
    ],
  ])("are refused with %s", (_case, entity, reason) => {
    expect(() => readEntities([entity])).toThrow(
      `400 Bad Request: can't parse MessageEntity: ${reason}`,
    );
  });

  // Wordings: source of the library under the Bot API server, public repository tdlib/td.
  // "🚜" takes UTF-16 units 1 and 2 of "a🚜b", and bytes 1 to 4.
  it.each([
    ["lie before the text", bold(-1, 1), "receive an entity with incorrect offset -1"],
    ["have a negative length", bold(0, -2), "receive an entity with incorrect length -2"],
    [
      "begin behind the text",
      bold(4, 1),
      "entity begins after the end of the text at UTF-16 offset 4",
    ],
    [
      "begin inside a character",
      bold(2, 1),
      "entity begins in a middle of a UTF-16 symbol at byte offset",
    ],
    [
      "end inside a character",
      bold(0, 2),
      "entity beginning at UTF-16 offset 0 ends in a middle of a UTF-16 symbol",
    ],
    [
      "end behind the text",
      bold(0, 9),
      "entity beginning at UTF-16 offset 0 ends after the end of the text at UTF-16 offset 9",
    ],
  ])("are refused when they %s", (_case, entity, reason) => {
    expect(() => checkOffsets({ text: "a🚜b", entities: [entity] })).toThrow(reason);
  });

  it("may cover whole characters up to the end", () => {
    expect(() => checkOffsets({ text: "a🚜b", entities: [bold(1, 2), bold(3, 1)] })).not.toThrow();
  });
});

it("times can be shown in the nineteen ways of the reference", () => {
  // Bot API reference text in @grammyjs/types: "r", or an optional w, an optional d or D, and an
  // optional t or T: 1 + 2 × 3 × 3.
  const parts = ["", "w"].flatMap((w) =>
    ["", "d", "D"].flatMap((d) => ["", "t", "T"].map((t) => `${w}${d}${t}`)),
  );
  expect([...parts, "r"].filter((name) => timeFormat(name) === name)).toHaveLength(19);
  expect([timeFormat("dw"), timeFormat("rr")]).toEqual([undefined, undefined]);
});
