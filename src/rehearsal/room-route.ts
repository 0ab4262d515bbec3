import { readFile } from "node:fs/promises";
import type { IncomingMessage, ServerResponse } from "node:http";
import { RehearsalError } from "./people/speaker.ts";
import type { RoomActs, Wish } from "./room-acts.ts";
import type { RoomFeed } from "./room-feed.ts";
import type { RoomScenario } from "./room-scenario.ts";
import type { RehearsalServer } from "./server.ts";
import type { ExtraRoute } from "./wire/http-server.ts";

export interface RoomParts {
  readonly scenario: RoomScenario;
  readonly server: RehearsalServer;
  readonly feed: RoomFeed;
  readonly acts: RoomActs;
  readonly play: (() => Promise<void>) | undefined;
}

/** Files of the page, beside this one in the source tree; the built program finds them there too. */
const PAGE_FOLDER = new URL("../../src/rehearsal/page/", import.meta.url);
const pageFiles: Readonly<Record<string, readonly [string, string]>> = {
  "/": ["index.html", "text/html"],
  "/room/page.css": ["page.css", "text/css"],
  "/room/phone.css": ["phone.css", "text/css"],
  "/room/page.js": ["page.js", "text/javascript"],
  "/room/phone.js": ["phone.js", "text/javascript"],
  "/room/message.js": ["message.js", "text/javascript"],
  "/room/elements.js": ["elements.js", "text/javascript"],
};

/** The page needs nothing from elsewhere, and nothing elsewhere may hold the page. */
const headers = {
  "cache-control": "no-store",
  "content-security-policy":
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; " +
    "connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  "cross-origin-resource-policy": "same-origin",
  "referrer-policy": "no-referrer",
  "x-content-type-options": "nosniff",
};

/** Pictures that a browser may show; everything else it may only save. */
const shown = /^image\/(png|jpeg|webp|gif)$/;

/** Bytes of a wish, and of a photo (Bot API, sendPhoto: 10 MB). */
const MOST_WISH_BYTES = 64 * 1024;
const MOST_PHOTO_BYTES = 10 * 1024 * 1024;

/** Answers the requests of the page; leaves all others alone. */
export function createRoomRoute(parts: RoomParts): ExtraRoute {
  return async (request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://127.0.0.1");
    if (pathname !== "/" && !pathname.startsWith("/room/")) return false;
    try {
      if (request.method === "GET") return await show(parts, pathname, response);
      if (request.method !== "POST") return false;
      if (!isOwnPage(request))
        throw new Refusal(403, "This did not come from the room's own page.");
      await act(parts, pathname, { request, response });
    } catch (error) {
      const status = error instanceof Refusal ? error.status : 400;
      if (!(error instanceof Refusal || error instanceof RehearsalError)) throw error;
      sendJson(response, status, { problem: error.message });
    }
    return true;
  };
}

class Refusal extends Error {
  override readonly name = "Refusal";
  readonly status: number;
  constructor(status: number, message: string) {
    super(message);
    this.status = status;
  }
}

/** Another page in the same browser must not press buttons here. */
function isOwnPage({ headers: { origin, host } }: IncomingMessage): boolean {
  return origin !== undefined && host !== undefined && origin === `http://${host}`;
}

async function show(parts: RoomParts, path: string, response: ServerResponse): Promise<boolean> {
  const page = Object.hasOwn(pageFiles, path) ? pageFiles[path] : undefined;
  if (page !== undefined) {
    const [name, type] = page;
    send(response, `${type}; charset=utf-8`, await readFile(new URL(name, PAGE_FOLDER)));
  } else if (path === "/room/scenario") sendJson(response, 200, scenarioView(parts));
  else if (path === "/room/events") parts.feed.attach(response);
  else return sendBytes(parts, path, response);
  return true;
}

function scenarioView({ scenario, server, play }: RoomParts) {
  const { title, about, languages, phones, pictures } = scenario;
  return {
    title,
    about,
    languages,
    bot: { name: server.bot.first_name, username: server.bot.username },
    pictures: pictures.map(({ id, title: name }) => ({ id, title: name })),
    phones: phones.map(({ id, role, person, about: who, lines = [] }) => ({
      id,
      role,
      name: person.name,
      userId: person.id,
      about: who,
      lines,
    })),
    canPlay: play !== undefined,
  };
}

function sendBytes(parts: RoomParts, path: string, response: ServerResponse): boolean {
  const [, , kind, id = ""] = path.split("/").map(decodeURIComponent);
  if (kind === "pictures") {
    const picture = parts.scenario.pictures.find((one) => one.id === id);
    if (picture !== undefined) send(response, typeOf(picture.bytes), Buffer.from(picture.bytes));
    return picture !== undefined;
  }
  const file = kind === "files" ? parts.server.file(id) : undefined;
  if (file !== undefined) {
    const type = shown.test(file.mimeType) ? file.mimeType : "application/octet-stream";
    send(response, type, file.bytes);
  }
  return file !== undefined;
}

/** A JPEG begins with these two bytes (ITU-T T.81, B.1); the room has nothing else but PNG. */
function typeOf(bytes: Uint8Array): string {
  return bytes[0] === 0xff && bytes[1] === 0xd8 ? "image/jpeg" : "image/png";
}

async function act(
  parts: RoomParts,
  path: string,
  { request, response }: { request: IncomingMessage; response: ServerResponse },
): Promise<void> {
  if (path === "/room/play" && parts.play !== undefined) {
    await parts.play();
    sendJson(response, 200, {});
    return;
  }
  const [, , kind, id, name = ""] = path.split("/");
  const phone = parts.scenario.phones.find((one) => one.id === id);
  if (kind !== "phones" || phone === undefined) throw new Refusal(404, "There is no such phone.");
  if (name === "photo") parts.acts.sendPhoto(phone, await readBody(request, MOST_PHOTO_BYTES));
  else if (!parts.acts.perform(phone, name, await readWish(request))) {
    throw new Refusal(404, "A phone cannot do that.");
  }
  parts.feed.changed(phone);
  sendJson(response, 200, {});
}

async function readWish(request: IncomingMessage): Promise<Wish> {
  const text = (await readBody(request, MOST_WISH_BYTES)).toString("utf8");
  try {
    const wish: unknown = text === "" ? {} : JSON.parse(text);
    if (isWish(wish)) return wish;
  } catch {
    // Falls through to the one sentence that fits both mistakes.
  }
  throw new Refusal(400, "The room expected a JSON object.");
}

function isWish(value: unknown): value is Wish {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

async function readBody(request: IncomingMessage, most: number): Promise<Buffer> {
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request) {
    const chunk = Buffer.from(part);
    size += chunk.length;
    if (size > most) throw new Refusal(413, `That is more than ${most} bytes.`);
    parts.push(chunk);
  }
  return Buffer.concat(parts);
}

function sendJson(response: ServerResponse, status: number, value: unknown): void {
  response.writeHead(status, { ...headers, "content-type": "application/json" });
  response.end(JSON.stringify(value));
}

function send(response: ServerResponse, type: string, bytes: Buffer): void {
  response.writeHead(200, { ...headers, "content-type": type }).end(bytes);
}
