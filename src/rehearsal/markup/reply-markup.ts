import type { InlineKeyboardMarkup, ReplyKeyboardMarkup } from "@grammyjs/types";
import { badRequest } from "../refusal.ts";
import { isRecord } from "../wire/params.ts";
import type { MarkupPlace } from "./button-fields.ts";
import { readInlineButton } from "./inline-button.ts";
import { type Key, readKeyboardButton } from "./keyboard-button.ts";

/** A reply keyboard as people see it. */
export type ReplyKeyboard = Omit<ReplyKeyboardMarkup, "keyboard"> & { keyboard: Key[][] };

/** What a message carries besides its content. */
export type ReplyMarkup =
  | { kind: "none" }
  | { kind: "inline"; inline: InlineKeyboardMarkup }
  | { kind: "keyboard"; keyboard: ReplyKeyboard }
  | { kind: "remove" }
  | { kind: "forceReply"; placeholder?: string };

/**
 * Checks a `reply_markup` argument. As on the real server an empty keyboard counts as none, and
 * a reply keyboard wins over an inline keyboard when both are given.
 * @param value parsed JSON; undefined when the argument is missing
 * @throws ApiRefusal 400 with the wording of the real server
 */
export function readReplyMarkup(value: unknown, place: MarkupPlace): ReplyMarkup {
  if (value === undefined || value === "") return { kind: "none" };
  if (!isRecord(value)) throw badRequest("object expected as reply markup");
  const keyboard = rowsOf(value["keyboard"], `field "keyboard" must be an Array of Arrays`);
  const rows = keyboard.map((row) => row.map((button) => readKeyboardButton(button, place)));
  const inline = rowsOf(
    value["inline_keyboard"],
    `field "inline_keyboard" of the InlineKeyboardMarkup must be an Array of Arrays`,
  );
  const inlineRows = inline.map((row) => row.map((button) => readInlineButton(button, place)));

  if (rows.length > 0) return { kind: "keyboard", keyboard: replyKeyboard(value, rows, place) };
  if (inlineRows.length > 0) return { kind: "inline", inline: { inline_keyboard: inlineRows } };
  if (value["remove_keyboard"] === true) return { kind: "remove" };
  if (value["force_reply"] !== true) return { kind: "none" };
  const placeholder = placeholderOf(value, place);
  return { kind: "forceReply", ...(placeholder === undefined ? {} : { placeholder }) };
}

function rowsOf(value: unknown, reason: string): unknown[][] {
  if (value === undefined) return [];
  if (!Array.isArray(value)) throw badRequest(reason);
  const rows = value.map((row: unknown) => {
    if (!Array.isArray(row)) throw badRequest(reason);
    return row;
  });
  return rows.filter((row) => row.length > 0);
}

function replyKeyboard(
  value: Record<string, unknown>,
  keyboard: Key[][],
  place: MarkupPlace,
): ReplyKeyboard {
  const placeholder = placeholderOf(value, place);
  return {
    keyboard,
    resize_keyboard: value["resize_keyboard"] === true,
    one_time_keyboard: value["one_time_keyboard"] === true,
    is_persistent: value["is_persistent"] === true,
    ...(placeholder === undefined ? {} : { input_field_placeholder: placeholder }),
  };
}

function placeholderOf(value: Record<string, unknown>, place: MarkupPlace): string | undefined {
  const placeholder = value["input_field_placeholder"];
  if (typeof placeholder !== "string" || placeholder === "") return undefined;
  if (placeholder.length > place.limits.placeholderChars) {
    throw badRequest("input field placeholder is too long");
  }
  return placeholder;
}
