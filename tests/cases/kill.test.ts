import { describe, expect, it } from "vitest";
import { createChangeDocument } from "../../src/cases/change-document.ts";
import { createCommit } from "../../src/cases/commit.ts";
import { openDirectory } from "../../src/cases/directory.ts";
import { createMoveChat } from "../../src/cases/move-chat.ts";
import type { DocumentStore } from "../../src/cases/ports.ts";
import { startPostman } from "../../src/cases/postman.ts";
import { openLowdbStore } from "../../src/store/lowdb-store.ts";
import { createFakeCarrier } from "../helpers/fake-carrier.ts";
import { createFakeDisk } from "../helpers/fake-disk.ts";
import { createFakeTimers } from "../helpers/fake-timers.ts";
import { opening, revise, say, words } from "../helpers/office-parts.ts";

type FakeDisk = ReturnType<typeof createFakeDisk>;

/** What people say, in the order in which the chat service has it. */
const updates = [
  {
    update: "u1",
    target: { kind: "case", id: "A1" },
    effects: [say("a1"), say("slip", "-5", "slip")],
  },
  {
    update: "u2",
    target: { kind: "case", id: "A1" },
    effects: [say("a2"), revise("r2", "slip", "-5")],
  },
  { update: "u3", target: { kind: "case", id: "B2" }, effects: [say("b3", "22"), say("s3", "-5")] },
  { update: "u4", target: { kind: "case", id: "A1" }, effects: [say("a4")] },
] as const;

interface Life {
  readonly disk: FakeDisk;
  /** What the chat service need not send again. */
  readonly confirmed: Set<string>;
  /** What people got, over all lives. */
  readonly said: { text: string; chat: string }[];
}

/** One life of the program: takes in what is not confirmed yet and sends what waits. */
async function live({ disk, confirmed, said }: Life) {
  const timers = createFakeTimers();
  const carrier = createFakeCarrier(timers.now);
  const store = await openLowdbStore("/d", {
    now: timers.now,
    onDamage: ({ why }) => {
      throw new Error(`damaged: ${why}`);
    },
    files: disk.files,
  });
  const directory = await openDirectory(store);
  const change = createChangeDocument(store, directory);
  const commit = createCommit({ change, directory, clock: timers });
  startPostman({
    ...{ store, change, directory, timers },
    carrier: {
      ...carrier,
      carry: (effect, context) => {
        const carried = carrier.carry(effect, context);
        said.push(...carrier.carried.slice(-1));
        return carried;
      },
    },
    moveChat: createMoveChat(store, change),
    notify: async () => undefined,
    follow: async () => undefined,
  });
  try {
    for (const { update, target, effects } of updates) {
      if (confirmed.has(update)) continue;
      if (!directory.seen(update)) {
        await commit(target, update, (old) => (old ? words(update, effects) : opening(effects)));
      }
      confirmed.add(update);
    }
  } finally {
    for (let turn = 0; turn < 60; turn++) await timers.settled();
  }
  return store;
}

const events = async (store: DocumentStore, id: string) =>
  (await store.load("case", id))?.events.map(({ update }) => update);

/** Everything was applied once and said in order; at most one message per chat was repeated. */
async function expectWhole(store: DocumentStore, said: Life["said"]) {
  expect(await events(store, "A1")).toEqual(["u1", "u2", "u4"]);
  expect(await events(store, "B2")).toEqual(["u3"]);
  expect((await store.load("case", "A1"))?.outbox).toEqual([]);
  expect((await store.load("case", "B2"))?.outbox).toEqual([]);
  const wanted: Record<string, string[]> = {
    "11": ["a1", "a2", "a4"],
    "22": ["b3"],
    "-5": ["slip", "r2", "s3"],
  };
  for (const [chat, texts] of Object.entries(wanted)) {
    const got = said.filter((one) => one.chat === chat).map(({ text }) => text);
    expect([...new Set(got)], `in ${chat}: ${got}`).toEqual(texts);
    expect(got.length - texts.length, `in ${chat}: ${got}`).toBeLessThanOrEqual(1);
  }
}

const newLife = (): Life => ({ disk: createFakeDisk(), confirmed: new Set(), said: [] });

describe("killed between any two file operations", () => {
  it("loses no word, applies none twice, and repeats at most one message per chat", async () => {
    const whole = newLife();
    await expectWhole(await live(whole), whole.said);
    const count = whole.disk.operations();
    expect(count).toBeGreaterThan(60);
    let repeats = 0;
    for (let allowed = 0; allowed < count; allowed++) {
      const life = newLife();
      life.disk.dieAfter(allowed);
      await live(life).catch(() => undefined);
      life.disk.restart();
      await expectWhole(await live(life), life.said);
      repeats += life.said.length - whole.said.length;
    }
    // Some kills do fall between sending and noting it; otherwise this would have proved nothing.
    expect(repeats).toBeGreaterThan(0);
  });

  it("keeps that when the power goes as well", async () => {
    const whole = newLife();
    await live(whole);
    for (let allowed = 0; allowed < whole.disk.operations(); allowed += 3) {
      const life = newLife();
      life.disk.dieAfter(allowed);
      await live(life).catch(() => undefined);
      life.disk.cutPower(allowed % 2 === 0);
      await expectWhole(await live(life), life.said);
    }
  });
});
