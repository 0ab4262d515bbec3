import type { Asking, ConfirmedHow, End, PhotoFound } from "./case-events.ts";
import type { FileRef, Line } from "./effects.ts";
import type { ActDone, Evidence, MachineFacts, Report, Situation } from "./evidence.ts";
import type { Performer } from "./vocabulary.ts";

/** A question that is open, to one of the two people a case asks. */
export interface OpenQuestion {
  readonly asking: Asking;
  readonly revision: number;
  readonly askedAt: number;
  readonly before: readonly Line[];
}

export interface GivenAnswer {
  readonly report: Report;
  readonly check?: string;
  readonly from: Performer;
  readonly at: number;
}

/** What the events of a case add up to. */
export interface CaseState {
  readonly id: string;
  readonly opened: { readonly at: number; readonly knowledge: string; readonly seed: number };
  readonly operator: {
    readonly id: string;
    readonly name: string;
    readonly chat: string;
    readonly language: string;
  };
  readonly technician: {
    readonly id: string;
    readonly name: string;
    readonly chat: string;
    readonly language: string;
  } | null;
  readonly machine: Partial<MachineFacts>;
  /** Which machine of the operator's own list it is; null: none that is known yet. */
  readonly profile: string | null;
  readonly words: readonly string[];
  readonly safety: "unasked" | "clear" | "not-clear";
  readonly flags: readonly {
    readonly flag: string;
    readonly at: number;
    readonly seenBy: string | null;
  }[];
  readonly has: readonly string[] | null;
  readonly urgency: Situation["urgency"] | null;
  readonly urgencyWords: string | null;
  readonly where: {
    readonly words?: string;
    readonly latitude?: number;
    readonly longitude?: number;
  } | null;
  readonly phone: string | null;
  /** Answers that stand, in the order given; withdrawn and replaced ones are gone. */
  readonly answers: readonly GivenAnswer[];
  readonly acts: readonly ActDone[];
  /** The present epoch; each act opens the next. */
  readonly epoch: number;
  /** Checks and acts asked in the present epoch, by id. */
  readonly askedNow: readonly string[];
  /** Questions that were passed for good, by the key of `askingKey`. */
  readonly passed: readonly string[];
  /** Everything that was asked so far, in order. */
  readonly askedEver: readonly { readonly asking: Asking; readonly to: Performer }[];
  readonly open: {
    readonly operator: OpenQuestion | null;
    readonly technician: OpenQuestion | null;
  };
  /** Counts the questions asked; a button made for an older one is stale. */
  readonly revision: number;
  readonly files: readonly {
    readonly file: FileRef;
    readonly caption?: string;
    readonly from: Performer;
    readonly at: number;
    readonly found?: PhotoFound;
  }[];
  readonly interview: "running" | "paused" | "ended";
  readonly endedBecause: string | null;
  readonly personWanted: boolean;
  /** When the newest act was reported, milliseconds since 1970 UTC; null: none yet. */
  readonly actedAt: number | null;
  readonly reminded: boolean;
  readonly aftermath: "unasked" | "asked" | "fine" | "came-back";
  readonly shopTold: boolean;
  readonly shopSaw: string | null;
  readonly visit: "none" | "assigned" | "started";
  readonly skippedSteps: readonly string[];
  readonly remediesDone: readonly {
    readonly remedy: string;
    readonly fault: string;
    readonly ran: boolean;
  }[];
  readonly notes: readonly { readonly text: string; readonly from: string; readonly at: number }[];
  readonly confirmed: {
    readonly faults: readonly string[];
    readonly how: ConfirmedHow;
    readonly words?: string;
  } | null;
  readonly closed: {
    readonly end: End;
    readonly at: number;
    readonly complaint: string;
    readonly cause: string;
    readonly correction: string;
  } | null;
}

/** A stable name for what a question is about, so that it is not asked twice. */
export function askingKey(asking: Asking): string {
  switch (asking.about) {
    case "check":
      return `check:${asking.check}`;
    case "act":
      return `act:${asking.act}`;
    case "remedy":
      return `remedy:${asking.remedy}`;
    case "known":
      return "kind";
    default:
      return asking.about;
  }
}

export const emptyState = (id: string): CaseState => ({
  id,
  opened: { at: 0, knowledge: "", seed: 0 },
  operator: { id: "", name: "", chat: "", language: "en" },
  technician: null,
  machine: {},
  profile: null,
  words: [],
  safety: "unasked",
  flags: [],
  has: null,
  urgency: null,
  urgencyWords: null,
  where: null,
  phone: null,
  answers: [],
  acts: [],
  epoch: 0,
  askedNow: [],
  passed: [],
  askedEver: [],
  open: { operator: null, technician: null },
  revision: 0,
  files: [],
  interview: "running",
  endedBecause: null,
  personWanted: false,
  actedAt: null,
  reminded: false,
  aftermath: "unasked",
  shopTold: false,
  shopSaw: null,
  visit: "none",
  skippedSteps: [],
  remediesDone: [],
  notes: [],
  confirmed: null,
  closed: null,
});

/** What the engine is given: the standing reports and the acts. */
export function evidenceOf(state: CaseState): Evidence {
  return { reports: state.answers.map((answer) => answer.report), acts: state.acts };
}
