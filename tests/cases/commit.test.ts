import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createChangeDocument } from "../../src/cases/change-document.ts";
import { createCommit } from "../../src/cases/commit.ts";
import { openDirectory } from "../../src/cases/directory.ts";
import { createOfficeParts, opening, say, words } from "../helpers/office-parts.ts";

const target = { kind: "case", id: "A1" } as const;

describe("commit", () => {
  it("writes events, update and effects in one document, stamped", async () => {
    const { commit, store, timers } = await createOfficeParts();
    const { outcome, document } = await commit(target, "u1", () => opening([say("hello")]));
    expect(outcome).toBe("saved");
    expect(document).toEqual(await store.load("case", "A1"));
    expect(document?.version).toBe(1);
    expect(document?.updates).toEqual(["u1"]);
    expect(document?.events).toMatchObject([
      { type: "case.opened", at: timers.now(), by: "op", update: "u1" },
    ]);
    expect(document?.outbox).toMatchObject([{ notBefore: timers.now(), attempts: 0 }]);
  });

  it("lets an event name somebody else than the decision does", async () => {
    const { commit } = await createOfficeParts();
    const { document } = await commit(target, "u1", () => ({
      ...opening(),
      happenings: [{ type: "shop.told", by: "turnrow" }, { type: "shop.saw" }],
    }));
    expect(document?.events.map((event) => event.by)).toEqual(["turnrow", "op"]);
  });

  it("applies an update once, however often it comes", async () => {
    const { commit, store } = await createOfficeParts();
    await commit(target, "u1", () => opening([say("hello")]));
    const again = await commit(target, "u1", () => words("never decided"));
    expect(again.outcome).toBe("repeated");
    expect((await store.load("case", "A1"))?.events).toHaveLength(1);
  });

  it("writes nothing where nothing follows", async () => {
    const { commit, store } = await createOfficeParts();
    expect((await commit(target, "u1", () => null)).outcome).toBe("nothing");
    expect(await store.load("case", "A1")).toBeNull();
  });

  it("does upkeep without an update any number of times", async () => {
    const { commit } = await createOfficeParts();
    await commit(target, null, () => opening());
    const { document } = await commit(target, null, () => words("x"));
    expect(document?.events).toHaveLength(2);
    expect(document?.updates).toEqual([]);
  });

  it("keeps the updates of a bounded window", async () => {
    const { commit } = await createOfficeParts();
    for (let i = 0; i < 205; i++) await commit(target, `u${i}`, () => words("x"));
    const { document } = await commit(target, "last", () => words("x"));
    expect(document?.updates).toHaveLength(200);
    expect(document?.updates.at(-1)).toBe("last");
    expect(document?.updates[0]).toBe("u6");
  });

  it("gives every effect an id of its own and a growing place in its chat", async () => {
    const { commit, directory } = await createOfficeParts();
    await commit(target, "u1", () => opening([say("a"), say("b", "22"), say("c")]));
    await commit({ kind: "case", id: "B2" }, "u2", () => opening([say("d")]));
    const pending = [...directory.pending("chat/11"), ...directory.pending("chat/22")];
    expect(new Set(pending.map(({ entry }) => entry.id)).size).toBe(4);
    expect(directory.pending("chat/11").map(({ entry }) => entry.sequence)).toEqual([1, 2, 3]);
  });

  it("keeps ids apart when a document is removed and begun anew", async () => {
    const { commit, store, directory, timers } = await createOfficeParts();
    const first = await commit(target, "u1", () => opening([say("a")]));
    await store.remove("case", "A1");
    directory.forget(target);
    await timers.advance(1);
    const second = await commit(target, "u2", () => opening([say("a")]));
    expect(second.document?.outbox[0]?.id).not.toBe(first.document?.outbox[0]?.id);
  });

  it("commits to a person and to the shop as well", async () => {
    const { commit, directory } = await createOfficeParts();
    const body = { name: "Ann", chat: "11", language: "en", machines: [], reachable: true };
    await commit({ kind: "person", id: "op" }, "u1", () => ({ body, effects: [] }));
    await commit({ kind: "shop", id: "shop" }, "u2", () => ({
      body: { members: [], invites: [], secret: "s" },
      effects: [],
    }));
    expect(directory.person("op")).toMatchObject(body);
    expect(directory.shop()).toMatchObject({ secret: "s", version: 1 });
  });

  it("decides again when somebody else wrote in between, and loses nothing", async () => {
    const { commit, store, timers } = await createOfficeParts();
    // A second office over the same documents, as another chat's turn would be.
    const directory = await openDirectory(store);
    const change = createChangeDocument(store, directory);
    const other = createCommit({ change, directory, clock: timers });
    await commit(target, "u0", () => opening());
    const heard: number[] = [];
    await Promise.all(
      [commit, other, commit, other].map((write, i) =>
        write(target, `u${i + 1}`, (document) => {
          heard.push(document?.events.length ?? 0);
          return words(`w${i}`);
        }),
      ),
    );
    const document = await store.load("case", "A1");
    expect(document?.events).toHaveLength(5);
    expect(document?.version).toBe(5);
    expect(heard.length).toBeGreaterThan(4);
  });

  it("ends in the same events whatever the order in which updates come and repeat", () =>
    fc.assert(
      fc.asyncProperty(
        fc.array(fc.constantFrom("u1", "u2", "u3", "u4"), { minLength: 1, maxLength: 12 }),
        async (updates) => {
          const { commit, store } = await createOfficeParts();
          await Promise.all(updates.map((update) => commit(target, update, () => words(update))));
          const told = (await store.load("case", "A1"))?.events.map((event) => event.update);
          expect(new Set(told).size).toBe(told?.length);
          expect(new Set(told)).toEqual(new Set(updates));
        },
      ),
      { seed: 5, numRuns: 60 },
    ));
});
