import type { Evidence, MachineFacts } from "../domain/evidence.ts";
import type { Act, Knowledge, Refusal, StateCondition } from "../domain/knowledge.ts";
import { chanceHolds } from "./machine-condition.ts";

/** A machine of which this is likelier than not is treated as such. */
const PROBABLY = 0.5;

/** A state that was told with at least this weight counts as told. */
const MEANT = 0.5;

/**
 * Why an operator must leave an act to the shop: the first of its refusals whose machine condition
 * probably holds and of which everything was told. An age nobody knows does not refuse.
 */
export function refusalOf(
  act: Act,
  machine: MachineFacts,
  { evidence, knowledge }: { readonly evidence: Evidence; readonly knowledge: Knowledge },
): Refusal | undefined {
  const kind = knowledge.machines.get(machine.kind);
  return act.refusals?.find(
    ({ when, told }) =>
      (when === undefined || chanceHolds(when, machine, kind, 0) >= PROBABLY) &&
      told.every((condition) => wasTold(condition, evidence)),
  );
}

function wasTold({ observation, anyOf }: StateCondition, { reports }: Evidence): boolean {
  const said = reports.findLast((report) => report.observation === observation)?.said;
  if (said === undefined) return false;
  if (said.kind === "members") return said.present.some((member) => anyOf.includes(member));
  if (said.kind !== "states") return false;
  return anyOf.reduce((sum, state) => sum + (said.weights[state] ?? 0), 0) >= MEANT;
}
