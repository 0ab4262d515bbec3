import type { Server } from "node:http";
import type { AddressInfo } from "node:net";
import type { UserFromGetMe } from "@grammyjs/types";
import { type Limits, PLATFORM_LIMITS } from "./limits.ts";
import { createGroup, type Group, type GroupOptions } from "./people/group.ts";
import { createPerson, type Person, type PersonOptions } from "./people/person.ts";
import { type Clock, REAL_TIME, type Wait } from "./time.ts";
import { createViews, type Views } from "./view/chat-view.ts";
import { createWaiting, type Waiting } from "./view/waiting.ts";
import { carryOutFromWebhook } from "./wire/carry-out.ts";
import { createHttpServer, type ExtraRoute } from "./wire/http-server.ts";
import type { CallRecord } from "./world/calls.ts";
import type { FaultScript } from "./world/faults.ts";
import type { FeedListener } from "./world/feed.ts";
import type { StoredFile } from "./world/files.ts";
import type { RateLimiter } from "./world/rate-limit.ts";
import type { HeldUpdates } from "./world/updates.ts";
import { createWorld, type World } from "./world/world.ts";

export interface RehearsalOptions {
  /** Any token that cannot be a real one, such as `1:rehearsal-anything`. */
  token: string;
  /** 0, the default, lets the computer choose a free one. */
  port?: number;
  /** The time of messages, expiry and limits; the computer's when missing. */
  clock?: Clock;
  /** How to wait, for long polls and retries; the computer's timers when missing. */
  wait?: Wait;
  limits?: Partial<Limits>;
  botName?: string;
  botUsername?: string;
}

/** The token could be a real one. Its text is not repeated anywhere. */
export class RealTokenError extends Error {
  override readonly name = "RealTokenError";
}

/** Something else listens on the port already. */
export class PortTakenError extends Error {
  override readonly name = "PortTakenError";
  readonly port: number;

  constructor(port: number, options: { cause: unknown }) {
    super(
      `Port ${port} is taken by another program. Stop that program or choose another port.`,
      options,
    );
    this.port = port;
  }
}

/** A local Bot API server with the people on its other side. */
export interface RehearsalServer extends Waiting, Pick<Views, "transcript" | "chats"> {
  /** What a client takes as its API root. @throws Error before start() */
  readonly url: string;
  readonly port: number;
  readonly token: string;
  readonly bot: UserFromGetMe;
  /** @throws PortTakenError */
  start(): Promise<void>;
  /** Ends open requests and stops listening. */
  stop(): Promise<void>;
  /** Adds a route for requests that are no calls; those added first are asked first. */
  handle(route: ExtraRoute): void;

  /** The person of that id; the options count the first time only. */
  person(options: PersonOptions): Person;
  group(options: GroupOptions): Group;

  /** A whole chat with keyboard, notices and topics. */
  view(chatId: number): ReturnType<Views["chat"]>;
  /** A file that was sent, by any of its ids. */
  file(fileId: string): StoredFile | undefined;
  /** Every call of the bot so far. @param method in any case; all when missing */
  calls(method?: string): CallRecord[];
  /** Commands a person sees in the menu of their private chat. */
  commandsShown(chatId: number, language: string): { command: string; description: string }[];
  /** Tells of every change. @returns a function that ends the subscription */
  subscribe(listener: FeedListener): () => void;

  /** Makes calls go wrong. */
  readonly faults: Pick<FaultScript, "add" | "clear">;
  /** Refuses messages that come too fast; off until switched on. */
  readonly rateLimit: Pick<RateLimiter, "on" | "off">;
  /** Sends an update again under its old id; the newest one the bot got when none is named. */
  repeatUpdate(updateId?: number): void;
  /** The next update gets this id. */
  jumpUpdateId(to: number): void;
  /** Holds updates back until they are released or dropped one by one. */
  holdUpdates(): HeldUpdates;
  /** Updates that wait for the bot. */
  pendingUpdates(): number;
}

/** The shape of a token that the platform gives out. */
const REAL_TOKEN = /^\d{8,10}:[A-Za-z0-9_-]{35}$/;

/**
 * Makes a local Bot API server: it speaks the real protocol to an unmodified client, refuses what
 * the platform refuses in the platform's words, and lets a test or a demonstration play the
 * people. It listens on this computer only and never calls out.
 * @throws RealTokenError for a token that looks real
 */
export function createRehearsalServer(options: RehearsalOptions): RehearsalServer {
  const { token } = options;
  refuseRealToken(token);
  const world = worldOf(options);
  const routes: ExtraRoute[] = [];
  const http = createHttpServer({ world, token, routes });
  const views = createViews(world);
  const people = new Map<number, Person>();
  const wantedPort = options.port ?? 0;

  return {
    get url() {
      return `http://127.0.0.1:${portOf(http)}`;
    },
    get port() {
      return portOf(http);
    },
    start: () => listen(http, wantedPort),
    stop: () => close(http, world),
    token,
    bot: world.bot,
    handle: (route) => void routes.push(route),
    person: (who) => {
      const person = people.get(who.id) ?? createPerson(world, who);
      people.set(who.id, person);
      return person;
    },
    group: (what) => createGroup(world, what),
    ...createWaiting(world, views),
    transcript: views.transcript,
    chats: views.chats,
    view: views.chat,
    file: (fileId) => world.files.get(fileId),
    calls: (method) => world.calls.list(method),
    commandsShown: (chatId, language) => world.profile.commandsShown(chatId, language),
    subscribe: (listener) => world.feed.subscribe(listener),
    faults: world.faults,
    rateLimit: world.rate,
    repeatUpdate: (updateId) => world.queue.repeat(updateId),
    jumpUpdateId: (to) => world.queue.jumpTo(to),
    holdUpdates: () => world.queue.hold(),
    pendingUpdates: () => world.queue.waiting().length,
  };
}

function refuseRealToken(token: string): void {
  if (!REAL_TOKEN.test(token)) return;
  throw new RealTokenError(
    "This token looks like one of a real bot. The rehearsal server takes only made-up tokens " +
      "such as 1:rehearsal-anything, so that a real one is never written down by mistake.",
  );
}

function worldOf(options: RehearsalOptions): World {
  const world: World = createWorld({
    token: options.token,
    botName: options.botName ?? "Rehearsal",
    botUsername: options.botUsername ?? "rehearsal_bot",
    time: { clock: options.clock ?? REAL_TIME.clock, wait: options.wait ?? REAL_TIME.wait },
    limits: { ...PLATFORM_LIMITS, ...options.limits },
    callFromWebhook: (body) => void carryOutFromWebhook(world, body),
  });
  return world;
}

function portOf(http: Server): number {
  const address: AddressInfo | string | null = http.address();
  if (address === null || typeof address === "string") {
    throw new Error("The rehearsal server has no address before start() and after stop().");
  }
  return address.port;
}

function listen(http: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    const fail = (cause: NodeJS.ErrnoException) =>
      reject(cause.code === "EADDRINUSE" ? new PortTakenError(port, { cause }) : cause);
    http.once("error", fail);
    http.listen(port, "127.0.0.1", () => {
      http.off("error", fail);
      resolve();
    });
  });
}

function close(http: Server, world: World): Promise<void> {
  return new Promise((resolve) => {
    world.polling.stop();
    world.webhook.clear();
    http.close(() => resolve());
    http.closeAllConnections();
  });
}
