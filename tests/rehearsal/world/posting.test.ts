// Covers also: src/rehearsal/world/messages.ts
import { beforeEach, describe, expect, it } from "vitest";
import type { Group } from "../../../src/rehearsal/people/group.ts";
import type { Person } from "../../../src/rehearsal/people/person.ts";
import { openStage, type Stage } from "../stage.ts";

let stage: Stage;
let ana: Person;
let group: Group;

beforeEach(async () => {
  stage = await openStage();
  ana = stage.server.person({ id: 7, name: "Ana" });
  group = stage.server.group({ title: "Yard", members: [ana] });
  group.addBot(ana);
  await stage.api.getUpdates({ offset: -1 });
});

/** The texts of the group's messages the bot heard of. */
const heard = async () =>
  (await stage.api.getUpdates()).flatMap(({ message }) =>
    message?.text === undefined ? [] : [message.text],
  );

// Platform documentation, "Privacy mode".
describe("privacy mode in groups", () => {
  it("hides talk among people", async () => {
    group.as(ana).say("shall we have lunch");
    group.as(ana).say("@rehearsal_bot hello");
    expect(await heard()).toEqual([]);
  });

  it("shows commands that name the bot, in any case, and not those for others", async () => {
    group.as(ana).say("/take@Rehearsal_Bot 12");
    group.as(ana).say("/take@other_bot 13");
    expect(await heard()).toEqual(["/take@Rehearsal_Bot 12"]);
  });

  it("shows other commands only when the bot wrote last", async () => {
    group.as(ana).say("/list");
    await stage.api.sendMessage(group.id, "a case has come in");
    group.as(ana).say("/take");
    group.as(ana).say("/list");
    expect(await heard()).toEqual(["/take"]);
  });

  it("shows replies to the bot", async () => {
    const { message_id } = await stage.api.sendMessage(group.id, "who goes?");
    group.as(ana).say("I do", { replyTo: message_id });
    expect(await heard()).toEqual(["I do"]);
  });

  it("shows everything to an administrator", async () => {
    group.promoteBot(ana);
    group.as(ana).say("shall we have lunch");
    expect(await heard()).toEqual(["shall we have lunch"]);
  });

  it("ends when the bot is thrown out", async () => {
    group.promoteBot(ana);
    group.kickBot(ana);
    group.as(ana).say("gone at last");
    expect(await heard()).toEqual([]);
  });
});

it("message ids are counted across private chats and plain groups, and apart in a supergroup", async () => {
  const { server, api } = stage;
  const ben = server.person({ id: 8, name: "Ben" });
  const before = ana.start().message_id;
  const after = ben.start().message_id;
  expect(after).toBe(before + 1);
  expect((await api.sendMessage(group.id, "x")).message_id).toBe(before + 2);
  const large = server.group({ title: "Large", members: [ana], type: "supergroup" });
  expect(large.as(ana).say("first").message_id).toBe(2);
});

it("a quoted message does not quote another", async () => {
  const { api } = stage;
  ana.start();
  const second = ana.say("b", { replyTo: ana.say("a").message_id });
  const third = await api.sendMessage(7, "c", {
    reply_parameters: { message_id: second.message_id },
  });
  expect(third.reply_to_message).toMatchObject({ text: "b" });
  expect(Object.keys(third.reply_to_message ?? {})).not.toContain("reply_to_message");
});
