import { describe, expect, it } from "vitest";
import type { ReceptionParts } from "../../src/cases/reception.ts";
import { createReception } from "../../src/cases/reception.ts";
import type { Incoming } from "../../src/domain/incoming.ts";
import { createOfficeParts } from "../helpers/office-parts.ts";

const incoming = (update: string): Incoming => ({
  update,
  sentAt: 0,
  chat: "11",
  direct: true,
  from: { id: "11", name: "Ann", language: "de" },
  what: { kind: "text", text: "it clicks" },
});
class DiskTrouble extends Error {}

async function desk(handle: ReceptionParts["handle"]) {
  const parts = await createOfficeParts();
  const kept: unknown[] = [];
  const reported: unknown[] = [];
  const reception = createReception({
    ...parts,
    handle,
    quarantine: { put: async (record) => void kept.push(record) },
    apology: { key: "sorry" },
    isStorageTrouble: (error) => error instanceof DiskTrouble,
    report: (error) => void reported.push(error),
  });
  return { ...parts, reception, kept, reported };
}

describe("reception", () => {
  it("hands an update on and its answer back", async () => {
    const { reception } = await desk(async () => ({ toast: { key: "noted" } }));
    expect(await reception.receive(incoming("u1"))).toEqual({ toast: { key: "noted" } });
  });

  it("does not hand on what was applied before", async () => {
    let handled = 0;
    const { reception, commit } = await desk(async () => {
      handled++;
      return {};
    });
    const body = { name: "Ann", chat: "11", language: "en", machines: [], reachable: true };
    await commit({ kind: "person", id: "11" }, "u1", () => ({ body, effects: [] }));
    await reception.receive(incoming("u1"));
    expect(handled).toBe(0);
  });

  it("tries again, because once may be bad luck", async () => {
    let tries = 0;
    const { reception, kept } = await desk(async () => {
      if (++tries < 3) throw new Error("once");
      return { toast: { key: "noted" } };
    });
    expect(await reception.receive(incoming("u1"))).toEqual({ toast: { key: "noted" } });
    expect(kept).toEqual([]);
  });

  it("keeps a poisonous update aside, answers kindly, and blocks nobody", async () => {
    const { reception, kept, reported, store } = await desk(async ({ update }) => {
      if (update === "bad") throw new TypeError("cannot read x");
      return {};
    });
    const answer = await reception.receive(incoming("bad"));
    expect(answer).toEqual({ toast: { key: "sorry" }, language: "de" });
    expect(kept).toMatchObject([
      { incoming: { update: "bad" }, error: "TypeError: cannot read x" },
    ]);
    expect(reported).toHaveLength(3);
    const person = await store.load("person", "11");
    expect(person?.updates).toEqual(["bad"]);
    expect(person?.outbox[0]?.effect).toMatchObject({
      do: "say",
      to: { chat: "11" },
      language: "de",
      message: { lines: [{ say: { key: "sorry" } }] },
    });
    expect(await reception.receive(incoming("good"))).toEqual({});
    // When it comes again, it is known.
    await reception.receive(incoming("bad"));
    expect(kept).toHaveLength(1);
  });

  it("waits the storage's trouble out instead of losing what was said", async () => {
    let broken = true;
    const { reception, kept, timers } = await desk(async () => {
      if (broken) throw new DiskTrouble();
      return { toast: { key: "noted" } };
    });
    const answer = reception.receive(incoming("u1"));
    await timers.advance(10 * 60_000);
    broken = false;
    await timers.advance(60_000);
    expect(await answer).toEqual({ toast: { key: "noted" } });
    expect(kept).toEqual([]);
  });

  it("does not fail even when nothing works", async () => {
    const parts = await createOfficeParts();
    const reception = createReception({
      ...parts,
      handle: () => Promise.reject(new Error("no")),
      quarantine: { put: () => Promise.reject(new Error("no")) },
      apology: { key: "sorry" },
      isStorageTrouble: () => false,
      report: () => undefined,
    });
    expect(await reception.receive(incoming("u1"))).toEqual({});
  });
});
