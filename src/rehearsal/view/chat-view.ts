import type { World } from "../world/world.ts";
import { type SeenMessage, seenMessage } from "./seen-message.ts";

/** A short notice the bot showed after a button press. */
export interface Toast {
  userId: number;
  text: string;
  /** True for a box that must be closed, false for a line that vanishes. */
  alert: boolean;
}

/** A whole chat as people see it now, as plain data that survives JSON. */
export interface ChatView {
  id: number;
  type: "private" | "group" | "supergroup";
  title: string;
  messages: SeenMessage[];
  /** Labels of the reply keyboard, row by row; [] for none. */
  keyboard: string[][];
  toasts: Toast[];
  topics: { id: number; name: string; isOpen: boolean }[];
  /** What the bot is seen to do, such as "typing"; "" after its next message. */
  action: string;
}

/** Answers questions about what people see. */
export interface Views {
  /** The messages of a chat, oldest first, edited in place, deleted ones left out. */
  transcript(chatId: number): SeenMessage[];
  chat(chatId: number): ChatView;
  chats(): { id: number; type: ChatView["type"]; title: string }[];
}

/** Follows the world and keeps what no message shows: notices and what the bot is seen to do. */
export function createViews(world: World): Views {
  const toasts = new Map<number, Toast[]>();
  const actions = new Map<number, string>();
  world.feed.subscribe((event) => {
    if (event.kind === "toast" && event.text !== "") {
      const { chatId, userId, text, alert } = event;
      toasts.set(chatId, [...(toasts.get(chatId) ?? []), { userId, text, alert }]);
    }
    if (event.kind === "action") actions.set(event.chatId, event.action);
    if (event.kind === "posted") actions.delete(event.chatId);
  });

  const transcript = (chatId: number) => {
    world.chats.require(chatId);
    return world.messages.visible(chatId).map((message) => seenMessage(world, message));
  };
  const nameOf = (chatId: number) => {
    const { chat } = world.chats.require(chatId);
    const title = chat.type === "private" ? chat.first_name : chat.title;
    return { id: chat.id, type: chat.type, title };
  };
  return {
    transcript,
    chat: (chatId) => {
      const record = world.chats.require(chatId);
      const rows = record.keyboard?.keyboard ?? [];
      return {
        ...nameOf(chatId),
        messages: transcript(chatId),
        keyboard: rows.map((row) => row.map(({ text }) => text)),
        toasts: toasts.get(chatId) ?? [],
        topics: [...record.topics.values()].map(({ id, name, isOpen }) => ({ id, name, isOpen })),
        action: actions.get(chatId) ?? "",
      };
    },
    chats: () => world.chats.all().map(({ chat }) => nameOf(chat.id)),
  };
}

/** The chat in a few lines, for messages of failed tests. */
export function transcriptText(messages: readonly SeenMessage[]): string {
  const lines = messages.map(({ id, from, kind, text, service, buttons }) => {
    const words = text === "" ? `(${service ?? kind})` : text;
    const rows = buttons.map((row) => row.map(({ label }) => `[${label}]`).join(" "));
    return [`#${id} ${from.name}: ${words}`, ...rows].join("\n    ");
  });
  return lines.length === 0 ? "(no messages)" : lines.join("\n");
}
