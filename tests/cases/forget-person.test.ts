import { describe, expect, it } from "vitest";
import { createForget, sweepForgotten } from "../../src/cases/forget-person.ts";
import { createOfficeParts, opening, say, words } from "../helpers/office-parts.ts";

const person = (name: string) => ({
  name,
  chat: "11",
  language: "en",
  machines: [],
  reachable: true,
});

async function known() {
  const parts = await createOfficeParts();
  await parts.commit({ kind: "case", id: "A1" }, "u1", () => opening());
  await parts.commit({ kind: "case", id: "A1" }, "u2", () => words("my green tractor"));
  return { ...parts, forget: createForget(parts) };
}

describe("somebody who asks to be forgotten", () => {
  it("is gone from their cases, which stay", async () => {
    const { forget, store, directory } = await known();
    await forget("op");
    const document = await store.load("case", "A1");
    expect(JSON.stringify(document)).not.toMatch(/green tractor|Ann/);
    expect(document?.events.at(-1)).toMatchObject({ type: "operator.forgotten", by: "turnrow" });
    expect(directory.cases({ operator: "op" })).toEqual([]);
  });

  it("can ask twice", async () => {
    const { forget, store } = await known();
    await forget("op");
    const once = await store.load("case", "A1");
    await forget("op");
    expect(await store.load("case", "A1")).toEqual(once);
  });

  it("loses their own document at the next start, once the last word to them is out", async () => {
    const { store, commit, directory } = await known();
    await commit({ kind: "person", id: "op" }, "u3", () => ({
      body: person(""),
      effects: [say("done")],
    }));
    await sweepForgotten(store, directory);
    expect(await store.load("person", "op")).not.toBeNull();
    await store.save({ ...(await personIn(store)), outbox: [], version: 2 }, 1);
    await sweepForgotten(store, directory);
    expect(await store.load("person", "op")).toBeNull();
    expect(directory.person("op")).toBeNull();
  });

  it("leaves others alone", async () => {
    const { store, commit, directory } = await known();
    await commit({ kind: "person", id: "op" }, "u3", () => ({ body: person("Ann"), effects: [] }));
    await sweepForgotten(store, directory);
    expect(directory.person("op")?.name).toBe("Ann");
  });
});

async function personIn(store: Awaited<ReturnType<typeof createOfficeParts>>["store"]) {
  const found = await store.load("person", "op");
  if (found === null) throw new Error("nobody");
  return found;
}
