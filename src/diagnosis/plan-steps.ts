import type { PlanStep } from "../domain/triage.ts";
import type { Model } from "./model.ts";
import type { ActionNode, PlanNode } from "./plan-tree.ts";
import type { VisitProblem } from "./visit-problem.ts";

/** Steps reached less often than this are left to planning anew when it comes to that. */
const WORTH_SHOWING = 0.005;

export const CALL_FOR_HELP = "call-for-help";

type Then = { result: string; chance: number; next: string | null };

/** A step while its occurrences in the plan are being gathered. */
interface Gathered {
  readonly id: string;
  readonly kind: PlanStep["kind"];
  reached: number;
  /** By result: chance and where it leads most often. */
  readonly results: Map<string, { chance: number; readonly next: Map<string | null, number> }>;
}

/**
 * A plan as a list to work through: each check, remedy and opening-up once, in the order of the
 * most likely course, with what to do after each result. The plan is made anew after every result,
 * so what is rare is left out.
 */
export function planSteps(model: Model, visit: VisitProblem, root: PlanNode): readonly PlanStep[] {
  const steps = new Map<string, Gathered>();
  gather(visit, root, steps);
  const total = [...steps.values()].reduce((most, step) => Math.max(most, step.reached), 0);
  const shown = [...steps.values()].filter((step) => step.reached >= WORTH_SHOWING * total);
  const ids = new Set(shown.map((step) => step.id));
  return shown.map((step) => finished(model, step, { total, ids }));
}

/** Adds a node and everything after it; returns the id of its first step. */
function gather(visit: VisitProblem, node: PlanNode, steps: Map<string, Gathered>): string | null {
  if (node.kind === "done") return null;
  if (node.kind === "help") {
    stepFor(steps, { id: CALL_FOR_HELP, kind: "call-for-help" }).reached += node.mass;
    return CALL_FOR_HELP;
  }
  const action = visit.problem.actions[node.index];
  if (action === undefined) return null;
  const opened = node.opens < 0 ? undefined : visit.access[node.opens];
  if (opened !== undefined) {
    const step = stepFor(steps, { id: opened, kind: "open-up" });
    step.reached += node.mass;
    leadsTo(step, { result: "", mass: node.mass, next: action.id });
  }
  const step = stepFor(steps, { id: action.id, kind: action.kind });
  step.reached += node.mass;
  for (const branch of likelyFirst(node)) {
    const [look] = branch.node.kind === "done" ? node.looksFor : [];
    if (look !== undefined) stepFor(steps, { id: look, kind: "check" }).reached += branch.mass;
    const next = gather(visit, branch.node, steps);
    leadsTo(step, { result: branch.result, mass: branch.mass, next: look ?? next });
  }
  return opened ?? action.id;
}

function likelyFirst(node: ActionNode): ActionNode["branches"] {
  return [...node.branches].sort((a, b) => b.mass - a.mass || (a.result < b.result ? -1 : 1));
}

function stepFor(
  steps: Map<string, Gathered>,
  of: { readonly id: string; readonly kind: PlanStep["kind"] },
): Gathered {
  const known = steps.get(of.id);
  if (known !== undefined) return known;
  const step: Gathered = { ...of, reached: 0, results: new Map() };
  steps.set(of.id, step);
  return step;
}

function leadsTo(
  step: Gathered,
  by: { readonly result: string; readonly mass: number; readonly next: string | null },
): void {
  const result = step.results.get(by.result) ?? { chance: 0, next: new Map() };
  step.results.set(by.result, result);
  result.chance += by.mass;
  result.next.set(by.next, (result.next.get(by.next) ?? 0) + by.mass);
}

function finished(
  model: Model,
  step: Gathered,
  of: { readonly total: number; readonly ids: ReadonlySet<string> },
): PlanStep {
  const then = thenOf(step, of.ids);
  const base = {
    id: step.id,
    kind: step.kind,
    who: "technician",
    reached: step.reached / of.total,
  } as const;
  const { checks, acts, remedies, accessGroups, rates } = model.knowledge;
  const nothing = { tools: [], parts: [], hazards: [], cures: [] };
  if (step.kind === "check" || step.kind === "act") {
    const asked = step.kind === "check" ? checks.get(step.id) : acts.get(step.id);
    const { minutes = 0, tools = [], hazards = [] } = asked ?? {};
    return { ...base, ...nothing, minutes, tools, hazards, then };
  }
  if (step.kind === "remedy") {
    const remedy = remedies.get(step.id);
    const { minutes = 0, tools = [], parts = [], hazards = [] } = remedy ?? {};
    return { ...base, minutes, tools, parts, hazards, cures: curedBy(model, step.id), then };
  }
  const minutes =
    step.kind === "open-up" ? (accessGroups.get(step.id)?.minutes ?? 0) : rates.callForHelpMinutes;
  return { ...base, ...nothing, minutes, then: [] };
}

function curedBy(model: Model, remedy: string): readonly string[] {
  return model.hypotheses.faults
    .filter((id) => model.knowledge.faults.get(id)?.remedies.includes(remedy) === true)
    .sort();
}

function thenOf(step: Gathered, shown: ReadonlySet<string>): readonly Then[] {
  return [...step.results]
    .map(([result, { chance, next }]): Then => {
      const [likely] = [...next].sort(
        (a, b) => b[1] - a[1] || (String(a[0]) < String(b[0]) ? -1 : 1),
      );
      const id = likely?.[0] ?? null;
      const leadsOn = id !== null && !shown.has(id) ? CALL_FOR_HELP : id;
      return { result, chance: chance / step.reached, next: leadsOn };
    })
    .filter(({ chance }) => chance > 0)
    .sort((a, b) => b.chance - a.chance || (a.result < b.result ? -1 : 1));
}
