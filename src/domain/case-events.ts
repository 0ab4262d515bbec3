import type { FileRef, Line } from "./effects.ts";
import type { MachineFacts, Report, Situation } from "./evidence.ts";
import type { ShopHappening } from "./shop-happenings.ts";
import type { Performer, Reporter } from "./vocabulary.ts";

/** A machine as it stands in a person's own list. */
export interface KnownMachine {
  readonly id: string;
  /** As the owner calls it; empty: its kind says it. */
  readonly title: string;
  readonly facts: MachineFacts;
}

/** What came of looking at a photo; `not-checked`: it could not be opened here. */
export type PhotoFound = "fine" | "dark" | "blurred" | "tiny" | "not-checked";

/** The states that ambiguous words may mean; two or more. */
export type Meanings = readonly { readonly observation: string; readonly state: string }[];

/** What a question in the chat is about. */
export type Asking =
  | { readonly about: "safety" }
  /** Is it one of the machines this person told us of before? */
  | { readonly about: "known"; readonly machines: readonly KnownMachine[] }
  | { readonly about: "kind"; readonly family?: string }
  | { readonly about: "fuel" }
  /** A check whose many answers are offered in two steps; `menu` is the step taken. */
  | { readonly about: "check"; readonly check: string; readonly menu?: string }
  | { readonly about: "act"; readonly act: string; readonly stage: "offer" | "result" }
  /**
   * What happened, what was done and found: the one question without answers to choose from.
   * `photo`: of what one photo is asked for in the same breath.
   */
  | { readonly about: "story"; readonly photo?: string }
  /** What is at hand; `has` is what was ticked so far. */
  | { readonly about: "equipment"; readonly has?: readonly string[] }
  /** Checks and acts to look at on one walk to the machine, answered afterwards one by one. */
  | { readonly about: "trip"; readonly checks: readonly string[] }
  /** `of`: what it shall show; absent: the battery. */
  | { readonly about: "photo"; readonly of?: string }
  | { readonly about: "urgency" }
  /** `phone`: the number is asked for in the same breath. */
  | { readonly about: "where"; readonly phone?: boolean }
  | { readonly about: "phone" }
  | { readonly about: "plate" }
  /** Ambiguous words: which of these was meant? `check`: all of them answer its question. */
  | { readonly about: "meaning"; readonly options: Meanings; readonly check?: string }
  | { readonly about: "remedy"; readonly remedy: string }
  /** What it was, and whether it ran and restarted afterwards. */
  | { readonly about: "cause" }
  | { readonly about: "cause-words" }
  | { readonly about: "ran"; readonly remedy?: string }
  /** Before it is given back: do the interlocks still hold the start? `check`: in its own words. */
  | { readonly about: "hand-back"; readonly check?: string }
  /** Why that could not be tested. */
  | { readonly about: "hand-back-why"; readonly check?: string }
  /** What a second visit has to bring. */
  | { readonly about: "missing" };

export type End =
  | "solved-by-chat"
  | "visit"
  | "collected"
  | "part-handed-over"
  | "loan-machine"
  | "referred"
  | "nothing-found"
  | "called-off"
  /** The same trouble as another case, which goes on. */
  | "duplicate";

export type ConfirmedHow = "ran-after-this" | "measured" | "several-at-once" | "guess";

