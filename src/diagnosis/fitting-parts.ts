import type { MachineFacts } from "../domain/evidence.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import { chanceHolds } from "./machine-condition.ts";

/**
 * The knowledge for one machine: no remedy asks for a part that such a machine cannot have, as a
 * carburettor set on a diesel whose cylinder is cleared of water.
 */
export function withFittingParts(knowledge: Knowledge, facts: MachineFacts): Knowledge {
  const kind = knowledge.machines.get(facts.kind);
  const foreign = new Set(
    [...knowledge.parts.values()].flatMap(({ id, needs }) =>
      chanceHolds(needs, facts, kind, 1) > 0 ? [] : [id],
    ),
  );
  if (foreign.size === 0) return knowledge;
  const remedies = [...knowledge.remedies].map(([id, remedy]) => {
    const parts = remedy.parts.filter((part) => !foreign.has(part));
    return [id, { ...remedy, parts }] as const;
  });
  return { ...knowledge, remedies: new Map(remedies) };
}
