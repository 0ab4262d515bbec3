import { describe, expect, it } from "vitest";
import type { Notice } from "../../src/cases/delivery.ts";
import { openDirectory } from "../../src/cases/directory.ts";
import { createMoveChat } from "../../src/cases/move-chat.ts";
import type { Carrier, DocumentStore, Tell } from "../../src/cases/ports.ts";
import { startPostman } from "../../src/cases/postman.ts";
import type { PlannedEffect } from "../../src/domain/effects.ts";
import { createFakeCarrier } from "../helpers/fake-carrier.ts";
import { createOfficeParts, opening, revise, say, words } from "../helpers/office-parts.ts";

const target = { kind: "case", id: "A1" } as const;
const caseB = { kind: "case", id: "B2" } as const;

async function office(
  options: { store?: DocumentStore; limits?: Carrier["limits"]; overall?: Carrier["overall"] } = {},
) {
  const parts = await createOfficeParts(options.store);
  const carrier = createFakeCarrier(parts.timers.now, options.limits, options.overall);
  const notices: Notice[] = [];
  const told: string[] = [];
  const start = () =>
    startPostman({
      ...parts,
      carrier,
      moveChat: createMoveChat(parts.store, parts.change),
      notify: async (notice) => void notices.push(notice),
      follow: async (tell: Tell, update) => {
        const { outcome } = await parts.commit(caseB, update, () => words(String(tell.event)));
        told.push(outcome);
      },
    });
  const send = (update: string, ...effects: PlannedEffect[]) =>
    parts.commit(target, update, (old) => (old ? words(update, effects) : opening(effects)));
  const outbox = async () => (await parts.store.load("case", "A1"))?.outbox ?? [];
  return { ...parts, carrier, notices, told, start, send, outbox };
}