/** One thing that happened in a case. Past tense; never changed, never removed. */
export type CaseHappening =
  | {
      readonly type: "case.opened";
      readonly operator: string;
      readonly name: string;
      readonly chat: string;
      readonly language: string;
      readonly knowledge: string;
      readonly seed: number;
    }
  | {
      readonly type: "machine.described";
      readonly facts: Partial<MachineFacts>;
      /** Set where it is a machine of the person's own list. */
      readonly profile?: string;
    }
  /** `unclear`: what they may mean, where another question has to come before that one. */
  | { readonly type: "words.said"; readonly text: string; readonly unclear?: Meanings }
  | { readonly type: "safety.answered"; readonly clear: boolean }
  | { readonly type: "flag.raised"; readonly flag: string }
  | { readonly type: "flag.seen"; readonly flag: string }
  | { readonly type: "equipment.told"; readonly has: readonly string[] }
  | {
      readonly type: "question.asked";
      readonly to: Performer;
      readonly asking: Asking;
      readonly revision: number;
      /** What its message said before the question: kept, so that the answered one still says it. */
      readonly before?: readonly Line[];
      /** How many more were said to follow, where that was said. */
      readonly aboutMore?: number;
    }
  | {
      readonly type: "question.passed";
      readonly asking: Asking;
      readonly why: "dont-know" | "could-not" | "skipped" | "back";
    }
  /** The operator's open question was said again, these lines before it. */
  | { readonly type: "question.repeated"; readonly before: readonly Line[] }
  /** The operator wrote something that answers nothing; the question stayed open. */
  | { readonly type: "question.missed" }
  | {
      readonly type: "answer.given";
      readonly report: Report;
      readonly check?: string;
    }
  | {
      readonly type: "answer.withdrawn";
      readonly observation: string;
      readonly epoch: number;
      /** Only what was reported by these eyes; absent: whoever reported it. */
      readonly reporter?: Reporter;
    }
  | {
      readonly type: "act.done";
      readonly act: string;
      /** Whose hands did it; `by` of the stamp names who reported it. */
      readonly performer: Performer;
      readonly outcome: "cured" | "no-change" | "changed" | "unknown";
    }
  | {
      readonly type: "file.received";
      readonly file: FileRef;
      readonly caption?: string;
      readonly from: Performer;
    }
  | {
      readonly type: "urgency.told";
      readonly urgency: Situation["urgency"];
      readonly words?: string;
    }
  | {
      readonly type: "where.told";
      readonly words?: string;
      readonly latitude?: number;
      readonly longitude?: number;
    }
  | { readonly type: "phone.told"; readonly phone: string }
  | { readonly type: "interview.ended"; readonly because: string }
  | { readonly type: "interview.paused" }
  | { readonly type: "interview.resumed" }
  | { readonly type: "person.wanted" }
  | { readonly type: "shop.told" }
  | { readonly type: "shop.saw" }
  | {
      readonly type: "case.assigned";
      readonly technician: string;
      readonly name: string;
      readonly chat: string;
      readonly language: string;
    }
  | { readonly type: "case.taken-back" }
  | { readonly type: "visit.started" }
  | { readonly type: "step.skipped"; readonly step: string }
  | {
      readonly type: "remedy.done";
      readonly remedy: string;
      readonly fault: string;
      readonly ran: boolean;
    }
  | { readonly type: "note.added"; readonly text: string; readonly from: Performer | "dispatcher" }
  | {
      readonly type: "cause.confirmed";
      readonly faults: readonly string[];
      readonly how: ConfirmedHow;
      readonly words?: string;
    }
  | {
      readonly type: "case.closed";
      readonly end: End;
      readonly complaint: string;
      readonly cause: string;
      readonly correction: string;
    }
  | { readonly type: "case.reopened" }
  | { readonly type: "photo.checked"; readonly file: string; readonly found: PhotoFound }
  /** The one reminder after a silence. */
  | { readonly type: "operator.reminded" }
  /** Some days after the end: is it still fine? */
  | { readonly type: "aftermath.asked" }
  | { readonly type: "aftermath.told"; readonly fine: boolean }
  | { readonly type: "language.changed"; readonly language: string }
  /** A message long enough to tell was written in this language. */
  | { readonly type: "language.heard"; readonly language: string }
  /** The operator was asked whether to go on in this language. */
  | { readonly type: "language.offered"; readonly language: string }
  | { readonly type: "operator.forgotten" }
  | ShopHappening;

/** When, by whom, and from which update. */
export interface Stamp {
  /** Milliseconds since 1970 UTC. */
  readonly at: number;
  /** A person's id, or `turnrow`. */
  readonly by: string;
  readonly update: string | null;
}

/** A happening with its stamp. */
export type CaseEvent = CaseHappening & Stamp;

/** Puts the stamp on a happening. */
export function stamped(happening: CaseHappening, stamp: Stamp): CaseEvent {
  return Object.assign({}, happening, stamp);
}

/** The events of one type. */
export type EventOf<T extends CaseEvent["type"]> = Extract<CaseEvent, { type: T }>;
