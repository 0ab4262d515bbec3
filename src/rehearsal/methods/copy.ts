import type { Message } from "@grammyjs/types";
import { badRequest } from "../refusal.ts";
import { accessChat } from "../world/chat-access.ts";
import type { Body, MessageRecord } from "../world/messages.ts";
import { toPost } from "../world/messages.ts";
import { type Call, type Method, messageIdOf, requiredText } from "./call.ts";
import { destinationOf, send } from "./destination.ts";
import { captionBody } from "./text-arguments.ts";

/** Finds the message to pass on. Service and protected messages stay where they are. */
function original(call: Call, verb: "forward" | "copy"): MessageRecord {
  const { world } = call;
  const from = accessChat(world.chats, requiredText(call, "from_chat_id"), "read");
  const message = world.messages.find(from.chat.id, messageIdOf(call));
  if (message === undefined) throw badRequest(`message to ${verb} not found`);
  if (message.isService || message.head.has_protected_content === true) {
    throw badRequest(verb === "forward" ? "message can't be forwarded" : "message can't be copied");
  }
  return message;
}

/** A forwarded message names who wrote it first, however often it is passed on. */
function originOf({ head }: MessageRecord): NonNullable<Message["forward_origin"]> {
  return head.forward_origin ?? { type: "user", sender_user: head.from, date: head.date };
}

function forwardMessage(call: Call): unknown {
  const message = original(call, "forward");
  const to = destinationOf(call);
  const draft = { ...to.draft, forwardOrigin: originOf(message) };
  return toPost(send(call, { ...to, draft }, message.body));
}

function copyMessage(call: Call): unknown {
  const message = original(call, "copy");
  const caption = call.params.has("caption") ? captionBody(call) : undefined;
  const sent = send(call, destinationOf(call), withCaption(message.body, caption));
  return { message_id: sent.head.message_id };
}

function withCaption(body: Body, caption: Body | undefined): Body {
  if (caption === undefined || body.text !== undefined) return body;
  const { caption: _old, caption_entities: _marks, ...rest } = body;
  return { ...rest, ...caption };
}

/** The methods that pass messages on. */
export const COPY_METHODS: Readonly<Record<string, Method>> = { forwardMessage, copyMessage };
