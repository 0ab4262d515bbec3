import type { Asking, CaseEvent, ConfirmedHow, End } from "./case-events.ts";
import type { FileRef } from "./effects.ts";
import type { ActDone, Evidence, MachineFacts, Report, Situation } from "./evidence.ts";
import type { Performer } from "./vocabulary.ts";

/** A question that is open, to one of the two people a case asks. */
export interface OpenQuestion {
  readonly asking: Asking;
  readonly revision: number;
  readonly askedAt: number;
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
  readonly words: readonly string[];
  readonly safety: "unasked" | "clear" | "not-clear";
  readonly flags: readonly {
    readonly flag: string;
    readonly at: number;
    readonly seenBy: string | null;
  }[];
  readonly place: Situation["place"];
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
  /** Everything that was asked so far, in order, by the key of `askingKey`. */
  readonly askedEver: readonly string[];
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
  }[];
  readonly interview: "running" | "paused" | "ended";
  readonly endedBecause: string | null;
  readonly personWanted: boolean;
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
      return `remedy:${asking.fault}`;
    case "closing":
      return `closing:${asking.part}`;
    default:
      return asking.about;
  }
}

const emptyState = (id: string): CaseState => ({
  id,
  opened: { at: 0, knowledge: "", seed: 0 },
  operator: { id: "", name: "", chat: "", language: "en" },
  technician: null,
  machine: {},
  words: [],
  safety: "unasked",
  flags: [],
  place: "unknown",
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
  shopTold: false,
  shopSaw: null,
  visit: "none",
  skippedSteps: [],
  remediesDone: [],
  notes: [],
  confirmed: null,
  closed: null,
});

/** The state that the events of one case add up to, in the order in which they happened. */
export function foldCase(id: string, events: readonly CaseEvent[]): CaseState {
  return events.reduce(applyEvent, emptyState(id));
}

/** What the engine is given: the standing reports and the acts. */
export function evidenceOf(state: CaseState): Evidence {
  return { reports: state.answers.map((answer) => answer.report), acts: state.acts };
}

function isSameAnswer(given: GivenAnswer, report: Report): boolean {
  const technician = (reporter: string) => reporter === "technician";
  return (
    given.report.observation === report.observation &&
    given.report.epoch === report.epoch &&
    technician(given.report.reporter) === technician(report.reporter)
  );
}

/** Adds one event. */
export function applyEvent(state: CaseState, event: CaseEvent): CaseState {
  switch (event.type) {
    case "case.opened":
      return {
        ...state,
        opened: { at: event.at, knowledge: event.knowledge, seed: event.seed },
        operator: {
          id: event.operator,
          name: event.name,
          chat: event.chat,
          language: event.language,
        },
      };
    case "question.asked":
    case "question.passed":
      return applyQuestion(state, event);
    case "answer.given":
      return applyAnswer(state, event);
    case "answer.withdrawn":
      return {
        ...state,
        answers: state.answers.filter(
          (given) =>
            given.report.observation !== event.observation || given.report.epoch !== event.epoch,
        ),
      };
    case "act.done":
      return applyAct(state, event);
    case "case.assigned":
    case "case.taken-back":
    case "visit.started":
    case "step.skipped":
    case "remedy.done":
    case "cause.confirmed":
    case "case.closed":
    case "case.reopened":
      return applyVisit(state, event);
    default:
      return applyTold(state, event);
  }
}

type Of<T extends CaseEvent["type"]> = Extract<CaseEvent, { type: T }>;

function applyQuestion(
  state: CaseState,
  event: Of<"question.asked" | "question.passed">,
): CaseState {
  const key = askingKey(event.asking);
  if (event.type === "question.passed") {
    const open = {
      operator: closes(state.open.operator, key) ? null : state.open.operator,
      technician: closes(state.open.technician, key) ? null : state.open.technician,
    };
    if (event.why === "back") return { ...state, open };
    return { ...state, open, passed: [...state.passed, key] };
  }
  const question = { asking: event.asking, revision: event.revision, askedAt: event.at };
  const id =
    event.asking.about === "check"
      ? event.asking.check
      : event.asking.about === "act"
        ? event.asking.act
        : null;
  return {
    ...state,
    revision: event.revision,
    open: { ...state.open, [event.to]: question },
    askedNow: id === null || state.askedNow.includes(id) ? state.askedNow : [...state.askedNow, id],
    askedEver: [...state.askedEver, key],
  };
}

function closes(open: OpenQuestion | null, key: string): boolean {
  return open !== null && askingKey(open.asking) === key;
}

function applyAnswer(state: CaseState, event: Of<"answer.given">): CaseState {
  const from: Performer = event.report.reporter === "technician" ? "technician" : "operator";
  const given: GivenAnswer = {
    report: event.report,
    from,
    at: event.at,
    ...(event.check === undefined ? {} : { check: event.check }),
  };
  const asked = event.check === undefined ? null : `check:${event.check}`;
  return {
    ...state,
    answers: [...state.answers.filter((old) => !isSameAnswer(old, event.report)), given],
    open: {
      operator: asked !== null && closes(state.open.operator, asked) ? null : state.open.operator,
      technician:
        asked !== null && closes(state.open.technician, asked) ? null : state.open.technician,
    },
  };
}

