// Covers also: src/rehearsal/world/profile.ts
import { beforeEach, describe, expect, it } from "vitest";
import { openStage, refusalOf, type Stage } from "../stage.ts";

const ANA = 7;
let stage: Stage;

beforeEach(async () => {
  stage = await openStage();
  stage.server.person({ id: ANA, name: "Ana", language: "de" }).start();
});

const command = (name: string, description = "does it") => ({ command: name, description });

describe("commands", () => {
  it("are kept by scope and language", async () => {
    const { api } = stage;
    await api.setMyCommands([command("help", "help")]);
    await api.setMyCommands([command("help", "Hilfe")], { language_code: "de" });
    await api.setMyCommands([command("take")], { scope: { type: "all_group_chats" } });
    expect(await api.getMyCommands()).toEqual([command("help", "help")]);
    expect(await api.getMyCommands({ language_code: "de" })).toEqual([command("help", "Hilfe")]);
    expect(await api.getMyCommands({ language_code: "fr" })).toEqual([]);
    await api.deleteMyCommands();
    expect(await api.getMyCommands()).toEqual([]);
    expect(await api.getMyCommands({ scope: { type: "all_group_chats" } })).toEqual([
      command("take"),
    ]);
  });

  // Order: Bot API reference text in @grammyjs/types, "Determining list of commands".
  it("of the narrowest scope set are shown, in the person's language first", async () => {
    const { api, server } = stage;
    const shown = () => server.commandsShown(ANA, "de").map(({ command: name }) => name);
    await api.setMyCommands([command("a")]);
    expect(shown()).toEqual(["a"]);
    await api.setMyCommands([command("b")], { language_code: "de" });
    expect(shown()).toEqual(["b"]);
    await api.setMyCommands([command("c")], { scope: { type: "all_private_chats" } });
    expect(shown()).toEqual(["c"]);
    await api.setMyCommands([command("d")], { scope: { type: "chat", chat_id: ANA } });
    expect(shown()).toEqual(["d"]);
    expect(server.commandsShown(99, "en")).toEqual([command("c")]);
  });

  // Limits: Bot API reference text in @grammyjs/types: at most 100 commands, names of 1-32
  // characters a-z 0-9 _, descriptions of 1-256. Wordings from memory.
  it("are refused when they are too many or badly named", async () => {
    const { api } = stage;
    const many = Array.from({ length: 101 }, (_, index) => command(`c${index}`));
    expect(await refusalOf(api.setMyCommands(many))).toBe("400 Bad Request: BOT_COMMANDS_TOO_MUCH");
    for (const name of ["Help", "a-b", "", "x".repeat(33)]) {
      expect(await refusalOf(api.setMyCommands([command(name)]))).toBe(
        "400 Bad Request: BOT_COMMAND_INVALID",
      );
    }
    for (const text of ["", "x".repeat(257)]) {
      expect(await refusalOf(api.setMyCommands([command("a", text)]))).toBe(
        "400 Bad Request: BOT_COMMAND_DESCRIPTION_INVALID",
      );
    }
  });

  // Wordings: Bot API server source, public repository tdlib/telegram-bot-api.
  it.each([
    ["setMyCommands?commands=x", "can't parse commands JSON object"],
    ["setMyCommands?commands={}", "expected an Array of BotCommand"],
    ["setMyCommands?commands=[1]", "can't parse BotCommand: expected an Object"],
    [
      'setMyCommands?commands=[{"command":"a"}]',
      "can't parse BotCommand: Can't find field \"description\"",
    ],
    ["getMyCommands?scope=[]", "can't parse BotCommandScope: BotCommandScope must be an Object"],
    [
      'getMyCommands?scope={"type":"moon"}',
      "can't parse BotCommandScope: Unsupported type specified",
    ],
    ['getMyCommands?scope={"type":"chat"}', "can't parse BotCommandScope: Empty chat_id specified"],
    ['getMyCommands?scope={"type":"chat","chat_id":55}', "chat not found"],
    [
      'getMyCommands?scope={"type":"chat_member","chat_id":7}',
      "can't parse BotCommandScope: Invalid user_id specified",
    ],
    ["setChatMenuButton?menu_button=[]", "can't parse menu button: MenuButton must be an Object"],
    [
      'setChatMenuButton?menu_button={"type":"moon"}',
      "can't parse menu button: MenuButton has unsupported type",
    ],
    // From memory.
    ["getMyCommands?language_code=german", "invalid language code specified"],
  ])("%s is refused", async (call, reason) => {
    expect(await stage.ask(encodeURI(call))).toBe(`400 Bad Request: ${reason}`);
  });
});

describe("what the bot says about itself", () => {
  it("has a text for all languages and one for each", async () => {
    const { api } = stage;
    expect(await api.getMyName()).toEqual({ name: "Rehearsal" });
    await api.setMyName("Turnrow");
    await api.setMyDescription("Finds why it will not start");
    await api.setMyDescription("Findet, warum sie nicht anspringt", { language_code: "de" });
    await api.setMyShortDescription("Will not start?");
    expect(await api.getMyName({ language_code: "de" })).toEqual({ name: "Turnrow" });
    expect(await api.getMyDescription({ language_code: "de" })).toEqual({
      description: "Findet, warum sie nicht anspringt",
    });
    expect(await api.getMyDescription({ language_code: "fr" })).toEqual({
      description: "Finds why it will not start",
    });
    expect(await api.getMyShortDescription()).toEqual({ short_description: "Will not start?" });
  });

  // Limits: Bot API reference text in @grammyjs/types: 64, 512 and 120 characters. Wording is ours.
  it("is limited in length", async () => {
    const { api } = stage;
    expect(await refusalOf(api.setMyName("x".repeat(65)))).toContain("name is too long");
    expect(await refusalOf(api.setMyDescription("x".repeat(513)))).toContain("is too long");
    expect(await refusalOf(api.setMyShortDescription("x".repeat(121)))).toContain("is too long");
  });

  it("has a menu button for all and one for a chat", async () => {
    const { api } = stage;
    const app = {
      type: "web_app",
      text: "Open",
      web_app: { url: "https://farm.example" },
    } as const;
    expect(await api.getChatMenuButton()).toEqual({ type: "commands" });
    await api.setChatMenuButton({ menu_button: app });
    await api.setChatMenuButton({ chat_id: ANA, menu_button: { type: "commands" } });
    expect(await api.getChatMenuButton()).toEqual(app);
    expect(await api.getChatMenuButton({ chat_id: ANA })).toEqual({ type: "commands" });
  });
});
