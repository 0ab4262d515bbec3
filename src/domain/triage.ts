import type { CauseGroup, Performer } from "./vocabulary.ts";

/** One answer, or one declared group of answers, for or against a cause. */
export interface Reason {
  readonly observation: string;
  /** The state reported, or the reading as text. */
  readonly state: string;
  /** 10·log10(odds with all evidence ÷ odds without this answer and its whole group). */
  readonly decibans: number;
  /** The other members, when several answers count as one reason. */
  readonly members: readonly { readonly observation: string; readonly state: string }[];
}

export interface RankedCause {
  readonly fault: string;
  readonly group: CauseGroup;
  readonly probability: number;
  readonly reasons: readonly Reason[];
}

/** A reading that goes with no machine that shows the other readings. */
export interface UnexplainedReading {
  readonly observation: string;
  /** As measured, in the observation's unit. */
  readonly value: number;
  /** Other places that people mean by the same words, such as the clamp for the post. */
  readonly places: readonly string[];
}

/** Likely causes that nothing told so far tells apart. */
export interface LookAlikes {
  /** Two or more, the likeliest first. */
  readonly faults: readonly string[];
  /** The check whose answer tells them apart best; null: none does. */
  readonly check: string | null;
}

/** Causes by falling probability; they sum to 1 with `somethingElse` and `nothingWrong`. */
export interface Ranking {
  readonly causes: readonly RankedCause[];
  readonly somethingElse: number;
  readonly nothingWrong: number;
  /** Reports that no listed cause explains well, worst first. */
  readonly doesNotFit: readonly string[];
  readonly unexplained: readonly UnexplainedReading[];
  /** The leader and those that look like it; null where it stands alone. */
  readonly alike: LookAlikes | null;
  /** The observation and state that would most overturn the leader, if one can be had. */
  readonly wouldChangeMind: { readonly observation: string; readonly state: string } | null;
}

/** What the answer to a question decides; said to the person in words. */
export type Decides = "chat" | "trip" | "kit" | "order" | "cause";

export type Next =
  | {
      readonly kind: "ask";
      /** A check's id or an act's id. */
      readonly check: string;
      readonly isAct: boolean;
      readonly decides: Decides;
      /** Expected saving, in technician-minutes, before its own burden. */
      readonly valueMinutes: number;
      /** How many more questions are likely after this one. */
      readonly aboutMore: number;
      /** For a person who can go to the machine once: everything worth looking at on that trip. */
      readonly trip: readonly string[];
    }
  | {
      readonly kind: "stop";
      readonly because: "clear-enough" | "not-worth-asking" | "nothing-left" | "contradiction";
    };

export interface PlanStep {
  readonly id: string;
  readonly kind: "check" | "act" | "remedy" | "open-up" | "call-for-help";
  readonly who: Performer;
  readonly minutes: number;
  readonly tools: readonly string[];
  readonly parts: readonly string[];
  readonly hazards: readonly string[];
  /** P(this step is reached). */
  readonly reached: number;
  /** For a check: its results, most likely first, and the step each leads to (null: done). */
  readonly then: readonly {
    readonly result: string;
    readonly chance: number;
    readonly next: string | null;
  }[];
  /** For a remedy: the faults it would cure. */
  readonly cures: readonly string[];
}

export interface Plan {
  readonly steps: readonly PlanStep[];
  readonly minutes: { readonly median: number; readonly p90: number };
  /** Technician-minutes, travel and a possible second trip included. */
  readonly expectedCost: number;
  /** Admissible lower bound on the cost of any plan; `expectedCost - bound` is the gap. */
  readonly bound: number;
}

export interface KitItem {
  readonly part: string;
  /** P(this part is needed). */
  readonly chance: number;
  readonly carry: boolean;
  /** What carrying it adds to the chance that the kit covers the repair. */
  readonly adds: number;
}

export interface Kit {
  readonly items: readonly KitItem[];
  readonly tools: readonly string[];
  /** Universal stock, one line. */
  readonly universal: readonly string[];
  /** P(everything the repair needs is on board). */
  readonly covers: number;
}

/** How the case should go, with the expected cost of each way in technician-minutes. */
export interface Ways {
  readonly selfHelp: number;
  readonly visit: number;
  readonly collect: number;
  /** P(solved by chat and safe self-help). */
  readonly byChat: number;
}

export interface Triage {
  readonly ranking: Ranking;
  readonly next: Next;
  readonly plan: Plan;
  readonly kit: Kit;
  readonly ways: Ways;
}
