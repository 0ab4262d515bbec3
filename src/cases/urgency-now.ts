import { type Moment, type ReckonUrgency, urgencyFacts } from "../talk/urgency.ts";
import type { CaseSummary } from "./case-summary.ts";

export type Level = "low" | "normal" | "high";

const HOUR = 60 * 60 * 1000;

/** How urgent a case is at a moment, and until when it stays so within the same month. */
export interface Reckoned {
  readonly level: Level;
  /** Milliseconds since 1970 UTC; Infinity: as long as nothing happens in the case. */
  readonly until: number;
}

export type UrgencyNow = (one: CaseSummary, moment: Moment) => Reckoned;

/**
 * Urgency by the shop's rules, and as said where it has none.
 * @param rules the shop's; the same as long as the program runs
 */
export function createUrgencyNow(rules: () => ReckonUrgency | undefined): UrgencyNow {
  return (one, moment) => {
    const urgency = rules()?.(urgencyFacts(one, moment));
    if (urgency === undefined) {
      return { level: one.urgency ?? "normal", until: Number.POSITIVE_INFINITY };
    }
    return { level: urgency.level, until: one.openedAt + urgency.untilHours * HOUR };
  };
}
