import type { BotCommand, MenuButton } from "@grammyjs/types";

/** What a bot says about itself; each can be set per language. */
export type ProfileText = "name" | "description" | "short_description";

/** The bot's own settings: commands, texts, menu buttons. */
export class BotProfile {
  readonly #commands = new Map<string, BotCommand[]>();
  readonly #texts = new Map<string, string>();
  readonly #buttons = new Map<number, MenuButton>();

  /** @param scope the scope as one key, @param language "" for all */
  setCommands(scope: string, language: string, commands: BotCommand[]): void {
    if (commands.length === 0) this.#commands.delete(`${scope} ${language}`);
    else this.#commands.set(`${scope} ${language}`, commands);
  }

  /** Exactly the list of that scope and language; [] when none was set. */
  commands(scope: string, language: string): BotCommand[] {
    return this.#commands.get(`${scope} ${language}`) ?? [];
  }

  /**
   * The list a person sees in a private chat: the first one set of chat, all private chats and
   * default, each in the person's language before all languages (Bot API reference,
   * "Determining list of commands").
   */
  commandsShown(chatId: number, language: string): BotCommand[] {
    for (const scope of [`chat ${chatId}`, "all_private_chats", "default"]) {
      for (const code of [language, ""]) {
        const commands = this.commands(scope, code);
        if (commands.length > 0) return commands;
      }
    }
    return [];
  }

  setText(kind: ProfileText, language: string, text: string): void {
    this.#texts.set(`${kind} ${language}`, text);
  }

  /** The text in that language, else the one for all languages, else "". */
  text(kind: ProfileText, language: string): string {
    return this.#texts.get(`${kind} ${language}`) || (this.#texts.get(`${kind} `) ?? "");
  }

  /** @param chatId 0 for all private chats */
  setMenuButton(chatId: number, button: MenuButton): void {
    this.#buttons.set(chatId, button);
  }

  menuButton(chatId: number): MenuButton {
    return this.#buttons.get(chatId) ?? this.#buttons.get(0) ?? { type: "commands" };
  }
}
