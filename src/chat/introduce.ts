import type { Api } from "grammy";
import type { BotCommand, BotCommandScope, LanguageCode } from "grammy/types";
import type { Log } from "./log.ts";

/** What the bot says of itself before anybody has written, in one language. */
export interface IntroductionTexts {
  /** Two letters; null: for everybody whose language has none of its own. */
  readonly language: LanguageCode | null;
  /** Shown in an empty chat, at most 512 characters. */
  readonly description: string;
  /** Shown on the bot's page, at most 120 characters. */
  readonly shortDescription: string;
  /** The menu in private chats. A menu is display only: anybody may type any command. */
  readonly commands: readonly BotCommand[];
}

export interface Introduction {
  readonly texts: readonly IntroductionTexts[];
  /** Menus of people with a role, in their language. */
  readonly people: readonly { readonly chat: string; readonly commands: readonly BotCommand[] }[];
}

/** Sets it all; what fails is logged and left, because nothing depends on it. */
export async function introduce(api: Api, { texts, people }: Introduction, log: Log) {
  const attempt = async (set: () => Promise<unknown>) => {
    try {
      await set();
    } catch (error) {
      log("introduction-failed", { error });
    }
  };
  for (const { language, description, shortDescription, commands } of texts) {
    const where = language === null ? {} : { language_code: language };
    const scope: BotCommandScope = { type: "all_private_chats" };
    await attempt(() => api.setMyCommands(commands, { scope, ...where }));
    await attempt(() => api.setMyDescription(description, where));
    await attempt(() => api.setMyShortDescription(shortDescription, where));
  }
  for (const { chat, commands } of people) {
    const scope: BotCommandScope = { type: "chat", chat_id: Number(chat) };
    await attempt(() => api.setMyCommands(commands, { scope }));
  }
}
