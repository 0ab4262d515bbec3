import { type ActionNode, CURED, type PlanNode } from "../diagnosis/plan-tree.ts";
import { createRandom } from "../diagnosis/random.ts";
import {
  costOf,
  curedMass,
  massOf,
  type RepairAction,
  type RepairProblem,
} from "../diagnosis/repair-problem.ts";

/** What is really wrong on one simulated visit, and what its chances hang on. */
export interface Trouble {
  /** Index of the trouble in the problem. */
  readonly truth: number;
  readonly seed: number;
}

/** One cause in a fixed order, as indices of actions. */
export interface Suspect {
  /** Its telling check; -1: trying the remedy is the test. */
  readonly look: number;
  readonly remedy: number;
}

/** Minutes until the machine runs, following a plan. */
export function followPlan(problem: RepairProblem, root: PlanNode, trouble: Trouble): number {
  const visit = new Visit(problem, trouble);
  let node = root;
  while (node.kind === "action") {
    const result = visit.carryOut(node.index, node.looksFor.length > 0);
    node = nextNode(node, result);
  }
  return visit.ended ? visit.minutes : visit.minutes + problem.helpCost;
}

function nextNode(node: ActionNode, result: string): PlanNode {
  if (result === CURED) return { kind: "done" };
  return node.branches.find((branch) => branch.result === result)?.node ?? { kind: "done" };
}

/**
 * Minutes until the machine runs, suspects looked at in a fixed order: each by its check, mended at
 * once where the check makes it more likely than not. If none is found so, all remedies in turn,
 * then help.
 */
export function workThrough(
  problem: RepairProblem,
  order: readonly Suspect[],
  trouble: Trouble,
): number {
  const visit = new Visit(problem, trouble);
  for (const { look, remedy } of order) {
    if (visit.ended) return visit.minutes;
    if (look >= 0) visit.carryOut(look, false);
    if (look < 0 || visit.likely(remedy)) visit.carryOut(remedy, false);
  }
  for (const { remedy } of order) {
    if (visit.ended) return visit.minutes;
    visit.carryOut(remedy, false);
  }
  return visit.ended ? visit.minutes : visit.minutes + problem.helpCost;
}

/** A visit as it goes, with what the technician may think of it. */
class Visit {
  minutes = 0;
  ended = false;
  readonly #problem: RepairProblem;
  readonly #seed: number;
  readonly #weights: Float64Array;
  readonly #done = new Set<number>();
  readonly #opened: Uint8Array;
  #fetched = false;
  #truth: number;

  constructor(problem: RepairProblem, trouble: Trouble) {
    this.#problem = problem;
    this.#seed = trouble.seed;
    this.#truth = trouble.truth;
    this.#weights = Float64Array.from(problem.weights);
    this.#opened = new Uint8Array(problem.accessCosts.length);
  }

  /** True where the remedy would more likely than not end it, by what was found so far. */
  likely(remedy: number): boolean {
    const effect = this.#problem.actions[remedy]?.effect;
    return (
      effect?.kind === "cure" && curedMass(effect, this.#weights) > 0.5 * massOf(this.#weights)
    );
  }

  /** Does it, once; the result is a check's, or whether a remedy cured. */
  carryOut(index: number, looksForCauses: boolean): string {
    const action = this.#problem.actions[index];
    if (action === undefined || this.#done.has(index)) return "";
    this.minutes += costOf(this.#problem, { opened: this.#opened, fetched: this.#fetched }, action);
    this.#done.add(index);
    this.#fetched ||= action.away;
    if (action.access >= 0) this.#opened[action.access] = 1;
    // The same action on the same trouble always turns out the same, whoever orders it.
    const at = createRandom(this.#seed + 7919 * (index + 1))();
    return action.effect.kind === "test"
      ? this.#test(action.effect, at)
      : this.#cure(action.effect, at, looksForCauses);
  }

  #test({ results }: Extract<RepairAction["effect"], { kind: "test" }>, at: number): string {
    let left = at;
    for (const { id, chance } of results) {
      left -= chance[this.#truth] ?? 0;
      if (left >= 0) continue;
      for (let i = 0; i < this.#weights.length; i++) {
        this.#weights[i] = (this.#weights[i] ?? 0) * (chance[i] ?? 0);
      }
      return id;
    }
    return "";
  }

  #cure(
    cure: Extract<RepairAction["effect"], { kind: "cure" }>,
    at: number,
    looksForCauses: boolean,
  ): string {
    const place = cure.troubles.indexOf(this.#truth);
    const works = place >= 0 && at < (cure.chance[place] ?? 0);
    for (const [k, trouble] of cure.troubles.entries()) {
      this.#weights[trouble] = (this.#weights[trouble] ?? 0) * (1 - (cure.chance[k] ?? 0));
    }
    if (!works) return "no-change";
    const left = cure.leaves[place] ?? -1;
    if (left >= 0) {
      this.#truth = left;
      this.#weights[left] = Math.max(this.#weights[left] ?? 0, 1e-6);
      return "no-change";
    }
    this.ended = true;
    for (const hidden of cure.hidden) {
      const there = hidden.troubles.includes(this.#truth);
      if (looksForCauses) this.minutes += hidden.lookCost + (there ? hidden.fixCost : 0);
      else if (there) this.minutes += hidden.comebackCost;
    }
    return CURED;
  }
}
