import type { UserFromGetMe } from "@grammyjs/types";
import type { Limits } from "../limits.ts";
import type { TimeSource } from "../time.ts";
import { CallLog } from "./calls.ts";
import { ChatBook } from "./chats.ts";
import { FaultScript } from "./faults.ts";
import { Feed } from "./feed.ts";
import { FileBook } from "./files.ts";
import { MessageBook } from "./messages.ts";
import { PhotoShelf } from "./photo-sizes.ts";
import { Polling } from "./polling.ts";
import { PressBook } from "./presses.ts";
import { BotProfile } from "./profile.ts";
import { RateLimiter } from "./rate-limit.ts";
import { UpdateQueue } from "./updates.ts";
import { Webhook } from "./webhook.ts";

/** Everything the server knows: one bot, its chats, and what is under way. */
export interface World {
  readonly bot: UserFromGetMe;
  readonly time: TimeSource;
  readonly limits: Limits;
  readonly feed: Feed;
  readonly chats: ChatBook;
  readonly messages: MessageBook;
  readonly files: FileBook;
  readonly photos: PhotoShelf;
  readonly presses: PressBook;
  readonly profile: BotProfile;
  readonly queue: UpdateQueue;
  readonly polling: Polling;
  readonly webhook: Webhook;
  readonly faults: FaultScript;
  readonly rate: RateLimiter;
  readonly calls: CallLog;
}

export interface WorldOptions {
  token: string;
  botName: string;
  botUsername: string;
  time: TimeSource;
  limits: Limits;
  /** Carries out a call that came as the body of a webhook reply. */
  callFromWebhook: (body: string) => void;
}

/** Makes an empty world. */
export function createWorld(options: WorldOptions): World {
  const { token, time, limits } = options;
  const { clock } = time;
  const feed = new Feed();
  const files = new FileBook(clock, token);
  const queue = new UpdateQueue({ clock, limits, feed });
  return {
    bot: botUser(options),
    time,
    limits,
    feed,
    chats: new ChatBook(),
    messages: new MessageBook(),
    files,
    photos: new PhotoShelf(files),
    presses: new PressBook(clock, limits.answerSeconds),
    profile: new BotProfile(),
    queue,
    polling: new Polling({ queue, time, limits }),
    webhook: new Webhook({ queue, time, call: options.callFromWebhook }),
    faults: new FaultScript(),
    rate: new RateLimiter(clock),
    calls: new CallLog(limits.recordedCalls),
  };
}

/** The number before the colon of a token is the bot's user id. */
function botUser({ token, botName, botUsername }: WorldOptions): UserFromGetMe {
  return {
    id: Number(/^\d+/.exec(token)?.[0] ?? 1),
    is_bot: true,
    first_name: botName,
    username: botUsername,
    can_join_groups: true,
    can_read_all_group_messages: false,
    supports_inline_queries: false,
    can_connect_to_business: false,
    has_main_web_app: false,
    has_topics_enabled: false,
    allows_users_to_create_topics: false,
    can_manage_bots: false,
    supports_join_request_queries: false,
  };
}
