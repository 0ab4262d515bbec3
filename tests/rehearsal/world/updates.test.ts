// Covers also: src/rehearsal/world/feed.ts
import { beforeEach, describe, expect, it } from "vitest";
import type { Person } from "../../../src/rehearsal/people/person.ts";
import { openStage, type Stage } from "../stage.ts";

let stage: Stage;
let ana: Person;

beforeEach(async () => {
  stage = await openStage();
  ana = stage.server.person({ id: 7, name: "Ana" });
});

const texts = (updates: { message?: { text?: string } }[]) =>
  updates.map(({ message }) => message?.text);

describe("updates that go astray", () => {
  it("one comes twice under its old id, although it was confirmed", async () => {
    const { api, server } = stage;
    ana.say("once");
    const [first] = await api.getUpdates();
    const id = first?.update_id ?? 0;
    expect(await api.getUpdates({ offset: id + 1 })).toEqual([]);
    server.repeatUpdate();
    expect(await api.getUpdates({ offset: id + 1 })).toEqual([first]);
    server.repeatUpdate(id);
    ana.say("next");
    expect(texts(await api.getUpdates({ offset: id + 1 }))).toEqual(["once", "next"]);
    expect(() => server.repeatUpdate(5)).toThrow(RangeError);
  });

  it("ids jump, also back, and the client still gets everything once", async () => {
    const { api, server } = stage;
    ana.say("before");
    const [first] = await api.getUpdates();
    await api.getUpdates({ offset: (first?.update_id ?? 0) + 1 });
    server.jumpUpdateId(90_000);
    ana.say("after");
    const [second] = await api.getUpdates({ offset: (first?.update_id ?? 0) + 1 });
    expect(second).toMatchObject({ update_id: 90_000, message: { text: "after" } });
    await api.getUpdates({ offset: 90_001 });
    expect(server.pendingUpdates()).toBe(0);
  });

  it("held ones are let go or lost one by one", async () => {
    const { api, server } = stage;
    const held = server.holdUpdates();
    for (const text of ["a", "b", "c", "d"]) ana.say(text);
    expect([held.count(), server.pendingUpdates()]).toEqual([4, 0]);
    held.release(1);
    held.drop(1);
    expect(texts(await api.getUpdates())).toEqual(["a"]);
    held.end();
    ana.say("e");
    expect(texts(await api.getUpdates())).toEqual(["a", "c", "d", "e"]);
  });
});

it("every change is told to those who listen, until they stop", async () => {
  const { api, server } = stage;
  const seen: string[] = [];
  const stop = server.subscribe(({ kind }) => seen.push(kind));
  ana.start();
  const { message_id } = await api.sendMessage(7, "a");
  await api.editMessageText(7, message_id, "b");
  await api.deleteMessage(7, message_id);
  stop();
  ana.say("unheard");
  expect(seen).toEqual([
    ...["posted", "queued"],
    ...["calling", "posted", "called"],
    ...["calling", "edited", "called"],
    ...["calling", "deleted", "called"],
  ]);
});
