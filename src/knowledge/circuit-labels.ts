import type { CircuitNetwork } from "../domain/circuit.ts";
import { type Knowledge, type Titled, wordKey } from "../domain/knowledge.ts";

/** The key under which a language says a label: `circuit-plus-clamp`. */
export function labelKey(label: string): string {
  return wordKey("circuit", idOf(label));
}

function idOf(label: string): string {
  return label
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-|-$/g, "");
}

/** The knowledge with what the drawings of starting circuits call their parts: words like all others. */
export function withCircuitLabels(
  knowledge: Knowledge,
  circuits: Iterable<CircuitNetwork>,
): Knowledge {
  const labels = new Map<string, Titled>();
  for (const { parts } of circuits) {
    for (const { hidden, label } of parts) {
      if (!hidden) labels.set(idOf(label), { id: idOf(label), title: label });
    }
  }
  return { ...knowledge, circuitLabels: labels };
}

/**
 * The circuit as a reader's language names its parts.
 * @param word what the language says for a key
 */
export function relabelled(network: CircuitNetwork, word: (key: string) => string): CircuitNetwork {
  return {
    ...network,
    parts: network.parts.map((part) =>
      part.hidden ? part : { ...part, label: word(labelKey(part.label)) },
    ),
  };
}
