import { describe, expect, it } from "vitest";
import type { Carried, CarryContext, Outgoing } from "../../src/cases/ports.ts";
import type { Address, Message } from "../../src/domain/effects.ts";
import { samplePicture } from "../../src/rehearsal/people/sample-picture.ts";
import { openChat, plainWording } from "./chat-stage.ts";

const fresh: CarryContext = { earlier: null, part: 0 };
const lines = (text: string): Message => ({ lines: [{ say: { raw: text } }] });
const to: Address = { chat: "11" };
const say = (message: Message, chat = to): Outgoing => ({
  do: "say",
  to: chat,
  language: "en",
  message,
});
const revise = (message: Message, chat = to): Outgoing => ({
  do: "revise",
  to: chat,
  language: "en",
  message,
  slot: "s",
});
const press = { revision: 1, act: "go" };

async function stage() {
  const opened = await openChat();
  const { server, carrier } = opened;
  const ann = server.person({ id: 11, name: "Ann" });
  ann.start();
  const sentTo = (carried: Carried) => {
    if (carried.outcome !== "done" || carried.sent === null) throw new Error("nothing was sent");
    return carried.sent;
  };
  const seen = (chat = 11) => server.transcript(chat).filter(({ from }) => from.isBot);
  return { ...opened, carrier, ann, sentTo, seen };
}

describe("saying", () => {
  it("brings words with their look and buttons, and tells which message it was", async () => {
    const { carrier, seen, sentTo } = await stage();
    const message: Message = {
      lines: [{ say: { raw: "Does 5 < 6 _light_?" }, style: "heading" }, { say: { raw: "<b>" } }],
      buttons: [[{ label: { raw: "Yes" }, press }]],
    };
    const sent = sentTo(await carrier.carry(say(message), fresh));
    const [shown] = seen();
    expect(sent).toEqual({ chat: "11", message: String(shown?.id) });
    expect(shown?.text).toBe("Does 5 < 6 _light_?\n<b>");
    expect(shown?.entities).toMatchObject([{ type: "bold", offset: 0, length: 19 }]);
    expect(shown?.buttons.flat().map(({ label }) => label)).toEqual(["Yes"]);
  });

  it("sends one message a call, and says when there is more", async () => {
    const { carrier, seen } = await stage();
    const long = say(lines("word ".repeat(2000)));
    const outcomes: string[] = [];
    for (let part = 0; outcomes.at(-1) !== "done"; part++) {
      outcomes.push((await carrier.carry(long, { earlier: null, part })).outcome);
    }
    expect(outcomes).toEqual(["partly", "partly", "done"]);
    expect(seen()).toHaveLength(3);
    // A part beyond the last (a shorter wording after an update) is simply done.
    expect(await carrier.carry(long, { earlier: null, part: 3 })).toEqual({
      outcome: "done",
      sent: null,
    });
  });

  it("passes every kind of file on by its id, as what it was", async () => {
    const { carrier, ann, got, run, seen, server } = await stage();
    await run();
    ann.sendPhoto(samplePicture());
    ann.sendVoice(Buffer.from("1"));
    ann.sendVideo(Buffer.from("2"));
    ann.sendDocument(Buffer.from("3"));
    ann.sendSticker("🚜");
    await server.settled();
    for (const { what } of got) {
      if (what.kind !== "file") continue;
      const carried = await carrier.carry(say({ lines: [], file: what.file }), fresh);
      expect(carried.outcome).toBe("done");
    }
    expect(seen().map(({ kind }) => kind)).toEqual([
      "photo",
      "voice",
      "video",
      "document",
      "sticker",
    ]);
  });

  it("says the words alone when the file cannot be had any more", async () => {
    const { carrier, seen, log } = await stage();
    const message = { ...lines("Ann's photo"), file: { id: "gone", kind: "photo" } as const };
    expect((await carrier.carry(say(message), fresh)).outcome).toBe("done");
    expect(seen().map(({ text }) => text)).toEqual(["Ann's photo"]);
    expect(log.join()).toContain("file-left-out");
  });

  it("shows a place", async () => {
    const { carrier, seen } = await stage();
    const message = { ...lines("Here:"), place: { latitude: 48, longitude: 11 } };
    await carrier.carry(say(message), fresh);
    expect(await carrier.carry(say(message), { ...fresh, part: 1 })).toEqual({
      outcome: "done",
      sent: null,
    });
    expect(seen().map(({ kind }) => kind)).toEqual(["text", "location"]);
  });

  it("offers to share, and takes the offer away again", async () => {
    const { carrier, server } = await stage();
    const offer = { share: "location", label: { raw: "My place" } } as const;
    await carrier.carry(say({ ...lines("Where?"), offer }), fresh);
    expect(server.view(11).keyboard).toEqual([["My place"]]);
    await carrier.carry(say({ ...lines("Thanks"), endOffer: true }), fresh);
    expect(server.view(11).keyboard).toEqual([]);
  });

  it("goes to the group's topic, and to the group when the topic is gone", async () => {
    const { carrier, server, ann, seen } = await stage();
    const group = server.group({ title: "Counter", members: [ann], type: "forum" });
    group.addBot(ann);
    const topic = group.openTopic("Slips", ann);
    const chat = String(group.id);
    await carrier.carry(say(lines("a"), { chat, topic }), fresh);
    expect((await carrier.carry(say(lines("b"), { chat, topic: 99 }), fresh)).outcome).toBe("done");
    expect(seen(group.id).map(({ text }) => text)).toEqual(["a", "b"]);
    expect(server.calls("sendMessage")[0]?.params).toMatchObject({ message_thread_id: topic });
  });
});

