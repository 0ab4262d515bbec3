import { describe, expect, it } from "vitest";
import { decodeUpdate } from "../../src/chat/decode.ts";
import { samplePicture } from "../../src/rehearsal/people/sample-picture.ts";
import { codec, openChat } from "./chat-stage.ts";

/** What the bot makes of what people do, all of it over the wire. */
async function told(act: (stage: Awaited<ReturnType<typeof openChat>>) => void) {
  const stage = await openChat();
  await stage.run();
  act(stage);
  await stage.server.settled();
  return stage.got;
}
const ann = { id: 11, name: "Ann", lastName: "Field", language: "de-AT" };

describe("what people send", () => {
  it("comes with who, where and when", async () => {
    const before = Date.now();
    const [got] = await told(({ server }) => void server.person(ann).start());
    expect(got).toMatchObject({
      chat: "11",
      direct: true,
      from: { id: "11", name: "Ann Field", language: "de" },
      what: { kind: "command", name: "start", argument: "" },
    });
    expect(got?.update).toMatch(/^1\.\d+$/);
    expect(Math.abs((got?.sentAt ?? 0) - before)).toBeLessThan(5000);
  });

  it("is marked where it is somebody else's, passed on", async () => {
    const got = await told(({ server }) => {
      const person = server.person(ann);
      person.start();
      const { message_id: id } = person.say("it clicks");
      person.forward(id);
    });
    expect(got[1]?.what).toEqual({ kind: "text", text: "it clicks" });
    expect(got[2]?.what).toEqual({ kind: "text", text: "it clicks", forwarded: true });
  });

  it("is read by its kind", async () => {
    const got = await told(({ server }) => {
      const person = server.person(ann);
      person.start("token_-1");
      const first = person.say("it clicks");
      person.say("once", { replyTo: first.message_id });
      person.say("/New Lights  out");
      person.say("/help@rehearsal_bot");
      person.say("/help@another_bot");
      person.edit(first.message_id, "it clicks once");
      person.sendPhoto(samplePicture(), { caption: "the battery" });
      person.sendVoice(Buffer.from("ogg"));
      person.sendVideo(Buffer.from("mp4"));
      person.sendDocument(Buffer.from("pdf"), { name: "plate.pdf", mimeType: "application/pdf" });
      person.sendSticker("🚜");
      person.sendLocation({ latitude: 48.1, longitude: 11.5 });
      person.sendLocation({ latitude: 48.2, longitude: 11.6, livePeriod: 900 });
      person.sendVenue({ latitude: 48.3, longitude: 11.7, title: "Top field", address: "" });
      person.sendOwnContact("+100");
      person.sendContact({ phone: "+200", firstName: "Bo" });
    });
    const file = (kind: string) => ({ kind: "file", file: { kind } });
    expect(got.map(({ what }) => what)).toMatchObject([
      { kind: "command", name: "start", argument: "token_-1" },
      { kind: "text", text: "it clicks" },
      { kind: "text", text: "once", replyTo: expect.any(String) },
      { kind: "command", name: "new", argument: "Lights  out" },
      { kind: "command", name: "help", argument: "" },
      { kind: "edited", text: "it clicks once" },
      { ...file("photo"), caption: "the battery" },
      file("voice"),
      file("video"),
      { kind: "file", file: { kind: "document", mime: "application/pdf", bytes: 3 } },
      file("sticker"),
      { kind: "location", latitude: 48.1, longitude: 11.5 },
      { kind: "location", latitude: 48.2, longitude: 11.6 },
      { kind: "location", latitude: 48.3, longitude: 11.7, title: "Top field" },
      { kind: "contact", phone: "+100", own: true, name: "Ann" },
      { kind: "contact", phone: "+200", own: false, name: "Bo" },
    ]);
  });

  it("takes the largest of a photo's sizes", async () => {
    const stage = await openChat();
    await stage.run();
    const person = stage.server.person(ann);
    person.start();
    const post = person.sendPhoto(samplePicture({ width: 1280, height: 960 }));
    await stage.server.settled();
    const largest = post.photo?.reduce((a, b) => (b.width > a.width ? b : a));
    expect(stage.got.at(-1)?.what).toMatchObject({ file: { id: largest?.file_id } });
  });

  it("keeps an album's photos together by its name", async () => {
    const got = await told(({ server }) => {
      const person = server.person(ann);
      person.start();
      const photo = samplePicture();
      person.sendAlbum([{ photo }, { photo }], { caption: "both sides" });
    });
    const files = got.flatMap(({ what }) => (what.kind === "file" ? [what] : []));
    expect(files).toHaveLength(2);
    expect(files[0]?.album).toBe(files[1]?.album);
    expect(files.map(({ caption }) => caption)).toEqual(["both sides", undefined]);
  });

  it("hears whether a person can be reached", async () => {
    const got = await told(({ server }) => {
      const person = server.person(ann);
      person.start();
      person.block();
      person.unblock();
    });
    expect(got.slice(1).map(({ what }) => what)).toEqual([
      { kind: "reachable", reachable: false },
      { kind: "reachable", reachable: true },
    ]);
  });
});

