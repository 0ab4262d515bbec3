// Covers also: src/rehearsal/world/chats.ts
import { beforeEach, describe, expect, it } from "vitest";
import type { Person } from "../../../src/rehearsal/people/person.ts";
import { openStage, refusalOf, type Stage } from "../stage.ts";

let stage: Stage;
let ana: Person;

beforeEach(async () => {
  stage = await openStage();
  ana = stage.server.person({ id: 7, name: "Ana" });
});

const write = (chatId: number) => refusalOf(stage.api.sendMessage(chatId, "x"));

// Wordings: Bot API server source, public repository tdlib/telegram-bot-api; that a bot cannot
// write first, and "can't initiate conversation", from memory.
describe("where the bot may write", () => {
  it("not to a stranger, nor to a person who never pressed Start", async () => {
    expect(await write(404)).toBe("400 Bad Request: chat not found");
    expect(await write(7)).toBe("400 Bad Request: chat not found");
    ana.start();
    await stage.api.sendMessage(7, "now");
  });

  it("not first to a person it knows from a group only", async () => {
    const ben = stage.server.person({ id: 8, name: "Ben" });
    const group = stage.server.group({ title: "Yard", members: [ana, ben] });
    expect(await write(8)).toBe("400 Bad Request: chat not found");
    group.addBot(ana);
    expect(await write(8)).toBe("403 Forbidden: bot can't initiate conversation with a user");
    ben.say("hello");
    await stage.api.sendMessage(8, "now");
  });

  it("not to a person who blocked it, until they take it back", async () => {
    ana.start();
    ana.block();
    expect(await write(7)).toBe("403 Forbidden: bot was blocked by the user");
    expect(await refusalOf(stage.api.sendChatAction(7, "typing"))).toContain("blocked by the user");
    ana.unblock();
    await stage.api.sendMessage(7, "now");
  });

  it("not to a deleted account", async () => {
    ana.start();
    ana.deleteAccount();
    expect(await write(7)).toBe("403 Forbidden: user is deactivated");
  });

  it("not in a group it is not in, was thrown out of, or that has moved", async () => {
    const group = stage.server.group({ title: "Yard", members: [ana] });
    expect(await write(group.id)).toBe("400 Bad Request: chat not found");
    group.addBot(ana);
    await stage.api.sendMessage(group.id, "hello");
    group.kickBot(ana);
    expect(await write(group.id)).toBe("403 Forbidden: bot was kicked from the group chat");
    group.addBot(ana);
    const moved = group.migrate(ana);
    const error = await stage.api.sendMessage(group.id, "x").catch((reason: unknown) => reason);
    expect(error).toMatchObject({
      error_code: 400,
      description: "Bad Request: group chat was upgraded to a supergroup chat",
      parameters: { migrate_to_chat_id: moved.id },
    });
    await stage.api.sendMessage(moved.id, "here");
    moved.kickBot(ana);
    expect(await write(moved.id)).toBe("403 Forbidden: bot was kicked from the supergroup chat");
  });
});

it("group ids count down from -1, those of supergroups from -1000000000001", () => {
  const { server } = stage;
  const plain = server.group({ title: "A", members: [ana] });
  const large = server.group({ title: "B", members: [ana], type: "supergroup" });
  expect([plain.id, large.id]).toEqual([-1, -1_000_000_000_002]);
});
