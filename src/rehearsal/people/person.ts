import type { User } from "@grammyjs/types";
import { type ChatRecord, newChatRecord } from "../world/chats.ts";
import type { Post } from "../world/messages.ts";
import type { World } from "../world/world.ts";
import { changeStanding } from "./membership.ts";
import { createParticipant, type Participant } from "./participant.ts";
import { RehearsalError, speak, spokenText } from "./speaker.ts";

/** Who somebody is. */
export interface PersonOptions {
  /** User id, 1 or more, different from the bot's; also the id of the private chat. */
  id: number;
  name: string;
  lastName?: string;
  username?: string;
  /** IETF language tag of the app; the bot gets none when missing. */
  language?: string;
}

/** A person with their private chat with the bot. */
export interface Person extends Participant {
  readonly user: User;
  /**
   * Presses Start, or opens a link with a payload. Unblocks the bot if need be.
   * @param payload up to 64 of A-Z a-z 0-9 _ - (platform documentation, "Deep linking")
   */
  start(payload?: string): Post;
  block(): void;
  unblock(): void;
  /** Deletes the account: the bot can no longer write. */
  deleteAccount(): void;
}

/** Makes a person; they have not pressed Start yet. */
export function createPerson(world: World, options: PersonOptions): Person {
  const { id, name, lastName, username, language } = options;
  if (!(Number.isInteger(id) && id > 0) || id === world.bot.id) {
    throw new RehearsalError(
      `A person's id is a whole number above 0 and not the bot's; got ${id}.`,
    );
  }
  const names = {
    first_name: name,
    ...(lastName === undefined ? {} : { last_name: lastName }),
    ...(username === undefined ? {} : { username }),
  };
  const user: User = {
    id,
    is_bot: false,
    ...names,
    ...(language === undefined ? {} : { language_code: language }),
  };
  const record = world.chats.add(newChatRecord({ id, type: "private", ...names }, "absent"));
  record.members.set(id, user);
  world.feed.emit({ kind: "chat", chatId: id });
  return { ...createParticipant({ world, record, user }), user, ...privately(world, record, user) };
}

function privately(
  world: World,
  record: ChatRecord,
  user: User,
): Pick<Person, "start" | "block" | "unblock" | "deleteAccount"> {
  const unblock = () => {
    if (record.bot === "kicked") changeStanding(world, record, { by: user, to: "member" });
  };
  return {
    start: (payload) => {
      if (payload !== undefined && !/^[A-Za-z0-9_-]{1,64}$/.test(payload)) {
        throw new RehearsalError(
          `A start payload is 1 to 64 of A-Z a-z 0-9 _ -; got "${payload}".`,
        );
      }
      unblock();
      const text = payload === undefined ? "/start" : `/start ${payload}`;
      return speak({ world, record, user }, spokenText(text));
    },
    block: () => {
      if (record.bot === "absent")
        throw new RehearsalError(`${user.first_name} never pressed Start.`);
      if (record.bot !== "kicked") changeStanding(world, record, { by: user, to: "kicked" });
    },
    unblock,
    deleteAccount: () => {
      record.isDeactivated = true;
      world.feed.emit({ kind: "chat", chatId: record.chat.id });
    },
  };
}
