import type { CaseState } from "../domain/case-state.ts";

const DAY_MS = 24 * 60 * 60 * 1000;

/** Figures over all cases of a shop; every one can be recomputed from the events. */
export interface ShopReport {
  readonly cases: number;
  readonly open: number;
  readonly closed: number;
  readonly byEnd: Readonly<Record<string, number>>;
  /** Closed by chat or safe self-help, of all closed with a known end. */
  readonly solvedByChat: number;
  /** Closed after a visit in which the first repair already made it run, of all visits. */
  readonly firstRepairFix: number;
  /** The same person's machine of the same kind with the same complaint again within the window. */
  readonly comebacks: number;
  readonly causes: readonly {
    readonly machine: string;
    readonly fault: string;
    readonly count: number;
  }[];
}

const complaintKey = (state: CaseState) =>
  [state.operator.id, state.machine.kind ?? "other", state.closed?.complaint ?? ""].join("|");

function countComebacks(states: readonly CaseState[], days: number): number {
  const closed = states
    .filter((state) => state.closed !== null && state.closed.end !== "called-off")
    .sort((a, b) => a.opened.at - b.opened.at);
  const last = new Map<string, number>();
  let comebacks = 0;
  for (const state of closed) {
    const key = complaintKey(state);
    const before = last.get(key);
    if (before !== undefined && state.opened.at - before <= days * DAY_MS) comebacks += 1;
    last.set(key, state.closed?.at ?? 0);
  }
  return comebacks;
}

function countCauses(states: readonly CaseState[]): ShopReport["causes"] {
  const counts = new Map<string, number>();
  for (const state of states) {
    for (const fault of state.confirmed?.faults ?? []) {
      const key = `${state.machine.kind ?? "other"}|${fault}`;
      counts.set(key, (counts.get(key) ?? 0) + 1);
    }
  }
  return [...counts]
    .sort(([a, n], [b, m]) => m - n || a.localeCompare(b))
    .map(([key, count]) => {
      const [machine = "", fault = ""] = key.split("|");
      return { machine, fault, count };
    });
}

/** Adds the cases of a shop up. @param comebackDays the window of the shop's settings */
export function reportOn(states: readonly CaseState[], comebackDays: number): ShopReport {
  const closed = states.filter((state) => state.closed !== null);
  const byEnd: Record<string, number> = {};
  for (const { closed: end } of closed) {
    if (end !== null) byEnd[end.end] = (byEnd[end.end] ?? 0) + 1;
  }
  const visits = closed.filter((state) => state.closed?.end === "visit");
  const first = visits.filter((state) => state.remediesDone.filter((one) => !one.ran).length === 0);
  const share = (part: number, whole: number) => (whole === 0 ? 0 : part / whole);
  return {
    cases: states.length,
    open: states.length - closed.length,
    closed: closed.length,
    byEnd,
    solvedByChat: share(byEnd["solved-by-chat"] ?? 0, closed.length - (byEnd["called-off"] ?? 0)),
    firstRepairFix: share(first.length, visits.length),
    comebacks: countComebacks(states, comebackDays),
    causes: countCauses(closed),
  };
}
