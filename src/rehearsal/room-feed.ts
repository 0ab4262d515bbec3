import type { ServerResponse } from "node:http";
import type { RoomPhone, RoomScenario } from "./room-scenario.ts";
import type { RehearsalServer } from "./server.ts";
import type { ChatView } from "./view/chat-view.ts";

/** A phone as the page shows it. */
export interface PhoneView {
  readonly id: string;
  readonly language: string;
  readonly chat: ChatView;
  readonly commands: readonly { readonly command: string; readonly description: string }[];
}

export interface RoomFeed {
  view(phone: RoomPhone): PhoneView;
  /** Keeps the page told, from now until it closes the connection. */
  attach(response: ServerResponse): void;
  /** Tells every page of a phone whose look has changed without any message. */
  changed(phone: RoomPhone): void;
}

/** A burst of changes is told once, this many milliseconds after its first. */
const GATHER_MILLISECONDS = 25;

/**
 * Follows the server's events and tells every open page, by Server-Sent Events, how the phones look
 * now: all of them at first, then each one that changes.
 */
export function createRoomFeed(server: RehearsalServer, scenario: RoomScenario): RoomFeed {
  const pages = new Set<ServerResponse>();
  const waiting = new Map<RoomPhone, NodeJS.Timeout>();

  function view(phone: RoomPhone): PhoneView {
    const { user, chatId } = server.person(phone.person);
    const language = user.language_code ?? "";
    const commands = server.commandsShown(chatId, language);
    return { id: phone.id, language, chat: server.view(chatId), commands };
  }

  function tell(phone: RoomPhone): void {
    waiting.delete(phone);
    const event = eventOf(view(phone));
    for (const page of pages) page.write(event);
  }

  function changed(phone: RoomPhone): void {
    if (waiting.has(phone)) return;
    const timer = setTimeout(() => tell(phone), GATHER_MILLISECONDS);
    timer.unref();
    waiting.set(phone, timer);
  }

  server.subscribe((event) => {
    // Commands and the like concern every phone; what is part of one chat, only that one.
    const chatId = "chatId" in event ? event.chatId : undefined;
    if (event.kind === "calling" || event.kind === "queued" || event.kind === "confirmed") return;
    if (event.kind === "called" && !/^(set|delete)My/i.test(event.method)) return;
    for (const phone of scenario.phones) {
      if (chatId === undefined || chatId === phone.person.id) changed(phone);
    }
  });

  return {
    view,
    changed,
    attach: (response) => {
      response.writeHead(200, {
        "content-type": "text/event-stream; charset=utf-8",
        "cache-control": "no-store",
      });
      pages.add(response);
      response.on("close", () => pages.delete(response));
      for (const phone of scenario.phones) response.write(eventOf(view(phone)));
    },
  };
}

function eventOf(view: PhoneView): string {
  return `event: phone\ndata: ${JSON.stringify(view)}\n\n`;
}