describe("postman", () => {
  it("sends what waits at the start, in order, and takes each out of the document", async () => {
    const { send, start, carrier, timers, outbox } = await office();
    await send("u1", say("a"), say("b"));
    await send("u2", say("c"));
    start();
    await timers.settled();
    expect(carrier.texts()).toEqual(["a", "b", "c"]);
    expect(await outbox()).toEqual([]);
  });

  it("sends what is decided later without being asked", async () => {
    const { send, start, carrier, timers } = await office();
    start();
    await send("u1", say("a"));
    await timers.settled();
    expect(carrier.texts()).toEqual(["a"]);
  });

  it("writes each one down before the next of its chat begins", async () => {
    const { send, start, carrier, timers, outbox } = await office();
    let finish = (): void => undefined;
    carrier.script(
      "b",
      new Promise((resolve) => {
        finish = () => resolve({ outcome: "done", sent: null });
      }),
    );
    await send("u1", say("a"), say("b"), say("c"));
    start();
    await timers.settled();
    expect(carrier.texts()).toEqual(["a", "b"]);
    expect((await outbox()).map((entry) => entry.sequence)).toEqual([2, 3]);
    finish();
    await timers.settled();
    expect(carrier.texts()).toEqual(["a", "b", "c"]);
  });

  it("lets no chat wait for another", async () => {
    const { send, start, carrier, timers } = await office();
    carrier.script("slow", new Promise(() => undefined));
    await send("u1", say("slow", "11"), say("after", "11"), say("x", "22"), say("y", "22"));
    start();
    await timers.settled();
    expect(carrier.texts("22")).toEqual(["x", "y"]);
    expect(carrier.texts("11")).toEqual(["slow"]);
  });

  it("waits until the time has come, and lets others pass meanwhile", async () => {
    const { send, start, carrier, timers } = await office();
    const later = timers.now() + 5 * 3_600_000;
    await send("u1", { ...say("reminder"), notBefore: later }, say("now"));
    start();
    await timers.advance(4 * 3_600_000);
    expect(carrier.texts()).toEqual(["now"]);
    await timers.advance(3_600_000);
    expect(carrier.texts()).toEqual(["now", "reminder"]);
    expect(carrier.carried[1]?.at).toBe(later);
  });

  it("is called sooner by something that is due sooner", async () => {
    const { send, start, carrier, timers } = await office();
    start();
    await send("u1", { ...say("late"), notBefore: timers.now() + 60_000 });
    await timers.settled();
    await send("u2", { ...say("soon"), notBefore: timers.now() + 1_000 });
    await timers.advance(1_000);
    expect(carrier.texts()).toEqual(["soon"]);
  });

  it("drops a reminder that has become pointless, judged when it is due", async () => {
    const { send, start, carrier, timers, commit, outbox } = await office();
    const notBefore = timers.now() + 1000;
    const asked = { about: "urgency" } as const;
    await send("u1");
    await commit(target, "u2", () => ({
      by: "turnrow",
      happenings: [{ type: "question.asked", to: "operator", asking: asked, revision: 4 }],
      effects: [
        { ...say("still there?"), notBefore, cancelIf: { revisionAbove: 4 } },
        { ...say("anyone?"), notBefore, cancelIf: { revisionAbove: 3 } },
        { ...say("open"), notBefore, cancelIf: { closed: true } },
        { ...say("danger"), notBefore, cancelIf: { flagSeen: "fire" } },
      ],
    }));
    start();
    await timers.advance(2000);
    expect(carrier.texts()).toEqual(["still there?", "open", "danger"]);
    expect(await outbox()).toEqual([]);
  });

  it("remembers the message of a slot and hands it to the revision", async () => {
    const { send, start, carrier, timers } = await office();
    start();
    await send("u1", say("slip", "11", "slip"), say("slip", "22", "slip"));
    await timers.settled();
    await send("u2", revise("slip 2", "slip", "22"));
    await timers.settled();
    const [, toOther, revision] = carrier.carried;
    expect(toOther?.context.earlier).toBeNull();
    expect(revision?.context.earlier).toEqual({ chat: "22", message: "101" });
  });

  it("sends a long message part by part and goes on where it was after a restart", async () => {
    const first = await office();
    const stuck = new Promise<never>(() => undefined);
    first.carrier.script("long", { outcome: "partly", sent: null }, stuck);
    await first.send("u1", say("long"));
    first.start();
    await first.timers.settled();
    expect((await first.outbox())[0]?.part).toBe(1);

    const second = await office({ store: first.store });
    second.start();
    await second.timers.settled();
    expect(second.carrier.carried.map(({ context }) => context.part)).toEqual([1]);
    expect(await second.outbox()).toEqual([]);
  });

  it("skips a revision when a newer one of the same message is due", async () => {
    const { send, start, carrier, timers, outbox } = await office();
    await send("u1", say("slip", "11", "slip"), revise("r1", "slip"), revise("r2", "slip"));
    await send("u2", revise("other", "other"), revise("r3", "slip"));
    start();
    await timers.settled();
    expect(carrier.texts()).toEqual(["slip", "other", "r3"]);
    expect(await outbox()).toEqual([]);
  });

  it("repeats at most one message per chat after a kill", async () => {
    const first = await office();
    const lost = { ...first.store, save: () => new Promise<never>(() => undefined) };
    await first.send("u1", say("a"), say("b"), say("x", "22"), say("y", "22"));
    // From here on nothing that is written arrives, as if the power were gone after the first send.
    const dying = await office({ store: lost });
    dying.start();
    await dying.timers.settled();
    expect(dying.carrier.texts()).toEqual(["a", "x"]);
    const second = await office({ store: first.store });
    second.start();
    await second.timers.settled();
    expect(second.carrier.texts("11")).toEqual(["a", "b"]);
    expect(second.carrier.texts("22")).toEqual(["x", "y"]);
  });
});

