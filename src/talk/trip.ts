import type { Asking, CaseHappening } from "../domain/case-events.ts";
import { askingKey, type CaseState } from "../domain/case-state.ts";
import type { Line } from "../domain/effects.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { Next } from "../domain/triage.ts";
import type { Reporter } from "../domain/vocabulary.ts";
import { line, phrase } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { AT_MACHINE, placeOf } from "./place.ts";
import { holds } from "./still-open.ts";

type Trip = Extract<Asking, { about: "trip" }>;

const plain = (state: string) => ({ kind: "states", weights: { [state]: 1 } }) as const;

/** The case as it would be if its operator could not go to the machine. */
function stayingAway(state: CaseState): CaseState {
  const answers = state.answers.map((given) =>
    given.report.observation === AT_MACHINE
      ? { ...given, report: { ...given.report, said: plain("no") } }
      : given,
  );
  return { ...state, answers };
}

/** The newest list for a walk, and how far into the case it was given. */
function lastTrip(state: CaseState): { readonly trip: Trip; readonly at: number } | null {
  const at = state.askedEver.findLastIndex((asked) => asked.asking.about === "trip");
  const asking = state.askedEver[at]?.asking;
  return asking?.about === "trip" ? { trip: asking, at } : null;
}

function isOpen(state: CaseState, id: string, knowledge: Knowledge): boolean {
  const check = knowledge.checks.get(id);
  if (check === undefined) return knowledge.acts.has(id) && !state.acts.some((a) => a.act === id);
  const known = state.answers.some((given) => given.report.observation === check.yields);
  return !known && holds(state, check.onlyIf);
}

/** What was looked at on the walk and not answered yet, in the order of the list. */
function unanswered(state: CaseState, knowledge: Knowledge): string | null {
  const made = lastTrip(state);
  if (made === null || !state.passed.includes("trip")) return null;
  const since = state.askedEver.slice(made.at + 1).map(({ asking }) => askingKey(asking));
  const open = made.trip.checks.find(
    (id) =>
      !since.includes(`check:${id}`) &&
      !since.includes(`act:${id}`) &&
      isOpen(state, id, knowledge),
  );
  return open ?? null;
}

const askFor = (id: string, knowledge: Knowledge): Asking =>
  knowledge.acts.has(id)
    ? { about: "act", act: id, stage: "offer" }
    : { about: "check", check: id };

/**
 * The next question to somebody who can walk to the machine once: what can be told from where they
 * are, then one list for the walk, then the list's questions one by one, and no second walk.
 * @param next the engine's choice as things stand
 */
export function walkingQuestion(
  state: CaseState,
  next: Next,
  desk: Desk,
): { readonly next: Next } | { readonly asking: Asking } {
  if (placeOf(state) !== "can-go") return { next };
  const left = unanswered(state, desk.knowledge);
  if (left !== null) return { asking: askFor(left, desk.knowledge) };
  if (lastTrip(state) !== null) return { next: desk.next(stayingAway(state), "operator") };
  if (next.kind === "stop" || next.trip.length === 0) return { next };
  // What is only looked at comes first: an act may change what there is to see.
  const looks = next.trip.filter((id) => desk.knowledge.checks.has(id));
  const acts = next.trip.filter((id) => !desk.knowledge.checks.has(id));
  return { asking: { about: "trip", checks: [...looks, ...acts] } };
}

/** The list for the walk, one line each. */
export function tripLines(trip: Trip, knowledge: Knowledge): Line[] {
  const steps = trip.checks.map((id) =>
    line({ know: wordKey(knowledge.acts.has(id) ? "act" : "check", id, "ask") }, "step"),
  );
  return [
    line(phrase("ask-trip", { count: steps.length }), "heading"),
    ...steps,
    line(phrase("ask-trip-how"), undefined, true),
  ];
}

export const tripAnswers = ["looked", "there", "cannot"] as const;

/** What becomes of the walk: looked at, standing there now, or not possible. */
export function takeTrip(
  trip: Trip,
  value: string,
  given: { readonly state: CaseState; readonly reporter: Reporter },
): CaseHappening[] {
  const passed: CaseHappening = {
    type: "question.passed",
    asking: trip,
    why: value === "cannot" ? "could-not" : "skipped",
  };
  if (value === "looked") return [passed];
  const report = {
    observation: AT_MACHINE,
    epoch: given.state.epoch,
    reporter: given.reporter,
    said: plain(value === "there" ? "yes" : "no"),
    hedge: 0,
  };
  return [passed, { type: "answer.given", report }];
}
