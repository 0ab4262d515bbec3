import type { CaseState } from "../domain/case-state.ts";
import type { Report } from "../domain/evidence.ts";
import type { MachineKindId } from "../domain/vocabulary.ts";
import { minutesOnSite } from "../talk/minutes-on-site.ts";

/** What the report and the learning need of a case. */
export interface CaseFigures
  extends Pick<CaseState, "id" | "closed" | "confirmed" | "foreseen" | "cutShort"> {
  readonly operator: string;
  readonly kind: MachineKindId;
  /** The machine of the operator's own list; null: only its kind is known. */
  readonly profile: string | null;
  readonly openedAt: number;
  /** Repairs that did not make it run. */
  readonly triedInVain: number;
  /** At the machine, over all visits. */
  readonly minutes: number | null;
  /** What was told before anything was done to the machine. */
  readonly reports: readonly Report[];
  /** The operator said later that it came back. */
  readonly toldOfComeback: boolean;
}

export function figuresOf(state: CaseState): CaseFigures {
  const { id, closed, confirmed, foreseen, cutShort, profile } = state;
  return {
    ...{ id, closed, confirmed, foreseen, cutShort, profile },
    operator: state.operator.id,
    kind: state.machine.kind ?? "other",
    openedAt: state.opened.at,
    triedInVain: state.remediesDone.filter((done) => !done.ran).length,
    minutes: state.work.minutes ?? minutesOnSite(state),
    reports: state.answers.map((given) => given.report).filter((report) => report.epoch === 0),
    toldOfComeback: state.aftermath === "came-back",
  };
}

const DAY_MS = 24 * 60 * 60 * 1000;
/** Ends after which nothing can come back. */
const nothingDone: ReadonlySet<string> = new Set(["called-off", "duplicate"]);

/**
 * True where the later case is about the machine of the earlier one. A machine that was told of once
 * is remembered under the number of that case; where the later case does not say which machine it
 * is, the same kind of the same person is taken for the same.
 */
function isSameMachine(earlier: CaseFigures, later: CaseFigures): boolean {
  if (later.profile === null) return earlier.kind === later.kind;
  return later.profile === (earlier.profile ?? earlier.id);
}

/**
 * Closed cases whose trouble came back: the same person's machine with the same complaint was
 * reported again within the window, or the operator said so.
 */
export function comebacksIn(all: readonly CaseFigures[], windowDays: number): ReadonlySet<string> {
  const back = new Set(all.filter((one) => one.toldOfComeback).map((one) => one.id));
  const earlier = new Map<string, CaseFigures[]>();
  for (const one of [...all].sort((a, b) => a.openedAt - b.openedAt || (a.id < b.id ? -1 : 1))) {
    const { closed, operator } = one;
    if (closed === null || nothingDone.has(closed.end) || operator === "") continue;
    const key = `${operator}|${closed.complaint}`;
    const others = earlier.get(key) ?? [];
    const before = others.findLast((other) => isSameMachine(other, one));
    const since = one.openedAt - (before?.closed?.at ?? Number.NEGATIVE_INFINITY);
    if (before !== undefined && since <= windowDays * DAY_MS) back.add(before.id);
    earlier.set(key, [...others, one]);
  }
  return back;
}
