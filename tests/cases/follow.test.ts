import { describe, expect, it } from "vitest";
import { createFollow, PhotoNotThere } from "../../src/cases/follow.ts";
import { Dialog } from "../helpers/dialog.ts";
import { createOfficeParts, opening } from "../helpers/office-parts.ts";

const tell = (kind: "case" | "person", id: string, event: unknown) =>
  ({ do: "tell", document: { kind, id }, event }) as const;

async function office(found: "fine" | "dark" | null = "fine") {
  const parts = await createOfficeParts();
  const body = { name: "Ann", chat: "op", language: "en", machines: [], reachable: true };
  await parts.commit({ kind: "person", id: "op" }, null, () => ({ body, effects: [] }));
  await parts.commit({ kind: "case", id: "C1" }, "u1", () => opening());
  const { desk } = new Dialog();
  const follow = createFollow({ commit: parts.commit, desk: () => desk, look: async () => found });
  return { ...parts, follow };
}

const machine = (title: string) => ({
  type: "machine.seen",
  machine: { id: title, title, facts: { kind: "ride-on-mower", fuel: "petrol" } },
});

describe("what one document tells another", () => {
  it("is kept with the person, and twice does nothing more", async () => {
    const { follow, store } = await office();
    await follow(tell("person", "op", machine("Red mower")), "t1");
    await follow(tell("person", "op", machine("Red mower")), "t1");
    await follow(tell("person", "op", { type: "equipment.told", has: ["meter"] }), "t2");
    const person = await store.load("person", "op");
    expect(person?.machines.map((one) => one.title)).toEqual(["Red mower"]);
    expect(person?.has).toEqual(["meter"]);
  });

  it("is not believed where it is nothing that we tell", async () => {
    const { follow, store } = await office();
    const before = await store.load("case", "C1");
    await follow(tell("case", "C1", { type: "case.closed", end: "visit" }), "t1");
    expect(await store.load("case", "C1")).toEqual(before);
  });

  it("waits where a photo cannot be had just now", async () => {
    const { follow, commit } = await office(null);
    await commit({ kind: "case", id: "C1" }, "u2", () => ({
      by: "op",
      happenings: [{ type: "file.received", file: { id: "f1", kind: "photo" }, from: "operator" }],
      effects: [],
    }));
    await expect(
      follow(tell("case", "C1", { type: "photo.came", file: "f1" }), "t1"),
    ).rejects.toThrow(PhotoNotThere);
  });
});
