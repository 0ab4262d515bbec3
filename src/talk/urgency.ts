import type { CaseState } from "../domain/case-state.ts";
import type { Urgency, UrgencyFacts } from "../domain/urgency.ts";

export type ReckonUrgency = (facts: UrgencyFacts) => Urgency;

type Call = Pick<CaseState, "machine" | "urgency" | "flags" | "aftermath" | "payment"> & {
  readonly openedAt: number;
};

const HOUR = 60 * 60 * 1000;

/** The time as the rules of urgency look at it. */
export interface Moment {
  /** Milliseconds since 1970 UTC. */
  readonly now: number;
  /** 1 to 12, at the machine. */
  readonly month: number;
}

/** @param now milliseconds since 1970 UTC */
export function momentIn(timeZone: string, now: number): Moment {
  const month = new Intl.DateTimeFormat("en-US", { timeZone, month: "numeric" }).format(now);
  return { now, month: Number(month) };
}

/** @param moment worked out once for a whole list: asking a calendar costs more than all the rest */
export function urgencyFacts(call: Call, { now, month }: Moment): UrgencyFacts {
  return {
    stated: call.urgency,
    kind: call.machine.kind ?? "other",
    month,
    flags: call.flags.map((flag) => flag.flag),
    comeback: call.aftermath === "came-back" || call.payment?.payer === "comeback",
    waitedHours: Math.max(0, (now - call.openedAt) / HOUR),
  };
}
