import { beforeEach, describe, expect, it } from "vitest";
import type { Person } from "../../../src/rehearsal/people/person.ts";
import { openStage, type Stage } from "../stage.ts";

let stage: Stage;
let ana: Person;
let ben: Person;

beforeEach(async () => {
  stage = await openStage();
  ana = stage.server.person({ id: 7, name: "Ana" });
  ben = stage.server.person({ id: 8, name: "Ben" });
});

/** What the bot was told, as the field that says what happened. */
async function told() {
  const updates = await stage.api.getUpdates({ allowed_updates: [] });
  return updates.map(({ message, my_chat_member: change }) =>
    change === undefined
      ? (message?.text ?? Object.keys(message ?? {}).at(-1))
      : `${change.old_chat_member.status} → ${change.new_chat_member.status}`,
  );
}

describe("a group", () => {
  it("tells the bot that it was added, raised, lowered and thrown out", async () => {
    const group = stage.server.group({ title: "Yard", members: [ana] });
    group.addBot(ana);
    group.promoteBot(ana);
    group.demoteBot(ana);
    group.kickBot(ana);
    expect(await told()).toEqual([
      "left → member",
      "new_chat_members",
      "member → administrator",
      "administrator → member",
      "left_chat_member",
      "member → kicked",
    ]);
  });

  // Platform documentation, "Deep linking": startgroup arrives as /start@bot payload.
  it("gets the payload of the link by which the bot was added", async () => {
    stage.server.group({ title: "Yard", members: [ana] }).addBot(ana, "shop-1");
    expect(await told()).toContain("/start@rehearsal_bot shop-1");
  });

  it("tells of members who come and go, and only they can write", async () => {
    const group = stage.server.group({ title: "Yard", members: [ana] });
    group.addBot(ana);
    expect(() => group.as(ben).say("x")).toThrow('Ben is not a member of "Yard".');
    group.addMember(ben, ana);
    group.as(ben).say("/here@rehearsal_bot");
    group.leave(ben);
    expect((await told()).slice(2)).toEqual([
      "new_chat_members",
      "/here@rehearsal_bot",
      "left_chat_member",
    ]);
    expect(() => group.as(ben).say("x")).toThrow("is not a member");
  });

  it("needs somebody in it", () => {
    expect(() => stage.server.group({ title: "Nobody", members: [] })).toThrow(
      'The group "Nobody" needs a member.',
    );
  });

  it("moves to a new id as a supergroup; both chats say so", async () => {
    const group = stage.server.group({ title: "Yard", members: [ana, ben] });
    group.addBot(ana);
    const moved = group.migrate(ana);
    expect(moved.id).toBeLessThan(-1_000_000_000_000);
    const updates = await stage.api.getUpdates();
    expect(updates.slice(-2).map(({ message }) => message)).toMatchObject([
      { chat: { id: group.id, type: "group" }, migrate_to_chat_id: moved.id },
      { chat: { id: moved.id, type: "supergroup" }, migrate_from_chat_id: group.id },
    ]);
    expect(() => group.as(ana).say("x")).toThrow(`The group has moved to chat ${moved.id}`);
    moved.as(ben).say("here");
    expect(() => moved.migrate(ana)).toThrow('"Yard" is a supergroup already.');
  });
});

it("a press in a group is the person's, also when it is repeated", async () => {
  const { api, server } = stage;
  const group = server.group({ title: "Yard", members: [ana, ben] });
  group.addBot(ana);
  const reply_markup = { inline_keyboard: [[{ text: "Take", callback_data: "t" }]] };
  await api.sendMessage(group.id, "who?", { reply_markup });
  await api.getUpdates({ offset: -1 });
  group.as(ben).press("Take");
  group.as(ana).press("Take");
  group.as(ben).pressAgain();
  const updates = await api.getUpdates();
  expect(
    updates.flatMap(({ callback_query: query }) => (query === undefined ? [] : [query.from.id])),
  ).toEqual([8, 7, 8]);
});

describe("a forum", () => {
  it("has topics that people open and write into", async () => {
    const forum = stage.server.group({ title: "Dispatch", members: [ana], type: "forum" });
    forum.addBot(ana);
    forum.promoteBot(ana);
    const topic = forum.openTopic("North", ana);
    const said = forum.as(ana, { topic }).say("hello");
    expect(said).toMatchObject({ message_thread_id: topic, is_topic_message: true });
    expect((await told()).slice(-2)).toEqual(["forum_topic_created", "hello"]);
    expect(stage.server.view(forum.id).topics).toEqual([
      { id: topic, name: "North", isOpen: true },
    ]);
    expect(() => forum.as(ana, { topic: 99 })).toThrow('There is no topic 99 in "Dispatch".');
  });

  it("is not what a plain group is", () => {
    const group = stage.server.group({ title: "Yard", members: [ana] });
    expect(() => group.openTopic("x", ana)).toThrow('"Yard" is no forum');
  });
});
