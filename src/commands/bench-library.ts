import { createRequire } from "node:module";
import { updateBelief } from "../diagnosis/belief.ts";
import { compileModel } from "../diagnosis/compile.ts";
import type { Evidence } from "../domain/evidence.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import { syntheticAnswers, syntheticKnowledge } from "./synthetic-knowledge.ts";

/** A general-purpose Bayesian-network library, present where development packages are installed. */
const LIBRARY = "bayesjs";

interface Node {
  readonly id: string;
  readonly states: readonly string[];
  readonly parents: readonly string[];
  readonly cpt: unknown;
}

type Network = Readonly<Record<string, Node>>;
type Infer = (network: Network, asked: object, given: object) => number;

const SIZE = { faults: 12, observations: 12, answers: 8 };
const REPEATS = { library: 3, engine: 300 };

/**
 * Time for the posterior of every cause, by the library's variable elimination and by the engine,
 * on one network both hold: a cause, its observations and what was told of them.
 */
export function compareLibrary({ seed }: { readonly seed: number }): {
  readonly name: string;
  readonly ratio: number | null;
} {
  const infer = loadInfer();
  if (infer === null) return { name: LIBRARY, ratio: null };
  const knowledge = syntheticKnowledge({ ...SIZE, pairs: false, seed });
  const certain = { ...knowledge, rates: { ...knowledge.rates, somethingElse: 0 } };
  const evidence = syntheticAnswers(certain, SIZE.answers, seed);
  const model = compileModel(certain, { kind: "other" });
  const network = networkOf(certain, model.hypotheses.prior);
  const heard = heardOf(evidence);
  const causes = network["cause"]?.states ?? [];
  const library = secondsOf(
    () => causes.map((cause) => infer(network, { cause }, heard)),
    REPEATS.library,
  );
  const engine = secondsOf(() => updateBelief(model, evidence), REPEATS.engine);
  return { name: LIBRARY, ratio: library / engine };
}

function loadInfer(): Infer | null {
  const require = createRequire(import.meta.url);
  let found: unknown;
  try {
    found = require(LIBRARY);
  } catch {
    return null;
  }
  return inferOf(found);
}

function inferOf(found: unknown): Infer | null {
  const at = (from: unknown, key: string): unknown =>
    typeof from === "object" && from !== null ? Reflect.get(from, key) : undefined;
  const infer = at(at(at(found, "inferences"), "variableElimination"), "infer");
  if (typeof infer !== "function") return null;
  return (network, asked, given) => Number(Reflect.apply(infer, null, [network, asked, given]));
}

function networkOf(knowledge: Knowledge, prior: Float64Array): Network {
  const causes = ["nothing", ...knowledge.faults.keys()];
  const nodes: Node[] = [
    { id: "cause", states: causes, parents: [], cpt: distribution(causes, [...prior]) },
  ];
  for (const observation of knowledge.observations.values()) {
    const states = observation.states.map((state) => state.id);
    const truth = `true ${observation.id}`;
    const truths = causes.map((cause) => ({
      when: { cause },
      then: distribution(
        states,
        knowledge.faults.get(cause)?.rows.get(observation.id) ?? observation.usual,
      ),
    }));
    const told = states.map((state, t) => ({
      when: { [truth]: state },
      then: distribution(states, observation.confusion.operator[t] ?? []),
    }));
    nodes.push({ id: truth, states, parents: ["cause"], cpt: truths });
    nodes.push({ id: observation.id, states, parents: [truth], cpt: told });
  }
  return Object.fromEntries(nodes.map((node) => [node.id, node]));
}

function distribution(states: readonly string[], row: readonly number[]): Record<string, number> {
  return Object.fromEntries(states.map((state, s) => [state, row[s] ?? 0]));
}

function heardOf(evidence: Evidence): Record<string, string> {
  return Object.fromEntries(
    evidence.reports.map(({ observation, said }) => [
      observation,
      said.kind === "states" ? (Object.keys(said.weights)[0] ?? "") : "",
    ]),
  );
}

function secondsOf(call: () => unknown, repeats: number): number {
  call();
  const before = performance.now();
  for (let i = 0; i < repeats; i++) call();
  return (performance.now() - before) / 1000 / repeats;
}
