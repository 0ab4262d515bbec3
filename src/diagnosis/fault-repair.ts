import type { Fault, Knowledge, Remedy, Row } from "../domain/knowledge.ts";
import { UnknownId } from "../domain/result.ts";

/** How a fault is found and mended, in technician-minutes; the short form for estimates. */
export interface FaultRepair {
  readonly fault: string;
  /** The remedy with the least expected minutes; null: none is known. */
  readonly remedy: Remedy | null;
  /** Minutes to learn whether it is this fault: its cheapest telling check, or the remedy itself. */
  readonly lookMinutes: number;
  /** The telling check; null where trying the remedy is cheaper. */
  readonly lookCheck: string | null;
  /** Minutes for mending it once it is known. */
  readonly fixMinutes: number;
  /** Parts it needs that are not on every van. */
  readonly parts: readonly string[];
}

/** A check tells a fault where at least this much of the answers differs from the usual ones. */
const TELLING_DIFFERENCE = 0.6;

/**
 * How each fault is found and mended.
 * @param faults fault ids, in the order of the result
 */
export function faultRepairs(
  knowledge: Knowledge,
  faults: readonly string[],
): readonly FaultRepair[] {
  const byObservation = cheapestChecks(knowledge);
  return faults.map((id) => {
    const fault = knowledge.faults.get(id);
    if (fault === undefined) throw new UnknownId("fault", id);
    return repairOf(knowledge, fault, byObservation);
  });
}

interface Look {
  readonly check: string;
  readonly minutes: number;
  readonly usual: Row;
}

function cheapestChecks(knowledge: Knowledge): ReadonlyMap<string, Look> {
  const looks = new Map<string, Look>();
  for (const check of knowledge.checks.values()) {
    const observation = knowledge.observations.get(check.yields);
    if (observation === undefined) throw new UnknownId("observation", check.yields);
    if (!check.performers.includes("technician") || observation.context) continue;
    const minutes = check.minutes + accessMinutes(knowledge, check.access);
    const known = looks.get(check.yields);
    if (known === undefined || minutes < known.minutes) {
      looks.set(check.yields, { check: check.id, minutes, usual: observation.usual });
    }
  }
  return looks;
}

/** Minutes for opening up a place; 0 where nothing is in the way. */
export function accessMinutes(knowledge: Knowledge, access: string | undefined): number {
  if (access === undefined) return 0;
  const group = knowledge.accessGroups.get(access);
  if (group === undefined) throw new UnknownId("access group", access);
  return group.minutes;
}

/** The remedies of a fault, the one with the least expected minutes first. */
export function remediesOf(knowledge: Knowledge, fault: Fault): readonly Remedy[] {
  return fault.remedies
    .map((id) => {
      const remedy = knowledge.remedies.get(id);
      if (remedy === undefined) throw new UnknownId("remedy", id);
      return remedy;
    })
    .sort((a, b) => a.minutes / a.cures - b.minutes / b.cures || (a.id < b.id ? -1 : 1));
}

function repairOf(
  knowledge: Knowledge,
  fault: Fault,
  looks: ReadonlyMap<string, Look>,
): FaultRepair {
  const remedy = remediesOf(knowledge, fault)[0] ?? null;
  const fixMinutes =
    remedy === null
      ? knowledge.rates.callForHelpMinutes
      : remedy.minutes + accessMinutes(knowledge, remedy.access);
  const look = cheapestTelling(fault, looks);
  const direct = look === null || look.minutes >= fixMinutes;
  return {
    fault: fault.id,
    remedy,
    lookMinutes: direct ? fixMinutes : look.minutes,
    lookCheck: direct ? null : look.check,
    fixMinutes: direct ? 0 : fixMinutes,
    parts: (remedy?.parts ?? []).filter((id) => knowledge.parts.get(id)?.universal !== true),
  };
}

function cheapestTelling(fault: Fault, looks: ReadonlyMap<string, Look>): Look | null {
  let best: Look | null = null;
  for (const [observation, row] of fault.rows) {
    const look = looks.get(observation);
    if (look === undefined || (best !== null && look.minutes >= best.minutes)) continue;
    if (difference(row, look.usual) >= TELLING_DIFFERENCE) best = look;
  }
  return best;
}

/** Total variation distance of two rows, in [0, 1] for distributions. */
function difference(a: Row, b: Row): number {
  return a.reduce((sum, value, s) => sum + Math.abs(value - (b[s] ?? 0)), 0) / 2;
}
