import type { Effect, OutboxEntry } from "../domain/effects.ts";
import type { Target } from "./ports.ts";

/** A waiting effect and the document it waits in. */
export interface Pending {
  readonly source: Target;
  readonly entry: OutboxEntry;
}

/** The queue an effect waits in: one per chat, one per document that is told something. */
export function laneOf(effect: Effect): string {
  return effect.do === "tell" ? keyOf(effect.document) : `chat/${effect.to.chat}`;
}

/** One name for a document over all kinds. */
export const keyOf = (target: Target): string => `${target.kind}/${target.id}`;

export interface Lanes {
  /** Takes over a document's outbox as it is now; tells which lanes hold anything of it. */
  take(source: Target, outbox: readonly OutboxEntry[]): readonly string[];
  /** What waits in a lane, in its order. */
  pending(lane: string): readonly Pending[];
  /** Lanes with something waiting. */
  names(): readonly string[];
  /** The next position in a lane's order; never the same twice. */
  nextSequence(lane: string): number;
}

/** The waiting effects of all documents, by lane. Derived; nothing here is stored. */
export function createLanes(): Lanes {
  const waiting = new Map<string, Map<string, Pending>>();
  const last = new Map<string, number>();
  const homes = new Map<string, ReadonlySet<string>>();

  function clear(source: string): void {
    for (const lane of homes.get(source) ?? []) {
      const entries = waiting.get(lane);
      for (const [id, pending] of entries ?? []) {
        if (keyOf(pending.source) === source) entries?.delete(id);
      }
      if (entries?.size === 0) waiting.delete(lane);
    }
    homes.delete(source);
  }

  return {
    take(source, outbox) {
      clear(keyOf(source));
      const lanes = new Set<string>();
      for (const entry of outbox) {
        const lane = laneOf(entry.effect);
        const entries = waiting.get(lane) ?? new Map<string, Pending>();
        waiting.set(lane, entries.set(entry.id, { source, entry }));
        last.set(lane, Math.max(last.get(lane) ?? 0, entry.sequence));
        lanes.add(lane);
      }
      if (lanes.size > 0) homes.set(keyOf(source), lanes);
      return [...lanes];
    },
    pending: (lane) =>
      [...(waiting.get(lane)?.values() ?? [])].sort((a, b) => a.entry.sequence - b.entry.sequence),
    names: () => [...waiting.keys()],
    nextSequence(lane) {
      const next = (last.get(lane) ?? 0) + 1;
      last.set(lane, next);
      return next;
    },
  };
}
