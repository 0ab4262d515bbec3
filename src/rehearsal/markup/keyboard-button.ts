import type { KeyboardButton } from "@grammyjs/types";
import { badRequest } from "../refusal.ts";
import { isRecord } from "../wire/params.ts";
import { buttonLook, type MarkupPlace, requiredText } from "./button-fields.ts";

/** A button of a reply keyboard; one given as plain text has become an object. */
export type Key = Exclude<KeyboardButton, string>;

function unreadable(reason: string): Error {
  return badRequest(`can't parse keyboard button: ${reason}`);
}

/**
 * Checks one button of a reply keyboard. A button that asks for the phone number or the place is
 * taken in private chats only.
 * @throws ApiRefusal 400
 */
export function readKeyboardButton(value: unknown, place: MarkupPlace): Key {
  if (typeof value === "string") return { text: value };
  if (!isRecord(value)) throw unreadable("KeyboardButton must be a String or an Object");
  const base = { text: requiredText(value, "text", unreadable), ...buttonLook(value) };
  if (value["request_contact"] === true) {
    if (!place.isPrivate) throw badRequest("phone number can be requested in private chats only");
    return { ...base, request_contact: true };
  }
  if (value["request_location"] === true) {
    if (!place.isPrivate) throw badRequest("location can be requested in private chats only");
    return { ...base, request_location: true };
  }
  return base;
}