describe("revising", () => {
  it("changes the earlier message, buttons included", async () => {
    const { carrier, seen, sentTo } = await stage();
    const asked = { ...lines("Lights?"), buttons: [[{ label: { raw: "Dim" }, press }]] };
    const earlier = sentTo(await carrier.carry(say(asked), fresh));
    const carried = await carrier.carry(revise(lines("Lights: dim")), { earlier, part: 0 });
    expect(carried).toEqual({ outcome: "done", sent: null });
    expect(seen()).toHaveLength(1);
    expect(seen()[0]).toMatchObject({ text: "Lights: dim", buttons: [] });
  });

  it("takes the buttons away and leaves the words, as often as it is done", async () => {
    const { carrier, seen, sentTo } = await stage();
    const asked = { ...lines("Ready?"), buttons: [[{ label: { raw: "Yes" }, press }]] };
    const earlier = sentTo(await carrier.carry(say(asked), fresh));
    for (const _ of [1, 2]) {
      const done = await carrier.carry(revise({ lines: [] }), { earlier, part: 0 });
      expect(done).toEqual({ outcome: "done", sent: null });
      expect(seen().map(({ text, buttons }) => [text, buttons])).toEqual([["Ready?", []]]);
    }
    const none = await carrier.carry(revise({ lines: [] }), fresh);
    expect(none).toEqual({ outcome: "done", sent: null });
    expect(seen()).toHaveLength(1);
  });

  it("takes 'not modified' for done", async () => {
    const { carrier, seen, sentTo } = await stage();
    const earlier = sentTo(await carrier.carry(say(lines("same")), fresh));
    const carried = await carrier.carry(revise(lines("same")), { earlier, part: 0 });
    expect(carried.outcome).toBe("done");
    expect(seen()).toHaveLength(1);
  });

  it("changes the words under a photo", async () => {
    const { carrier, ann, sentTo, seen } = await stage();
    const id = ann.sendPhoto(samplePicture()).photo?.at(-1)?.file_id ?? "";
    const file = { id, kind: "photo" } as const;
    const earlier = sentTo(await carrier.carry(say({ ...lines("one"), file }), fresh));
    await carrier.carry(revise({ ...lines("two"), file }), { earlier, part: 0 });
    expect(seen().map(({ text }) => text)).toEqual(["two"]);
  });

  it.each([
    ["the message is gone", { chat: "11", message: "9999" }],
    ["there was none", null],
    ["it was in another chat", { chat: "12", message: "1" }],
  ])("says it anew when %s", async (_, earlier) => {
    const { carrier, seen, sentTo } = await stage();
    const sent = sentTo(await carrier.carry(revise(lines("anew")), { earlier, part: 0 }));
    expect(seen().map(({ id }) => String(id))).toEqual([sent.message]);
  });

  it("says it anew when it has become too long for one message", async () => {
    const { carrier, seen, sentTo } = await stage();
    const earlier = sentTo(await carrier.carry(say(lines("short")), fresh));
    const long = revise(lines("word ".repeat(1000)));
    expect((await carrier.carry(long, { earlier, part: 0 })).outcome).toBe("partly");
    expect((await carrier.carry(long, { earlier, part: 1 })).outcome).toBe("done");
    expect(seen()).toHaveLength(3);
  });

  it("says it anew when the earlier one was a photo without words", async () => {
    const { carrier, ann, sentTo, seen } = await stage();
    const id = ann.sendPhoto(samplePicture()).photo?.at(-1)?.file_id ?? "";
    const photo = { lines: [], file: { id, kind: "photo" } as const };
    const earlier = sentTo(await carrier.carry(say(photo), fresh));
    const carried = await carrier.carry(revise(lines("words")), { earlier, part: 0 });
    expect(carried.outcome).toBe("done");
    expect(seen().at(-1)?.text).toBe("words");
  });
});

