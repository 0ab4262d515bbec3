import type { Method } from "./call.ts";
import { CHAT_METHODS } from "./chat.ts";
import { COPY_METHODS } from "./copy.ts";
import { EDIT_METHODS } from "./edit.ts";
import { PROFILE_METHODS } from "./profile.ts";
import { REMOVE_METHODS } from "./remove.ts";
import { SEND_METHODS } from "./send.ts";
import { TOPIC_METHODS } from "./topics.ts";
import { UPDATE_METHODS } from "./updates.ts";

/** A method with its name as the reference spells it. */
export interface NamedMethod {
  name: string;
  run: Method;
}

const BY_NAME: ReadonlyMap<string, NamedMethod> = new Map(
  [
    UPDATE_METHODS,
    SEND_METHODS,
    EDIT_METHODS,
    REMOVE_METHODS,
    COPY_METHODS,
    CHAT_METHODS,
    TOPIC_METHODS,
    PROFILE_METHODS,
  ]
    .flatMap((group) => Object.entries(group))
    .map(([name, run]) => [name.toLowerCase(), { name, run }]),
);

/** The method of that name, in any case; undefined when this server has none. */
export function findMethod(name: string): NamedMethod | undefined {
  return BY_NAME.get(name.toLowerCase());
}
