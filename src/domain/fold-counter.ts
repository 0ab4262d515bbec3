import type { CaseEvent, EventOf } from "./case-events.ts";
import type { CaseState } from "./case-state.ts";

const counterTypes = [
  "counter.prompted",
  "counter.left",
  "operator.asked",
  "operator.replied",
  "visit.booked",
  "visit.unbooked",
  "visit.set-out",
  "payment.told",
  "case.took-in",
  "photo.marked",
  "help.given",
  "case.passed-on",
  "link.made",
  "operator.joined",
] as const;
export type CounterEvent = EventOf<(typeof counterTypes)[number]>;

const counterEvents: ReadonlySet<string> = new Set(counterTypes);

export function isCounterEvent(event: CaseEvent): event is CounterEvent {
  return counterEvents.has(event.type);
}

/** What people of the shop want to see of the past: decisions, not every question and answer. */
const history: ReadonlySet<CaseEvent["type"]> = new Set([
  "case.opened",
  "flag.raised",
  "flag.seen",
  "person.wanted",
  "shop.saw",
  "case.assigned",
  "case.taken-back",
  "visit.started",
  "visit.cut-short",
  "step.undone",
  "cause.confirmed",
  "case.closed",
  "case.reopened",
  "operator.asked",
  "operator.replied",
  "visit.booked",
  "visit.unbooked",
  "visit.set-out",
  "payment.told",
  "case.took-in",
  "photo.marked",
  "help.given",
  "case.passed-on",
  "operator.joined",
]);

export const isHistory = (type: CaseEvent["type"]): boolean => history.has(type);

/** What the counter did with the case, and what came of it. */
export function applyCounter(state: CaseState, event: CounterEvent): CaseState {
  switch (event.type) {
    case "counter.prompted":
      return { ...state, prompt: { about: event.about, by: event.by } };
    case "counter.left":
      return { ...state, prompt: null };
    case "operator.asked": {
      const { text, by, photo } = event;
      return { ...state, prompt: null, askedBack: { text, by, photo } };
    }
    case "operator.replied":
      return { ...state, askedBack: null };
    case "visit.booked":
      return { ...state, prompt: null, booked: { from: event.from, until: event.until } };
    case "visit.unbooked":
      return { ...state, booked: null };
    case "visit.set-out":
      return { ...state, setOut: true };
    case "payment.told":
      return { ...state, payment: { payer: event.payer, agreed: event.agreed } };
    case "case.took-in":
      return { ...state, prompt: null, tookIn: [...state.tookIn, event.other] };
    case "photo.marked": {
      const { observation, state: shows } = event;
      const mark = { observation, state: shows };
      const files = state.files.map((one) => {
        if (one.file.id !== event.file) return one;
        const others = (one.marks ?? []).filter((other) => other.observation !== observation);
        return { ...one, marks: shows === "" ? others : [...others, mark] };
      });
      return { ...state, files };
    }
    case "help.given":
      return state;
    case "case.passed-on":
      return { ...state, shopSaw: event.to };
    case "link.made":
      return { ...state, link: event.digest };
    case "operator.joined": {
      const { operator: id, name, chat, language } = event;
      return { ...state, link: null, operator: { id, name, chat, language } };
    }
  }
}