describe("when it goes wrong", () => {
  it.each([
    [
      { kind: "tooManyRequests", retryAfterSeconds: 7 } as const,
      { outcome: "wait", milliseconds: 7000, because: "busy" },
    ],
    [{ kind: "blocked" } as const, { outcome: "unreachable" }],
    [{ kind: "migrated", toChatId: -100 } as const, { outcome: "moved", to: "-100" }],
    [{ kind: "webPage", status: 502 } as const, { outcome: "wait", because: "network" }],
    [{ kind: "resetBefore" } as const, { outcome: "wait", because: "network" }],
    [{ kind: "resetAfter" } as const, { outcome: "wait", because: "network" }],
    [
      { kind: "refusal", errorCode: 500, description: "Internal Server Error" } as const,
      { outcome: "wait", because: "server" },
    ],
    [
      { kind: "refusal", errorCode: 401, description: "Unauthorized" } as const,
      { outcome: "wait", because: "network" },
    ],
    [
      { kind: "refusal", errorCode: 400, description: "Bad Request: something new" } as const,
      { outcome: "refused", reason: "400 Bad Request: something new" },
    ],
    [
      { kind: "refusal", errorCode: 400, description: "Bad Request: PEER_ID_INVALID" } as const,
      { outcome: "unreachable" },
    ],
  ])("%j becomes %j", async (fault, outcome) => {
    const { carrier, server } = await stage();
    server.faults.add(fault, { method: "sendMessage" });
    expect(await carrier.carry(say(lines("x")), fresh)).toMatchObject(outcome);
  });

  it("is said of people who never wrote, blocked the bot, or are gone", async () => {
    const { carrier, ann, server } = await stage();
    expect(await carrier.carry(say(lines("x"), { chat: "77" }), fresh)).toEqual({
      outcome: "unreachable",
    });
    ann.block();
    expect(await carrier.carry(say(lines("x")), fresh)).toEqual({ outcome: "unreachable" });
    const bo = server.person({ id: 12, name: "Bo" });
    bo.start();
    bo.deleteAccount();
    expect(await carrier.carry(say(lines("x"), { chat: "12" }), fresh)).toEqual({
      outcome: "unreachable",
    });
  });

  it("is said of a group that has moved", async () => {
    const { carrier, ann, server } = await stage();
    const group = server.group({ title: "Counter", members: [ann] });
    group.addBot(ann);
    const chat = String(group.id);
    const moved = group.migrate(ann);
    expect(await carrier.carry(say(lines("x"), { chat }), fresh)).toEqual({
      outcome: "moved",
      to: String(moved.id),
    });
  });

  it("refuses to send nothing, and passes a mistake of our own on", async () => {
    const { carrier } = await stage();
    expect(await carrier.carry(say({ lines: [] }), fresh)).toMatchObject({ outcome: "refused" });
    const { render } = plainWording;
    Object.assign(plainWording, {
      render: () => {
        throw new TypeError("of our own");
      },
    });
    try {
      const carried = await carrier.carry(say(lines("x")), fresh);
      expect(carried).toEqual({ outcome: "refused", reason: "TypeError" });
    } finally {
      Object.assign(plainWording, { render });
    }
  });

  it("leaves out a button whose data does not fit, and says so in the log", async () => {
    const { carrier, seen, log } = await stage();
    const big = { revision: 1, act: "go", value: "x".repeat(99) };
    const message = {
      ...lines("Which?"),
      buttons: [[{ label: { raw: "A" }, press }], [{ label: { raw: "B" }, press: big }]],
    };
    expect((await carrier.carry(say(message), fresh)).outcome).toBe("done");
    expect(
      seen()[0]
        ?.buttons.flat()
        .map(({ label }) => label),
    ).toEqual(["A"]);
    expect(log.join()).toContain("button-left-out");
  });
});

describe("the pace", () => {
  it("is one a second in a chat, twenty a minute in a group", async () => {
    const { carrier } = await stage();
    const perMinute = (chat: string) =>
      Math.min(
        ...carrier.limits(chat).map(({ count, milliseconds }) => (count * 60_000) / milliseconds),
      );
    expect(perMinute("11")).toBe(60);
    expect(perMinute("-100")).toBe(20);
    expect(carrier.overall).toEqual([{ count: 25, milliseconds: 1000 }]);
  });
});