describe("what happens in a group", () => {
  it("comes with the group and its topic", async () => {
    const got = await told(({ server }) => {
      const person = server.person(ann);
      const group = server.group({ title: "Counter", members: [person], type: "forum" });
      group.addBot(person);
      group.promoteBot(person);
      const topic = group.openTopic("Slips", person);
      group.as(person, { topic }).say("in a topic");
      group.as(person).say("in general");
    });
    const texts = got.filter(({ what }) => what.kind === "text");
    expect(texts[0]).toMatchObject({ direct: false, topic: expect.any(Number) });
    expect(texts[0]?.chat).toMatch(/^-/);
    expect(texts[1]).not.toHaveProperty("topic");
    expect(got[0]?.what).toEqual({ kind: "reachable", reachable: true });
    // Notes of the platform itself, such as a new topic, are nothing anybody said.
    expect(got.filter(({ what }) => what.kind === "other")).toEqual([]);
  });

  it("tells that it moved to another id", async () => {
    let to = 0;
    const got = await told(({ server }) => {
      const person = server.person(ann);
      const group = server.group({ title: "Counter", members: [person] });
      group.addBot(person);
      to = group.migrate(person).id;
    });
    expect(got.filter(({ what }) => what.kind === "moved").map(({ what }) => what)).toEqual([
      { kind: "moved", to: String(to) },
    ]);
  });
});

describe("a pressed button", () => {
  const meant = { case: "A1", revision: 3, act: "answer", value: "one-click" };
  const effect = {
    do: "say",
    to: { chat: "11" },
    language: "en",
    message: {
      lines: [{ say: { raw: "?" } }],
      buttons: [[{ label: { raw: "One click" }, press: meant }]],
    },
  } as const;

  it("means what it was made for, pressed twice and on a vanished message as well", async () => {
    const stage = await openChat();
    await stage.run();
    const person = stage.server.person(ann);
    person.start();
    await stage.carrier.carry(effect, { earlier: null, part: 0 });
    person.press("One click");
    person.pressAgain();
    person.press("One click", { isInaccessible: true });
    await stage.server.settled();
    const presses = stage.got.filter(({ what }) => what.kind === "press");
    expect(presses).toHaveLength(3);
    for (const press of presses) {
      expect(press).toMatchObject({
        chat: "11",
        direct: true,
        what: { kind: "press", press: meant, message: expect.any(String) },
      });
    }
    expect(new Set(presses.map(({ update }) => update)).size).toBe(3);
  });

  it("that was forged means nothing", async () => {
    const stage = await openChat();
    await stage.run();
    const person = stage.server.person(ann);
    person.start();
    await stage.carrier.carry(effect, { earlier: null, part: 0 });
    person.forge("AAAAAAAA3.A1.answer.spark");
    person.forge(`${codec.encode(meant)}x`);
    await stage.server.settled();
    const presses = stage.got.flatMap(({ what }) => (what.kind === "press" ? [what.press] : []));
    expect(presses).toEqual([null, null]);
  });
});

describe("what nobody in particular said", () => {
  const parts = { bot: { id: 1, username: "b" }, codec, now: () => 0 };
  const chat = { id: -5, type: "supergroup", title: "G" } as const;
  const robot = { id: 1087968824, is_bot: true, first_name: "Group" };
  const human = { id: 4, is_bot: false, first_name: "Ann" };

  it("is nothing to react to", () => {
    const message = { message_id: 1, date: 1, chat, text: "hi" };
    expect(decodeUpdate({ update_id: 1 }, parts)).toBeNull();
    expect(decodeUpdate({ update_id: 1, message: { ...message, from: robot } }, parts)).toBeNull();
    const forwarded = { ...message, from: human, is_automatic_forward: true } as const;
    expect(decodeUpdate({ update_id: 1, message: forwarded }, parts)).toBeNull();
  });

  it("unless it is something odd that a person sent", () => {
    const dice = { emoji: "🎲", value: 3 };
    const message = { message_id: 1, date: 1, chat, from: human, dice };
    expect(decodeUpdate({ update_id: 1, message }, parts)?.what).toEqual({
      kind: "other",
      name: "dice",
    });
  });
});
