import type { InlineKeyboardMarkup, ReplyKeyboardMarkup, ReplyKeyboardRemove } from "grammy/types";
import type { FileRef, Message, Press } from "../domain/effects.ts";
import type { Rendered, WordedPaper } from "../domain/rendered.ts";
import { MESSAGE_LIMIT } from "../wording/split-points.ts";
import type { MarkedText } from "./cut-text.ts";
import { cutText } from "./cut-text.ts";

/** Bot API, sendPhoto: a caption has 0-1024 characters after entities are parsed. */
export const CAPTION_LIMIT = 1024;
/** Observed on the platform, not documented: more buttons than this are refused. */
const MOST_BUTTONS = 100;
/** It takes a message to take a keyboard away, and a message needs a text; this is no language's. */
const NOTED = "✓";

export type Keyboard = InlineKeyboardMarkup | ReplyKeyboardMarkup | ReplyKeyboardRemove;

/** What stands above the words: a file of the chat service's, or one that is made now. */
type Above =
  | { readonly send: "file"; readonly file: FileRef }
  | { readonly send: "picture"; readonly picture: NonNullable<Message["picture"]> }
  | { readonly send: "attachment"; readonly attachment: NonNullable<Message["attachment"]> }
  | { readonly send: "paper"; readonly paper: WordedPaper };

type Body = (Above | { readonly send: "text" }) & { readonly words: MarkedText };

/** One call that sends one message. */
export type Call = (
  | Body
  | { readonly send: "place"; readonly latitude: number; readonly longitude: number }
  | { readonly send: "card"; readonly name: string; readonly phone: string }
) & {
  readonly keyboard?: Keyboard;
  /** The one that carries the words and buttons, and that a later revision changes. */
  readonly main: boolean;
};

export interface CallPlan {
  /** False in groups, where nothing can be shared by a button. */
  readonly direct: boolean;
  /** A button's data; null: the button cannot be made and is left out. */
  readonly encode: (press: Press) => string | null;
}

/** These kinds of files are shown without words. */
const hasCaption = (above: Above) =>
  above.send !== "file" || (above.file.kind !== "sticker" && above.file.kind !== "video-note");
const nothing: MarkedText = { text: "", entities: [] };

/**
 * The calls that bring one rendered message to a chat, in order. A message has one keyboard at
 * most, so what has two becomes two messages; long texts are cut.
 */
export function planCalls(rendered: Rendered, plan: CallPlan): readonly Call[] {
  const { text, entities, place, card, share, endShare } = rendered;
  const buttons = inlineKeyboard(rendered, plan.encode);
  const removes: ReplyKeyboardRemove | null =
    endShare === true && plan.direct ? { remove_keyboard: true } : null;
  const offer = share !== undefined && plan.direct ? shareKeyboard(share) : null;
  const keyboard = buttons ?? removes ?? offer;
  const body = bodyCalls({ text, entities }, aboveOf(rendered), keyboard);
  const isOnBody = (candidate: Keyboard) => body.length > 0 && keyboard === candidate;
  return [
    ...(removes === null || isOnBody(removes) ? [] : [note(NOTED, removes)]),
    ...body,
    ...(place === undefined ? [] : [{ send: "place", main: false, ...place } as const]),
    ...(card === undefined ? [] : [{ send: "card", main: false, ...card } as const]),
    ...(offer === null || share === undefined || isOnBody(offer)
      ? []
      : [note(shareWords(share), offer)]),
  ];
}

const note = (text: string, keyboard: Keyboard): Call => ({
  send: "text",
  words: { text, entities: [] },
  keyboard,
  main: false,
});

function aboveOf({ file, picture, attachment, paper }: Rendered): Above | undefined {
  if (file !== undefined) return { send: "file", file };
  if (picture !== undefined) return { send: "picture", picture };
  if (paper !== undefined) return { send: "paper", paper };
  return attachment === undefined ? undefined : { send: "attachment", attachment };
}

/** File and words: one message where the words fit under the file, else one after the other. */
function bodyCalls(
  words: MarkedText,
  above: Above | undefined,
  keyboard: Keyboard | null,
): readonly Call[] {
  const fits = above !== undefined && hasCaption(above) && words.text.length <= CAPTION_LIMIT;
  const pieces = fits ? [] : cutText(words, MESSAGE_LIMIT);
  const calls: Body[] = pieces.map((piece) => ({ send: "text", words: piece }));
  if (above !== undefined) calls.unshift({ ...above, words: fits ? words : nothing });
  return calls.map((call, index): Call => {
    const last = index === calls.length - 1;
    return { ...call, main: last, ...(last && keyboard !== null ? { keyboard } : {}) };
  });
}

function inlineKeyboard(
  { buttons }: Rendered,
  encode: CallPlan["encode"],
): InlineKeyboardMarkup | null {
  let left = MOST_BUTTONS;
  const rows = buttons
    .map((row) =>
      row.flatMap(({ label, press }) => {
        const data = encode(press);
        return data === null || left-- <= 0 ? [] : [{ text: label || "…", callback_data: data }];
      }),
    )
    .filter((row) => row.length > 0);
  return rows.length === 0 ? null : { inline_keyboard: rows };
}

const shareButton = ({ kind, label }: { readonly kind: string; readonly label: string }) =>
  kind === "location"
    ? { text: label, request_location: true }
    : { text: label, request_contact: true };

/** One button is gone once it was used; of two the other is still wanted. */
function shareKeyboard(share: NonNullable<Rendered["share"]>): ReplyKeyboardMarkup {
  const { also } = share;
  const rows = [share, ...(also === undefined ? [] : [also])].map((one) => [shareButton(one)]);
  return { keyboard: rows, resize_keyboard: true, one_time_keyboard: also === undefined };
}

/** The words over the buttons: a message needs some. */
const shareWords = ({ label, also }: NonNullable<Rendered["share"]>) =>
  [label, ...(also === undefined ? [] : [also.label])].join(" · ");