describe("postman in trouble", () => {
  it("obeys when told to wait, and keeps the order", async () => {
    const { send, start, carrier, timers } = await office();
    carrier.script("a", { outcome: "wait", milliseconds: 7000, because: "busy" });
    await send("u1", say("a"), say("b"));
    start();
    await timers.advance(6_999);
    expect(carrier.texts()).toEqual(["a"]);
    await timers.advance(1);
    expect(carrier.texts()).toEqual(["a", "a", "b"]);
  });

  it("goes on trying as long as the network is down, with longer and longer pauses", async () => {
    const { send, start, carrier, timers, notices, outbox } = await office();
    const down = { outcome: "wait", milliseconds: 0, because: "network" } as const;
    carrier.script("a", ...Array.from({ length: 300 }, () => down));
    await send("u1", say("a"));
    start();
    await timers.advance(24 * 3_600_000);
    expect(await outbox()).toEqual([]);
    expect(carrier.carried).toHaveLength(301);
    const pauses = carrier.carried
      .slice(1, 8)
      .map((one, i) => one.at - (carrier.carried[i]?.at ?? 0));
    expect(pauses).toEqual([1000, 2000, 4000, 8000, 16_000, 32_000, 60_000]);
    expect(notices[0]).toMatchObject({ what: "trouble", reason: "network" });
  });

  it("lets others pass a message on which the service always fails, and reports it", async () => {
    const { send, start, carrier, timers, notices, outbox } = await office();
    const broken = { outcome: "wait", milliseconds: 0, because: "server" } as const;
    carrier.script("poison", ...Array.from({ length: 1000 }, () => broken));
    await send("u1", say("poison"), say("b"));
    start();
    await timers.advance(15 * 60_000);
    expect(carrier.texts()).toContain("b");
    expect(await outbox()).toHaveLength(1);
    await timers.advance(26 * 3_600_000);
    expect(await outbox()).toEqual([]);
    expect(notices.map(({ what }) => what)).toEqual(["refused"]);
  });

  it("drops and reports what can never be carried out or breaks its carrier", async () => {
    const { send, start, carrier, timers, notices, outbox } = await office();
    carrier.script("bad", { outcome: "refused", reason: "too long" });
    carrier.script("worse", new TypeError("with a secret"));
    await send("u1", say("bad"), say("worse"), say("good"));
    start();
    await timers.settled();
    expect(carrier.texts()).toEqual(["bad", "worse", "good"]);
    expect(notices).toMatchObject([{ reason: "too long" }, { reason: "TypeError" }]);
    expect(await outbox()).toEqual([]);
  });

  it("marks a person unreachable before it drops the message, and tells", async () => {
    const { send, start, carrier, timers, notices, commit, directory } = await office();
    await commit({ kind: "person", id: "op" }, "u0", () => ({
      body: { name: "Ann", chat: "11", language: "en", machines: [], reachable: true },
      effects: [],
    }));
    carrier.script("a", { outcome: "unreachable" });
    await send("u1", say("a"));
    start();
    await timers.settled();
    expect(directory.person("op")?.reachable).toBe(false);
    expect(notices).toMatchObject([{ what: "unreachable", chat: "11" }]);
  });

  it("follows a group to its new id, everywhere, and sends again there", async () => {
    const { send, start, carrier, timers, commit, directory, store } = await office();
    await commit({ kind: "shop", id: "shop" }, "u0", () => ({
      body: { members: [], invites: [], secret: "s", counter: { chat: "-5", topic: 3 } },
      effects: [],
    }));
    await send("u1", say("slip", "-5", "slip"));
    start();
    await timers.settled();
    carrier.script("r2", { outcome: "moved", to: "-100" });
    await send("u2", revise("r2", "slip", "-5"), say("next", "-5"));
    await timers.advance(2000);
    expect(carrier.texts("-100")).toEqual(["r2", "next"]);
    expect(directory.shop()?.counter).toEqual({ chat: "-100" });
    const document = await store.load("case", "A1");
    expect(document?.outbox).toEqual([]);
    expect(Object.keys(document?.sent ?? {})).toEqual(["slip@-100"]);
  });

  it("does not send again what it could not write down at once", async () => {
    const { store } = await createOfficeParts();
    let broken = false;
    const flaky: DocumentStore = {
      ...store,
      save: (document, expected) =>
        broken ? Promise.reject(new Error("disk full")) : store.save(document, expected),
    };
    const { send, start, carrier, timers, outbox } = await office({ store: flaky });
    await send("u1", say("a"), say("b"));
    broken = true;
    start();
    await timers.advance(60_000);
    expect(carrier.texts()).toEqual(["a"]);
    broken = false;
    await timers.advance(60_000);
    expect(carrier.texts()).toEqual(["a", "b"]);
    expect(await outbox()).toEqual([]);
  });

  it("waits when it cannot read", async () => {
    const { store } = await createOfficeParts();
    let broken = false;
    const flaky: DocumentStore = {
      ...store,
      load: (kind, id) => (broken ? Promise.reject(new Error("no disk")) : store.load(kind, id)),
    };
    const { send, start, carrier, timers, notices } = await office({ store: flaky });
    await send("u1", say("a"));
    broken = true;
    start();
    await timers.advance(1000);
    broken = false;
    await timers.advance(10_000);
    expect(carrier.texts()).toEqual(["a"]);
    expect(notices[0]).toMatchObject({ what: "trouble", reason: "Error" });
  });
});

