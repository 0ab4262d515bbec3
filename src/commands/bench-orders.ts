import { updateBelief } from "../diagnosis/belief.ts";
import { channelOf, seenNow } from "../diagnosis/channel.ts";
import { compileModel } from "../diagnosis/compile.ts";
import type { Model } from "../diagnosis/model.ts";
import { createRandom } from "../diagnosis/random.ts";
import type { RepairProblem } from "../diagnosis/repair-problem.ts";
import { solveRepair } from "../diagnosis/repair-search.ts";
import { visitProblem } from "../diagnosis/visit-problem.ts";
import type { Evidence, Situation } from "../domain/evidence.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import { type CauseGroup, type MachineKindId, ON_START } from "../domain/vocabulary.ts";
import { draw } from "./synthetic-knowledge.ts";
import { followPlan, type Suspect, type Trouble, workThrough } from "./work-orders.ts";

/** Mean minutes until the machine runs, by who decides the order of work. */
export interface OrderCosts {
  readonly engine: number;
  readonly probable: number;
  readonly cheap: number;
  readonly customary: number;
}

/**
 * The order of a service manual's no-start chart: battery, joints, (bypass: a test, no cause),
 * solenoid, switch, starter. What the chart does not hold comes after, most probable first.
 * Common practice.
 */
const CUSTOMARY: readonly CauseGroup[] = [
  "battery",
  "terminals",
  "ground",
  "power-cable",
  "relay-solenoid",
  "key-switch",
  "starter-motor",
];

/** Things the operator told before the visit. */
const TOLD = 3;
const NODES = 3000;
/** Visits simulated for each call, all orders on the same troubles. */
const VISITS = 20;

/**
 * Suspects after which a fixed order calls for help; for each call the one that suits the order
 * best, known only afterwards, is taken: an advantage over the plan, which must decide before.
 */
const CUTS = [0, 2, 4, 8, 16, Infinity];

const technician: Situation = {
  performer: "technician",
  place: "at-machine",
  has: ["meter", "charger", "leads", "second-person"],
  asked: [],
  refused: [],
  urgency: "normal",
};

/**
 * Simulated calls: a machine, a trouble, what its operator tells, then the same visits worked by
 * the engine's plan and in three fixed orders. In these, each cause is looked for by its telling
 * check where there is one, and mended when the check makes it more likely than not.
 */
export function compareOrders(
  knowledge: Knowledge,
  options: { readonly calls: number; readonly seed: number },
): OrderCosts {
  const random = createRandom(options.seed);
  const kinds = [...knowledge.machines.keys()];
  const models = new Map<MachineKindId, Model>();
  const sums = { engine: 0, probable: 0, cheap: 0, customary: 0 };
  for (let call = 0; call < options.calls; call++) {
    const kind = kinds[call % Math.max(1, kinds.length)] ?? "other";
    const model = models.get(kind) ?? compileModel(knowledge, { kind });
    models.set(kind, model);
    const costs = oneCall(model, random);
    sums.engine += costs.engine / options.calls;
    sums.probable += costs.probable / options.calls;
    sums.cheap += costs.cheap / options.calls;
    sums.customary += costs.customary / options.calls;
  }
  return sums;
}

function oneCall(model: Model, random: () => number): OrderCosts {
  const evidence = tellSome(model, random);
  const { probability } = updateBelief(model, evidence);
  const parts = new Set(model.knowledge.parts.keys());
  const at = { situation: technician, probability, onBoard: parts };
  const { problem } = visitProblem(model, evidence, at);
  const { root } = solveRepair(problem, NODES);
  const orders = ordersOf(model, problem, probability);
  const total = problem.weights.reduce((sum, weight) => sum + weight, 0);
  const troubles = Array.from({ length: VISITS }, (): Trouble => {
    const truth = draw(
      [...problem.weights].map((weight) => weight / total),
      random(),
    );
    return { truth, seed: Math.floor(random() * 2 ** 31) };
  });
  const mean = (minutes: (trouble: Trouble) => number): number =>
    troubles.reduce((sum, trouble) => sum + minutes(trouble), 0) / VISITS;
  const fixed = (order: readonly Suspect[]): number =>
    Math.min(...CUTS.map((cut) => mean((t) => workThrough(problem, order.slice(0, cut), t))));
  return {
    engine: mean((trouble) => followPlan(problem, root, trouble)),
    probable: fixed(orders.probable),
    cheap: fixed(orders.cheap),
    customary: fixed(orders.customary),
  };
}

/** What an operator with a random trouble says of how it starts and of two other things. */
function tellSome(model: Model, random: () => number): Evidence {
  const { prior } = model.hypotheses;
  const truth = draw([...prior], random());
  const asked = [...model.knowledge.checks.values()]
    .filter(
      (check) => check.performers.includes("operator") && model.observations.has(check.yields),
    )
    .map((check) => check.yields)
    .filter((id) => id !== ON_START && model.observations.get(id)?.isList === false);
  const first = model.observations.has(ON_START) ? [ON_START] : [];
  let evidence: Evidence = { reports: [], acts: [] };
  for (const observation of [...first, ...new Set(asked)].slice(0, TOLD)) {
    const channel = channelOf(model, seenNow(model, evidence), {
      observation,
      reporter: "operator",
    });
    const row = channel.outcomes.map((_, outcome) => channel.chance(truth, outcome));
    const state = channel.outcomes[draw(row, random())] ?? "";
    const said = { kind: "states", weights: { [state]: 1 } } as const;
    const report = { observation, epoch: 0, reporter: "operator", said, hedge: 0 } as const;
    evidence = { ...evidence, reports: [...evidence.reports, report] };
  }
  return evidence;
}

/** The suspects of a visit in three orders. */
function ordersOf(model: Model, problem: RepairProblem, probability: Float64Array) {
  const indexOf = new Map(problem.actions.map((action, index) => [action.id, index]));
  const suspects = model.repairs.flatMap((repair, fault) => {
    const remedy = indexOf.get(repair.remedy?.id ?? "");
    const look = indexOf.get(repair.lookCheck ?? "") ?? -1;
    return remedy === undefined ? [] : [{ fault, look, remedy }];
  });
  const chance = ({ fault }: { readonly fault: number }): number => probability[fault + 1] ?? 0;
  const minutes = ({ look, remedy }: Suspect): number =>
    problem.actions[look < 0 ? remedy : look]?.cost ?? 0;
  const rank = ({ fault }: { readonly fault: number }): number => {
    const id = model.hypotheses.faults[fault] ?? "";
    const at = CUSTOMARY.indexOf(model.knowledge.faults.get(id)?.group ?? "other");
    return at < 0 ? CUSTOMARY.length : at;
  };
  const probable = [...suspects].sort((a, b) => chance(b) - chance(a) || a.fault - b.fault);
  return {
    probable,
    cheap: [...probable].sort((a, b) => minutes(a) - minutes(b)),
    customary: [...probable].sort((a, b) => rank(a) - rank(b)),
  };
}
