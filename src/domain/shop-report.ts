import type { End } from "./case-events.ts";

/** A share of successes with its 95 % interval; without trials 0 to 1. */
export interface Share {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly of: number;
}

export interface Counted {
  readonly what: string;
  readonly count: number;
}

/** Figures over all cases of a shop; every one can be recomputed from the events. */
export interface ShopReport {
  readonly cases: number;
  readonly open: number;
  readonly closed: number;
  readonly byEnd: Readonly<Partial<Record<End, number>>>;
  /** Closed by chat or safe self-help, of all closed that were not called off or duplicates. */
  readonly solvedByChat: Share;
  /** Closed on the first visit and not come back, of all that were closed on a visit. */
  readonly firstVisitFix: Share;
  /** Closed after a visit in which the first repair already made it run, of all visits. */
  readonly firstRepairFix: Share;
  /** Visits that ended without the repair. */
  readonly secondTrips: number;
  /** What they were missing, the commonest first. */
  readonly missing: readonly Counted[];
  /** Medians over the cases of which both are known, each over all its visits; null: none is. */
  readonly minutes: {
    readonly visits: number;
    readonly foreseen: number | null;
    readonly taken: number | null;
    /** Share of visits that stayed within what nine of ten were foreseen to. */
    readonly withinP90: Share;
  };
  /** The same person's machine of the same kind with the same complaint again within the window. */
  readonly comebacks: number;
  readonly causes: readonly {
    readonly machine: string;
    readonly fault: string;
    readonly count: number;
  }[];
  /** Were the percentages right? About the leading cause as it stood when the case was handed over. */
  readonly calibration: {
    readonly claims: number;
    /** In [0, 1], 0 is best; null: no claim yet. */
    readonly brier: number | null;
    /** Nats; null: no claim yet. */
    readonly logLoss: number | null;
    readonly bins: readonly {
      readonly count: number;
      readonly claimed: number;
      readonly held: number;
    }[];
  };
}
