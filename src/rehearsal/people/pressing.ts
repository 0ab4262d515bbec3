import type { InlineKeyboardButton } from "@grammyjs/types";
import type { Key } from "../markup/keyboard-button.ts";
import { type MessageRecord, toPost } from "../world/messages.ts";
import type { Press } from "../world/presses.ts";
import type { PressQuery } from "../world/updates.ts";
import { checkCanWrite, RehearsalError, type Speaker } from "./speaker.ts";

/** A button by its label, or by its place in the newest keyboard; both count from 0. */
export type ButtonChoice = string | { row: number; column: number };

export interface PressOptions {
  /** Only this message's buttons. */
  messageId?: number;
  /** The update says of the message only that it exists, as the platform does for old ones. */
  isInaccessible?: boolean;
}

/** A button found in the chat. */
export type FoundButton =
  | { kind: "inline"; button: InlineKeyboardButton; message: MessageRecord }
  | { kind: "keyboard"; button: Key };

/**
 * Finds a button the person can see: on the newest message that has it, else on the reply
 * keyboard.
 * @throws RehearsalError that names the buttons there are
 */
export function findButton(
  speaker: Speaker,
  choice: ButtonChoice,
  options: PressOptions = {},
): FoundButton {
  const { world, record } = speaker;
  const messages = world.messages
    .visible(record.chat.id)
    .filter(({ inline }) => inline !== undefined)
    .filter(({ head }) => head.message_id === (options.messageId ?? head.message_id))
    .reverse();
  for (const message of messages) {
    const button = pick(message.inline?.inline_keyboard ?? [], choice);
    if (button !== undefined) return { kind: "inline", button, message };
  }
  const key =
    options.messageId === undefined ? pick(record.keyboard?.keyboard ?? [], choice) : undefined;
  if (key !== undefined) return { kind: "keyboard", button: key };
  throw new RehearsalError(nothingToPress(speaker, choice, messages));
}

function pick<Button extends { text: string }>(
  rows: readonly (readonly Button[])[],
  choice: ButtonChoice,
): Button | undefined {
  if (typeof choice !== "string") return rows[choice.row]?.[choice.column];
  return rows.flat().find((button) => button.text === choice);
}

function nothingToPress(
  { record, user }: Speaker,
  choice: ButtonChoice,
  messages: readonly MessageRecord[],
): string {
  const wanted =
    typeof choice === "string" ? `"${choice}"` : `at row ${choice.row}, column ${choice.column}`;
  const shown = messages.map(
    ({ head, inline }) => `message ${head.message_id}: ${labels(inline?.inline_keyboard ?? [])}`,
  );
  const keys =
    record.keyboard === undefined ? [] : [`keyboard: ${labels(record.keyboard.keyboard)}`];
  const there = [...shown, ...keys];
  const list = there.length === 0 ? "There are none." : `There are: ${there.join("; ")}.`;
  return `${user.first_name} sees no button ${wanted} in chat ${record.chat.id}. ${list}`;
}

function labels(rows: readonly (readonly { text: string }[])[]): string {
  return rows
    .flat()
    .map(({ text }) => `"${text}"`)
    .join(", ");
}

/** The data of a button that tells the bot something. @throws RehearsalError for any other */
export function dataOf(button: InlineKeyboardButton): string {
  if ("callback_data" in button) return button.callback_data;
  throw new RehearsalError(`The button "${button.text}" tells the bot nothing when it is pressed.`);
}

/**
 * The person's app tells the bot of a press. The data need not be on any button: a changed app
 * can send what it likes.
 * @returns the query id
 */
export function sendPress(
  speaker: Speaker,
  press: Pick<Press, "messageId" | "data" | "isInaccessible">,
): string {
  checkCanWrite(speaker);
  const { world, record, user } = speaker;
  const { messageId, data, isInaccessible } = press;
  const message = world.messages.ever(record.chat.id, messageId);
  if (message === undefined) {
    throw new RehearsalError(`There never was a message ${messageId} in chat ${record.chat.id}.`);
  }
  const { queryId } = world.presses.add({
    userId: user.id,
    chatId: record.chat.id,
    messageId,
    data,
    isInaccessible,
  });
  const isGone = message.isDeleted || isInaccessible;
  const query: PressQuery = {
    id: queryId,
    from: user,
    message: isGone ? { chat: record.chat, message_id: messageId, date: 0 } : toPost(message),
    chat_instance: chatInstance(record.chat.id),
    data,
  };
  world.queue.push({ callback_query: query }, `press ${user.id}`);
  return queryId;
}

/** A number that stands for the chat and tells nothing about it. */
function chatInstance(chatId: number): string {
  return BigInt.asUintN(63, BigInt(chatId) * 6_364_136_223_846_793_005n).toString();
}
