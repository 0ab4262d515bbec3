import type { ActDone } from "../domain/evidence.ts";
import type { Act, Knowledge } from "../domain/knowledge.ts";
import { UnknownId } from "../domain/result.ts";

/** What the engine needs of something that was done to the machine. */
export type Done = Pick<Act, "id" | "yields" | "cures" | "masks" | "makesStale" | "inCircuit">;

/** A repair that was carried out: it would have cured the faults it is listed under. */
function repair(knowledge: Knowledge, id: string): Done | null {
  const remedy = knowledge.remedies.get(id);
  if (remedy === undefined) return null;
  const faults = [...knowledge.faults.values()].filter((fault) => fault.remedies.includes(id));
  const { inCircuit } = remedy;
  const same = [...knowledge.acts.values()].find((act) => act.inCircuit === inCircuit);
  return {
    id,
    cures: new Map(faults.map((fault) => [fault.id, remedy.cures])),
    masks: new Map(),
    makesStale: inCircuit === undefined ? [] : (same?.makesStale ?? []),
    ...(inCircuit === undefined ? {} : { inCircuit }),
  };
}

/**
 * The act or repair behind something that was done. Where it changed nothing, nothing is stale:
 * the machine still does what was told before.
 * @throws UnknownId where the knowledge has neither
 */
export function doneAct(knowledge: Knowledge, done: ActDone): Done {
  const act = knowledge.acts.get(done.act) ?? repair(knowledge, done.act);
  if (act === null) throw new UnknownId("act", done.act);
  return done.outcome === "no-change" ? { ...act, makesStale: [] } : act;
}
