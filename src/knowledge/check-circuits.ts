import type { CircuitNetwork } from "../domain/circuit.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import type { Problem } from "../domain/result.ts";
import { suggestion } from "./nearest-word.ts";

/**
 * Circuits and faults must speak of the same things: a fault that a circuit simulates stands in a
 * system file with `circuit: true`, and the other way round.
 */
export function checkCircuits(
  knowledge: Knowledge,
  circuits: ReadonlyMap<string, CircuitNetwork>,
): Problem[] {
  const simulated = new Set(
    [...circuits.values()].flatMap((circuit) => circuit.faults.map((fault) => fault.id)),
  );
  if (simulated.size === 0) return [];
  const unknown = [...simulated]
    .filter((id) => !knowledge.faults.has(id))
    .map((id) => ({
      file: "flows/circuits/faults.yaml",
      at: id,
      says: `No system file has the fault "${id}".${suggestion(id, knowledge.faults.keys())}`,
    }));
  const unmarked = [...knowledge.faults.values()]
    .filter((fault) => fault.circuit !== simulated.has(fault.id))
    .map((fault) => ({
      file: `flows/systems/${fault.system}.yaml`,
      at: `faults.${fault.id}`,
      says: fault.circuit
        ? `"${fault.id}" says "circuit: true", but no circuit simulates it.`
        : `A circuit simulates "${fault.id}"; add "circuit: true".`,
    }));
  return [...unknown, ...unmarked];
}
