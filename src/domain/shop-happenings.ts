export const payers = ["own", "warranty", "contract", "comeback"] as const;
export type Payer = (typeof payers)[number];

/** What the counter was asked to write next, about a case. */
export type CounterPrompt = "ask" | "heard" | "book" | "merge" | "phone" | "title" | "serial";

/** What happens at the counter and at the end of a visit. */
export type ShopHappening =
  | {
      readonly type: "hand-back.checked";
      /** The check's id; `interlocks` where the knowledge has none of its own. */
      readonly check: string;
      readonly outcome: "fine" | "not-fine" | "could-not";
      readonly why?: string;
    }
  /** The technician takes a step of the visit back: everything that this update did. */
  | { readonly type: "step.undone"; readonly of: string }
  /** The visit ended without the repair: something was missing. */
  | { readonly type: "visit.cut-short"; readonly missing: string }
  /** What the work took; a later one replaces what it names. */
  | {
      readonly type: "work.told";
      readonly minutes?: number;
      readonly used?: readonly string[];
      readonly back?: readonly string[];
    }
  /** What was expected when the case was handed over: the measure of what came of it. */
  | {
      readonly type: "visit.foreseen";
      readonly causes: readonly { readonly fault: string; readonly probability: number }[];
      readonly medianMinutes: number;
      readonly p90Minutes: number;
    }
  | { readonly type: "counter.prompted"; readonly about: CounterPrompt }
  | { readonly type: "counter.left" }
  /** Somebody of the shop asks the operator, who answers in their own chat. */
  | { readonly type: "operator.asked"; readonly text: string; readonly photo: boolean }
  | { readonly type: "operator.replied"; readonly text: string }
  | {
      readonly type: "visit.booked";
      /** Milliseconds since 1970 UTC; the technician arrives between the two. */
      readonly from: number;
      readonly until: number;
    }
  | { readonly type: "visit.unbooked" }
  /** The technician has set out for the machine. */
  | { readonly type: "visit.set-out" }
  | { readonly type: "payment.told"; readonly payer: Payer; readonly agreed: boolean }
  | { readonly type: "case.took-in"; readonly other: string }
  /**
   * Somebody of the shop says what a photo shows (`state` empty: takes that back). The answer
   * itself is an answer, reported by the photo.
   */
  | {
      readonly type: "photo.marked";
      readonly file: string;
      readonly observation: string;
      readonly state: string;
    }
  /** The shop gives the operator something safe to try. */
  | { readonly type: "help.given"; readonly act: string }
  /** A dispatcher passes the case on to another. */
  | { readonly type: "case.passed-on"; readonly to: string }
  /** A link that makes whoever opens it the operator of this case; only its digest is kept. */
  | { readonly type: "link.made"; readonly digest: string }
  | {
      readonly type: "operator.joined";
      readonly operator: string;
      readonly name: string;
      readonly chat: string;
      readonly language: string;
    };