describe("postman's pace", () => {
  const limits = () => [
    { count: 3, milliseconds: 3000 },
    { count: 5, milliseconds: 60_000 },
  ];

  it("keeps every limit of a chat and allows short bursts", async () => {
    const { send, start, carrier, timers } = await office({ limits });
    await send("u1", ..."abcdefgh".split("").map((text) => say(text)));
    start();
    await timers.advance(120_000);
    const times = carrier.carried.map(({ at }) => at - 1_000_000);
    expect(times).toEqual([0, 0, 0, 3000, 3000, 60_000, 60_000, 60_000]);
  });

  it("keeps the overall limit over all chats", async () => {
    const overall = [{ count: 2, milliseconds: 1000 }];
    const { send, start, carrier, timers } = await office({ overall });
    await send("u1", ...["1", "2", "3", "4", "5"].map((chat) => say("hi", chat)));
    start();
    await timers.advance(1_000);
    expect(carrier.carried).toHaveLength(4);
    await timers.advance(1_000);
    expect(carrier.carried).toHaveLength(5);
  });
});

describe("follow-ups", () => {
  const tell: PlannedEffect = {
    effect: { do: "tell", document: caseB, event: "a colleague says" },
  };

  it("are applied once, even when the note of it was lost", async () => {
    const first = await office();
    await first.commit(caseB, "u0", () => opening());
    await first.send("u1", tell);
    const entry = (await first.outbox())[0]?.id ?? "";
    // Applied, but killed before that was written down.
    await first.commit(caseB, entry, () => words("a colleague says"));
    first.start();
    await first.timers.settled();
    expect(first.told).toEqual(["repeated"]);
    expect((await first.store.load("case", "B2"))?.events).toHaveLength(2);
    expect(await first.outbox()).toEqual([]);
  });

  it("that fail are tried again", async () => {
    const { send, timers, outbox, ...parts } = await office();
    let tries = 0;
    startPostman({
      ...parts,
      timers,
      moveChat: async () => undefined,
      notify: async () => undefined,
      follow: async () => {
        tries++;
        if (tries < 3) throw new Error("not now");
      },
    });
    await send("u1", tell);
    await timers.advance(10_000);
    expect(tries).toBe(3);
    expect(await outbox()).toEqual([]);
  });
});

describe("stopping", () => {
  it("drains what is due and leaves what is not", async () => {
    const { send, start, carrier, timers } = await office({
      limits: () => [{ count: 1, milliseconds: 1000 }],
    });
    const postman = start();
    await send("u1", say("a"), say("b"), { ...say("c"), notBefore: timers.now() + 3_600_000 });
    const left = postman.drain(10_000);
    await timers.advance(5_000);
    expect(await left).toBe(0);
    expect(carrier.texts()).toEqual(["a", "b"]);
  });

  it("gives up draining at the deadline and says how much is left", async () => {
    const { send, start, carrier, timers } = await office();
    carrier.script("a", { outcome: "wait", milliseconds: 60_000, because: "busy" });
    const postman = start();
    await send("u1", say("a"), say("b"));
    const left = postman.drain(5_000);
    await timers.advance(5_000);
    expect(await left).toBe(2);
  });

  it("begins nothing more after stop, and everything is there the next time", async () => {
    const { send, start, carrier, timers, store } = await office();
    const postman = start();
    await postman.stop();
    await send("u1", say("a"));
    postman.wake();
    await timers.advance(10_000);
    expect(carrier.texts()).toEqual([]);
    expect((await openDirectory(store)).pending("chat/11")).toHaveLength(1);
  });

  it("waits for what is under way", async () => {
    const { send, start, carrier, timers, outbox } = await office();
    let finish = (): void => undefined;
    carrier.script(
      "a",
      new Promise((resolve) => {
        finish = () => resolve({ outcome: "done", sent: null });
      }),
    );
    const postman = start();
    await send("u1", say("a"), say("b"));
    await timers.settled();
    const stopped = postman.stop();
    finish();
    await stopped;
    expect(carrier.texts()).toEqual(["a"]);
    expect(await outbox()).toHaveLength(1);
  });
});
