import type { CaseEvent, EventOf } from "./case-events.ts";
import type { CaseState } from "./case-state.ts";
import type { CounterEvent } from "./fold-counter.ts";
import type { Visit } from "./fold-visit.ts";

type Told = Exclude<
  CaseEvent,
  | Visit
  | CounterEvent
  | EventOf<
      | "case.opened"
      | "question.asked"
      | "question.passed"
      | "question.repeated"
      | "question.missed"
      | "answer.given"
      | "answer.withdrawn"
      | "act.done"
      | "step.undone"
    >
>;

/** The operator's open question is about this, a machine of their own list being one of a kind. */
function isAbout(state: CaseState, about: string): boolean {
  const open = state.open.operator?.asking.about;
  return open === about || (open === "known" && about === "kind");
}

/** Which question facts about a machine answer. */
function machineAsked({ kind, fuel }: EventOf<"machine.described">["facts"]): string {
  if (kind !== undefined) return "kind";
  return fuel === undefined ? "nothing" : "fuel";
}

function wroteIn({ wrote }: CaseState, language: string): CaseState["wrote"] {
  return { language, messages: wrote?.language === language ? wrote.messages + 1 : 1 };
}

/** Plain facts: what somebody told or sent. */
export function applyTold(state: CaseState, event: Told): CaseState {
  const answered = (about: string, facts: Partial<CaseState>): CaseState => ({
    ...state,
    ...facts,
    open: {
      ...state.open,
      operator: isAbout(state, about) ? null : state.open.operator,
    },
  });
  switch (event.type) {
    case "machine.described": {
      const machine = { ...state.machine, ...event.facts };
      return answered(machineAsked(event.facts), {
        machine,
        profile: event.profile ?? state.profile,
      });
    }
    case "words.said":
      return {
        ...state,
        words: [...state.words, event.text],
        unclear: event.unclear ?? state.unclear,
      };
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
            epoch: state.epoch,
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
    case "photo.checked":
      return {
        ...state,
        files: state.files.map((one) =>
          one.file.id === event.file ? { ...one, found: event.found } : one,
        ),
      };
    case "operator.reminded":
      return { ...state, reminded: true };
    case "aftermath.asked":
      return { ...state, aftermath: "asked" };
    case "aftermath.told":
      return { ...state, aftermath: event.fine ? "fine" : "came-back" };
    case "note.added":
      return {
        ...state,
        notes: [...state.notes, { text: event.text, from: event.from, at: event.at }],
      };
    case "language.heard":
      return { ...state, wrote: wroteIn(state, event.language) };
    case "language.offered":
      return { ...state, languagesOffered: [...state.languagesOffered, event.language] };
    case "language.changed":
      return spokenTo(state, event);
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

/** Whoever chose it is spoken to in it from now on: the technician of the case, or its operator. */
function spokenTo(state: CaseState, { by, language }: EventOf<"language.changed">): CaseState {
  const { technician, operator } = state;
  return technician !== null && technician.id === by && operator.id !== by
    ? { ...state, technician: { ...technician, language } }
    : { ...state, operator: { ...operator, language } };
}
