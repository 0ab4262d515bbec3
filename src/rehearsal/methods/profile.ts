import type { BotCommand, MenuButton } from "@grammyjs/types";
import { badRequest } from "../refusal.ts";
import { isRecord } from "../wire/params.ts";
import { accessChat } from "../world/chat-access.ts";
import type { ProfileText } from "../world/profile.ts";
import { type Call, type Method, structured } from "./call.ts";

/** Longest texts about the bot, in characters (Bot API reference). */
const LONGEST: Readonly<Record<ProfileText, number>> = {
  name: 64,
  description: 512,
  short_description: 120,
};

/** Longest description of a command (Bot API reference: 1-256 characters). */
const LONGEST_COMMAND_DESCRIPTION = 256;

const WIDE_SCOPES: readonly string[] = [
  "default",
  "all_private_chats",
  "all_group_chats",
  "all_chat_administrators",
];
const CHAT_SCOPES: readonly string[] = ["chat", "chat_administrators", "chat_member"];

/**
 * Reads a BotCommandScope into one key, such as "default" or "chat 42".
 * @throws ApiRefusal 400, also when the chat it names is unknown
 */
function scopeOf(call: Call): string {
  const value = structured(call, "scope", "BotCommandScope JSON object");
  if (value === undefined) return "default";
  const unreadable = (reason: string) => badRequest(`can't parse BotCommandScope: ${reason}`);
  if (!isRecord(value)) throw unreadable("BotCommandScope must be an Object");
  const type = String(value["type"] ?? "");
  if (WIDE_SCOPES.includes(type)) return type;
  if (!CHAT_SCOPES.includes(type)) throw unreadable("Unsupported type specified");
  const chatId = String(value["chat_id"] ?? "");
  if (chatId === "") throw unreadable("Empty chat_id specified");
  const userId = Number(value["user_id"] ?? 0);
  if (type === "chat_member" && !(userId > 0)) throw unreadable("Invalid user_id specified");
  const { chat } = accessChat(call.world.chats, chatId, "read");
  return type === "chat_member" ? `${type} ${chat.id} ${userId}` : `${type} ${chat.id}`;
}

/** "" or a two-letter code (ISO 639-1). */
function languageOf({ params }: Call): string {
  const language = params.text("language_code");
  if (language !== "" && !/^[a-z]{2}$/.test(language)) {
    throw badRequest("invalid language code specified");
  }
  return language;
}

function commandOf(value: unknown): BotCommand {
  const unreadable = (reason: string) => badRequest(`can't parse BotCommand: ${reason}`);
  if (!isRecord(value)) throw unreadable("expected an Object");
  const { command, description } = { command: value["command"], description: value["description"] };
  if (typeof command !== "string") throw unreadable(`Can't find field "command"`);
  if (typeof description !== "string") throw unreadable(`Can't find field "description"`);
  if (!/^[a-z0-9_]{1,32}$/.test(command)) throw badRequest("BOT_COMMAND_INVALID");
  if (description === "" || description.length > LONGEST_COMMAND_DESCRIPTION) {
    throw badRequest("BOT_COMMAND_DESCRIPTION_INVALID");
  }
  return { command, description };
}

function setMyCommands(call: Call): unknown {
  const given = structured(call, "commands", "commands JSON object") ?? [];
  if (!Array.isArray(given)) throw badRequest("expected an Array of BotCommand");
  const commands = given.map(commandOf);
  if (commands.length > call.world.limits.commandsPerList)
    throw badRequest("BOT_COMMANDS_TOO_MUCH");
  call.world.profile.setCommands(scopeOf(call), languageOf(call), commands);
  return true;
}

function deleteMyCommands(call: Call): unknown {
  call.world.profile.setCommands(scopeOf(call), languageOf(call), []);
  return true;
}

function setText(kind: ProfileText): Method {
  return (call) => {
    const text = call.params.text(kind);
    if (text.length > LONGEST[kind]) throw badRequest(`the bot's ${kind} is too long`);
    call.world.profile.setText(kind, languageOf(call), text);
    return true;
  };
}

function getText(kind: ProfileText): Method {
  return (call) => {
    const text = call.world.profile.text(kind, languageOf(call));
    const isUnnamed = kind === "name" && text === "";
    return { [kind]: isUnnamed ? call.world.bot.first_name : text };
  };
}

/** The chat of a menu button; 0 for all private chats. */
function buttonChat({ world, params }: Call): number {
  return params.has("chat_id")
    ? accessChat(world.chats, params.text("chat_id"), "read").chat.id
    : 0;
}

function menuButtonOf(call: Call): MenuButton {
  const value = structured(call, "menu_button", "menu button JSON object");
  if (value === undefined) return { type: "default" };
  const unreadable = (reason: string) => badRequest(`can't parse menu button: ${reason}`);
  if (!isRecord(value)) throw unreadable("MenuButton must be an Object");
  const { type, text, app } = { type: value["type"], text: value["text"], app: value["web_app"] };
  if (type === "default" || type === "commands") return { type };
  if (type !== "web_app") throw unreadable("MenuButton has unsupported type");
  const url = isRecord(app) ? app["url"] : undefined;
  if (typeof text !== "string" || typeof url !== "string")
    throw unreadable(`Can't find field "text"`);
  return { type, text, web_app: { url } };
}

/** The methods by which a bot describes itself. */
export const PROFILE_METHODS: Readonly<Record<string, Method>> = {
  setMyCommands,
  deleteMyCommands,
  getMyCommands: (call) => call.world.profile.commands(scopeOf(call), languageOf(call)),
  setMyName: setText("name"),
  getMyName: getText("name"),
  setMyDescription: setText("description"),
  getMyDescription: getText("description"),
  setMyShortDescription: setText("short_description"),
  getMyShortDescription: getText("short_description"),
  setChatMenuButton: (call) => {
    call.world.profile.setMenuButton(buttonChat(call), menuButtonOf(call));
    return true;
  },
  getChatMenuButton: (call) => call.world.profile.menuButton(buttonChat(call)),
};
