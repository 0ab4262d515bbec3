import { describe, expect, it } from "vitest";
import { createLanes, laneOf } from "../../src/cases/lanes.ts";
import type { OutboxEntry } from "../../src/domain/effects.ts";
import { say } from "../helpers/office-parts.ts";

const source = { kind: "case", id: "A1" } as const;
const entry = (id: string, sequence: number, chat = "1"): OutboxEntry => ({
  id,
  effect: say(id, chat).effect,
  sequence,
  notBefore: 0,
  attempts: 0,
});

describe("lanes", () => {
  it("are one per chat, whatever the topic, and one per document that is told something", () => {
    expect(laneOf(say("x", "7").effect)).toBe("chat/7");
    expect(laneOf({ do: "tell", document: source, event: null })).toBe("case/A1");
  });

  it("hold what documents have to send, in order over all documents", () => {
    const lanes = createLanes();
    lanes.take(source, [entry("a", 1), entry("c", 3), entry("x", 2, "2")]);
    lanes.take({ kind: "shop", id: "shop" }, [entry("b", 2)]);
    expect(lanes.pending("chat/1").map((pending) => pending.entry.id)).toEqual(["a", "b", "c"]);
    expect(lanes.names()).toEqual(["chat/1", "chat/2"]);
  });

  it("forget what a document no longer has to send", () => {
    const lanes = createLanes();
    expect(lanes.take(source, [entry("a", 1), entry("x", 1, "2")])).toEqual(["chat/1", "chat/2"]);
    expect(lanes.take(source, [entry("a", 1)])).toEqual(["chat/1"]);
    expect(lanes.names()).toEqual(["chat/1"]);
    lanes.take(source, []);
    expect(lanes.names()).toEqual([]);
  });

  it("never give a place twice, not even after everything was sent", () => {
    const lanes = createLanes();
    lanes.take(source, [entry("a", 41)]);
    expect(lanes.nextSequence("chat/1")).toBe(42);
    lanes.take(source, []);
    expect(lanes.nextSequence("chat/1")).toBe(43);
    expect(lanes.nextSequence("chat/2")).toBe(1);
  });
});