function applyAct(state: CaseState, event: Of<"act.done">): CaseState {
  const epoch = state.epoch + 1;
  return {
    ...state,
    epoch,
    acts: [...state.acts, { act: event.act, epoch, by: event.by, outcome: event.outcome }],
    askedNow: [event.act],
    open: {
      operator: closes(state.open.operator, `act:${event.act}`) ? null : state.open.operator,
      technician: closes(state.open.technician, `act:${event.act}`) ? null : state.open.technician,
    },
  };
}

type Visit = Of<
  | "case.assigned"
  | "case.taken-back"
  | "visit.started"
  | "step.skipped"
  | "remedy.done"
  | "cause.confirmed"
  | "case.closed"
  | "case.reopened"
>;

function applyVisit(state: CaseState, event: Visit): CaseState {
  switch (event.type) {
    case "case.assigned":
      return {
        ...state,
        technician: {
          id: event.technician,
          name: event.name,
          chat: event.chat,
          language: event.language,
        },
        visit: "assigned",
      };
    case "case.taken-back":
      return {
        ...state,
        technician: null,
        visit: "none",
        open: { ...state.open, technician: null },
      };
    case "visit.started":
      return { ...state, visit: "started" };
    case "step.skipped":
      return {
        ...state,
        skippedSteps: [...state.skippedSteps, event.step],
        open: { ...state.open, technician: null },
      };
    case "remedy.done":
      return {
        ...state,
        remediesDone: [
          ...state.remediesDone,
          { remedy: event.remedy, fault: event.fault, ran: event.ran },
        ],
        open: { ...state.open, technician: null },
      };
    case "cause.confirmed":
      return {
        ...state,
        confirmed: {
          faults: event.faults,
          how: event.how,
          ...(event.words === undefined ? {} : { words: event.words }),
        },
        open: { ...state.open, technician: null },
      };
    case "case.closed":
      return {
        ...state,
        closed: {
          end: event.end,
          at: event.at,
          complaint: event.complaint,
          cause: event.cause,
          correction: event.correction,
        },
        open: { operator: null, technician: null },
      };
    case "case.reopened":
      return { ...state, closed: null, confirmed: null };
  }
}

type Told = Exclude<
  CaseEvent,
  | Visit
  | Of<
      | "case.opened"
      | "question.asked"
      | "question.passed"
      | "answer.given"
      | "answer.withdrawn"
      | "act.done"
    >
>;

/** Plain facts: what somebody told or sent. */
function applyTold(state: CaseState, event: Told): CaseState {
  const answered = (about: string, facts: Partial<CaseState>): CaseState => ({
    ...state,
    ...facts,
    open: {
      ...state.open,
      operator: state.open.operator?.asking.about === about ? null : state.open.operator,
    },
  });
  switch (event.type) {
    case "machine.described": {
      const about = event.facts.kind === undefined ? "fuel" : "kind";
      return answered(about, { machine: { ...state.machine, ...event.facts } });
    }
    case "words.said":
      return { ...state, words: [...state.words, event.text] };
    case "safety.answered":
      return answered("safety", { safety: event.clear ? "clear" : "not-clear" });
    case "flag.raised":
      return {
        ...state,
        safety: "not-clear",
        flags: [...state.flags, { flag: event.flag, at: event.at, seenBy: null }],
      };
    case "flag.seen":
      return {
        ...state,
        flags: state.flags.map((flag) =>
          flag.flag === event.flag && flag.seenBy === null ? { ...flag, seenBy: event.by } : flag,
        ),
      };
    case "place.told":
      return answered("place", { place: event.place });
    case "equipment.told":
      return answered("equipment", { has: event.has });
    case "file.received":
      return {
        ...state,
        files: [
          ...state.files,
          {
            file: event.file,
            from: event.from,
            at: event.at,
            ...(event.caption === undefined ? {} : { caption: event.caption }),
          },
        ],
      };
    case "urgency.told":
      return answered("urgency", { urgency: event.urgency, urgencyWords: event.words ?? null });
    case "where.told": {
      const { words, latitude, longitude } = event;
      return answered("where", {
        where: {
          ...state.where,
          ...(words === undefined ? {} : { words }),
          ...(latitude === undefined ? {} : { latitude }),
          ...(longitude === undefined ? {} : { longitude }),
        },
      });
    }
    case "phone.told":
      return answered("phone", { phone: event.phone });
    case "interview.ended":
      return { ...state, interview: "ended", endedBecause: event.because };
    case "interview.paused":
      return { ...state, interview: "paused" };
    case "interview.resumed":
      return { ...state, interview: "running" };
    case "person.wanted":
      return { ...state, personWanted: true };
    case "shop.told":
      return { ...state, shopTold: true };
    case "shop.saw":
      return { ...state, shopSaw: event.by };
    case "note.added":
      return {
        ...state,
        notes: [...state.notes, { text: event.text, from: event.from, at: event.at }],
      };
    case "operator.forgotten":
      return {
        ...state,
        operator: { ...state.operator, name: "", chat: "" },
        words: [],
        phone: null,
        where: null,
        files: [],
      };
  }
}
