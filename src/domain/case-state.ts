import type { Asking, CaseEvent, ConfirmedHow, End, Meanings, PhotoFound } from "./case-events.ts";
import type { FileRef, Line } from "./effects.ts";
import type { ActDone, Evidence, MachineFacts, Report, Situation } from "./evidence.ts";
import type { CounterPrompt, Payer } from "./shop-happenings.ts";
import type { Performer } from "./vocabulary.ts";

/** A question that is open, to one of the two people a case asks. */
export interface OpenQuestion {
  readonly asking: Asking;
  readonly revision: number;
  readonly askedAt: number;
  readonly before: readonly Line[];
  /** When the operator last wrote what answers it in no way; null: not yet. */
  readonly missedAt: number | null;
}

export interface GivenAnswer {
  readonly report: Report;
  readonly check?: string;
  readonly from: Performer;
  readonly at: number;
}

/** One line of a case's history: what, when, by whom. */
export interface HistoryLine {
  readonly at: number;
  readonly by: string;
  readonly type: CaseEvent["type"];
}

/** Somebody a case speaks to, and in which language. */
interface Contact {
  readonly id: string;
  readonly name: string;
  readonly chat: string;
  readonly language: string;
}

/** What the events of a case add up to. */
export interface CaseState {
  readonly id: string;
  readonly opened: { readonly at: number; readonly knowledge: string; readonly seed: number };
  readonly operator: Contact;
  readonly technician: Contact | null;
  /** The last long message's language and how many in a row were in it; null: none yet. */
  readonly wrote: { readonly language: string; readonly messages: number } | null;
  /** Languages in which the operator was offered to go on. */
  readonly languagesOffered: readonly string[];
  readonly machine: Partial<MachineFacts>;
  /** Which machine of the operator's own list it is; null: none that is known yet. */
  readonly profile: string | null;
  readonly words: readonly string[];
  /** What those words may mean, where that could not be asked yet. */
  readonly unclear: Meanings | null;
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
  readonly open: Readonly<Record<Performer, OpenQuestion | null>>;
  /** How many more questions the operator was last told of; null: nothing was said. */
  readonly aboutMore: number | null;
  /** Counts the questions asked; a button made for an older one is stale. */
  readonly revision: number;
  readonly files: readonly {
    readonly file: FileRef;
    readonly caption?: string;
    readonly from: Performer;
    readonly at: number;
    readonly found?: PhotoFound;
    /** The epoch in which it came: what it shows was so then. */
    readonly epoch: number;
    /** What somebody of the shop saw on it. */
    readonly marks?: readonly { readonly observation: string; readonly state: string }[];
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
  readonly handBack: readonly {
    readonly check: string;
    readonly outcome: "fine" | "not-fine" | "could-not";
    readonly why?: string;
  }[];
  /** What each visit that ended without the repair was missing. */
  readonly cutShort: readonly string[];
  readonly work: {
    readonly minutes?: number;
    readonly used?: readonly string[];
    readonly back?: readonly string[];
  };
  readonly foreseen: {
    readonly causes: readonly { readonly fault: string; readonly probability: number }[];
    readonly medianMinutes: number;
    readonly p90Minutes: number;
  } | null;
  /** Who of the counter writes next about this case, and what. */
  readonly prompt: { readonly about: CounterPrompt; readonly by: string } | null;
  /** A question of the shop that the operator has not answered. */
  readonly askedBack: {
    readonly text: string;
    readonly by: string;
    readonly photo: boolean;
  } | null;
  readonly booked: { readonly from: number; readonly until: number } | null;
  /** The technician said that they are on the way; a new hand or the end of a visit clears it. */
  readonly setOut: boolean;
  readonly payment: { readonly payer: Payer; readonly agreed: boolean } | null;
  /** Cases that were found to be the same trouble. */
  readonly tookIn: readonly string[];
  /** Counts how often the case changed hands: a button made for an earlier hand is stale. */
  readonly hands: number;
  /** The digest of the link that is still unused. */
  readonly link: string | null;
  readonly history: readonly HistoryLine[];
  /** The case as it stood when the visit began, and what has happened since; null: before a visit. */
  readonly ground: CaseState | null;
  readonly since: readonly CaseEvent[];
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
    case "hand-back":
    case "hand-back-why":
      return `${asking.about}:${asking.check ?? ""}`;
    default:
      return asking.about;
  }
}

export const emptyState = (id: string): CaseState => ({
  id,
  opened: { at: 0, knowledge: "", seed: 0 },
  operator: { id: "", name: "", chat: "", language: "en" },
  technician: null,
  wrote: null,
  languagesOffered: [],
  machine: {},
  profile: null,
  words: [],
  unclear: null,
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
  aboutMore: null,
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
  handBack: [],
  cutShort: [],
  work: {},
  foreseen: null,
  prompt: null,
  askedBack: null,
  booked: null,
  setOut: false,
  payment: null,
  tookIn: [],
  hands: 0,
  link: null,
  history: [],
  ground: null,
  since: [],
});

/** What the engine is given: the standing reports and the acts. */
export function evidenceOf(state: CaseState): Evidence {
  return { reports: state.answers.map((answer) => answer.report), acts: state.acts };
}
