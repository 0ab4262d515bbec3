import { describe, expect, it } from "vitest";
import { openDirectory } from "../../src/cases/directory.ts";
import { createOfficeParts, opening, say, words } from "../helpers/office-parts.ts";

const caseA = { kind: "case", id: "A1" } as const;
const caseB = { kind: "case", id: "B2" } as const;
const assigned = {
  by: "boss",
  happenings: [
    { type: "case.assigned", technician: "tech", name: "Tom", chat: "33", language: "en" },
  ],
  effects: [],
} as const;
const closed = {
  by: "tech",
  happenings: [{ type: "case.closed", end: "visit", complaint: "", cause: "", correction: "" }],
  effects: [],
} as const;

async function filled() {
  const parts = await createOfficeParts();
  await parts.commit(caseA, "u1", () => opening([say("hi"), say("hi", "22")]));
  await parts.timers.advance(1000);
  await parts.commit(caseB, "u2", () => opening([say("ho")]));
  await parts.timers.advance(1000);
  await parts.commit(caseA, "u3", () => words("it clicks"));
  await parts.commit({ kind: "person", id: "op" }, "u4", () => ({
    body: { name: "Ann", chat: "11", language: "de", machines: [], reachable: true },
    effects: [],
  }));
  return parts;
}

describe("directory", () => {
  it("knows every applied update, whatever document it went to", async () => {
    const { directory } = await filled();
    expect(["u1", "u2", "u3", "u4", "u5"].map(directory.seen)).toEqual([
      true,
      true,
      true,
      true,
      false,
    ]);
  });

  it("lists an operator's cases, the one touched last first", async () => {
    const { directory } = await filled();
    expect(directory.cases({ operator: "op" }).map(({ id }) => id)).toEqual(["A1", "B2"]);
    expect(directory.cases({ operator: "nobody" })).toEqual([]);
    expect(directory.case("A1")).toMatchObject({ opening: "it clicks", touchedAt: 1_002_000 });
    expect(directory.case("Z9")).toBeNull();
  });

  it("follows assignments and closings", async () => {
    const { commit, directory } = await filled();
    await commit(caseB, "u5", () => assigned);
    expect(directory.cases({ technician: "tech", open: true }).map(({ id }) => id)).toEqual(["B2"]);
    await commit(caseB, "u6", () => closed);
    expect(directory.cases({ technician: "tech", open: true })).toEqual([]);
    expect(directory.cases({ open: false }).map(({ id }) => id)).toEqual(["B2"]);
  });

  it("says the same after a restart", async () => {
    const { directory, store } = await filled();
    const again = await openDirectory(store);
    for (const lane of directory.lanes()) {
      expect(again.pending(lane)).toEqual(directory.pending(lane));
      expect(again.nextSequence(lane)).toBe(directory.nextSequence(lane));
    }
    expect(again.cases({})).toEqual(directory.cases({}));
    expect(again.person("op")).toEqual(directory.person("op"));
    expect(again.seen("u1")).toBe(true);
  });

  it("knows whose chat a chat is", async () => {
    const { directory } = await filled();
    expect(directory.peopleAt("11").map(({ id }) => id)).toEqual(["op"]);
    expect(directory.peopleAt("12")).toEqual([]);
  });

  it("forgets what was removed, with what it had to send", async () => {
    const { directory } = await filled();
    directory.forget(caseA);
    expect(directory.case("A1")).toBeNull();
    expect(directory.lanes()).toEqual(["chat/11"]);
    expect(directory.pending("chat/11")).toHaveLength(1);
    directory.forget({ kind: "person", id: "op" });
    expect(directory.person("op")).toBeNull();
    directory.forget({ kind: "shop", id: "shop" });
    expect(directory.shop()).toBeNull();
  });

  it("is not led back by a report that comes late", async () => {
    const { directory, store, commit } = await filled();
    const old = await store.load("case", "B2");
    await commit(caseB, "u7", () => closed);
    if (old) directory.take(old);
    expect(directory.case("B2")?.closed).not.toBeNull();
  });

  it("calls whoever waits for something to send", async () => {
    const { directory, commit } = await filled();
    const called: string[] = [];
    directory.onPending((lanes) => called.push(...lanes));
    await commit(caseB, "u8", () => words("more", [say("x", "44")]));
    expect(called).toContain("chat/44");
  });
});
