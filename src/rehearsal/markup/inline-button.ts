import type { InlineKeyboardButton } from "@grammyjs/types";
import { badRequest } from "../refusal.ts";
import { isRecord } from "../wire/params.ts";
import { buttonLook, type MarkupPlace, requiredText } from "./button-fields.ts";

/** Addresses a button may open. */
const WEB_ADDRESS = /^(?:https?|tg|ton|mailto|tel):\S+$|^[^\s:/]+\.[^\s]+$/i;

function unreadable(reason: string): Error {
  return badRequest(`can't parse inline keyboard button: ${reason}`);
}

/**
 * Checks one button of an inline keyboard.
 * @throws ApiRefusal 400, among them `BUTTON_DATA_INVALID` for data above 64 bytes and
 * `Text buttons are unallowed in the inline keyboard` for a button that does nothing
 */
export function readInlineButton(value: unknown, place: MarkupPlace): InlineKeyboardButton {
  if (!isRecord(value)) throw unreadable("InlineKeyboardButton must be an Object");
  const base = { text: requiredText(value, "text", unreadable), ...buttonLook(value) };

  const url = optionalText(value, "url");
  if (url !== "") {
    if (!WEB_ADDRESS.test(url)) {
      throw badRequest(`inline keyboard button URL '${url}' is invalid: Wrong HTTP URL`);
    }
    return { ...base, url };
  }
  const data = optionalText(value, "callback_data");
  if (data !== "") {
    if (Buffer.byteLength(data, "utf8") > place.limits.callbackDataBytes) {
      throw badRequest("BUTTON_DATA_INVALID");
    }
    return { ...base, callback_data: data };
  }
  const other = readOtherButton(value, place);
  if (other === undefined) throw unreadable("Text buttons are unallowed in the inline keyboard");
  return { ...base, ...other };
}

type OtherButton =
  | { copy_text: { text: string } }
  | { web_app: { url: string } }
  | { switch_inline_query_current_chat: string }
  | { disabled: Record<string, never> };

function readOtherButton(
  value: Record<string, unknown>,
  place: MarkupPlace,
): OtherButton | undefined {
  const copy = value["copy_text"];
  if (isRecord(copy)) return { copy_text: { text: requiredText(copy, "text", unreadable) } };
  const app = value["web_app"];
  if (isRecord(app)) {
    if (!place.isPrivate) throw badRequest("BUTTON_TYPE_INVALID");
    return { web_app: { url: requiredText(app, "url", unreadable) } };
  }
  const query = value["switch_inline_query_current_chat"];
  if (typeof query === "string") return { switch_inline_query_current_chat: query };
  return isRecord(value["disabled"]) ? { disabled: {} } : undefined;
}

function optionalText(value: Record<string, unknown>, field: string): string {
  const found = value[field] ?? "";
  if (typeof found !== "string") throw unreadable(`Field "${field}" must be of type String`);
  return found;
}
