import type { Asking, CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Phrase } from "../domain/effects.ts";
import type { Report, Said } from "../domain/evidence.ts";
import type { Knowledge, Observation } from "../domain/knowledge.ts";
import { Fuel, MachineKindId, type Reporter } from "../domain/vocabulary.ts";
import {
  ALL_CLEAR,
  type Choice,
  choicesFor,
  DONT_KNOW,
  dontKnow,
  LEADS_TO,
  SKIP,
} from "./choices.ts";
import { phrase } from "./decision.ts";
import { ticked } from "./equipment.ts";
import { placeOf } from "./place.ts";
import { takeTrip } from "./trip.ts";

/** What a pressed answer comes to. */
export interface Taken {
  readonly happenings: readonly CaseHappening[];
  /** What the question's message shows as the answer. */
  readonly label: Phrase;
  /** Set where the answer only leads to another list of answers of the same question. */
  readonly leadsTo?: Asking;
}

/** Whose report it is: somebody asking for another tells it second-hand. */
export function operatorReporter(state: CaseState): Reporter {
  return placeOf(state) === "for-someone-else" ? "second-hand" : "operator";
}

const plain = (state: string): Said => ({ kind: "states", weights: { [state]: 1 } });

/** A report of one chosen state, as the observation's kind wants it. */
export function saidOf(observation: Observation, state: string): Said {
  if (observation.kind !== "list") return plain(state);
  const members = observation.states.map((member) => member.id).filter((id) => id !== "none");
  return state === "none"
    ? { kind: "members", present: [], absent: members }
    : { kind: "members", present: [state], absent: [] };
}

export interface ReportOf {
  readonly observation: string;
  readonly said: Said;
  readonly reporter: Reporter;
  readonly hedge?: number;
}

/** A report in the present epoch. */
export function reportNow(state: CaseState, given: ReportOf): Report {
  return { ...given, epoch: state.epoch, hedge: given.hedge ?? 0 };
}

function passes(asking: Asking, why: "dont-know" | "skipped" | "could-not"): CaseHappening {
  return { type: "question.passed", asking, why };
}

function takeCheck(
  asking: Extract<Asking, { about: "check" }>,
  choice: Choice,
  given: { state: CaseState; knowledge: Knowledge; reporter: Reporter },
): CaseHappening[] {
  const check = given.knowledge.checks.get(asking.check);
  const observation = given.knowledge.observations.get(check?.yields ?? "");
  if (observation === undefined) return [passes(asking, "dont-know")];
  const said = saidOf(observation, choice.state ?? choice.value);
  const report = reportNow(given.state, {
    observation: observation.id,
    said,
    reporter: given.reporter,
  });
  return [{ type: "answer.given", report, check: asking.check }];
}

const outcomes = ["cured", "no-change", "changed"] as const;
/** States of an act's own observation that say how it came out. */
const toldOutcomes: Readonly<Record<string, (typeof outcomes)[number]>> = {
  cured: "cured",
  "then-started": "cured",
  "no-change": "no-change",
};

function takeAct(
  asking: Extract<Asking, { about: "act" }>,
  choice: Choice,
  given: { state: CaseState; knowledge: Knowledge; reporter: Reporter },
): CaseHappening[] {
  const yields = given.knowledge.acts.get(asking.act)?.yields;
  const performer = given.reporter === "technician" ? "technician" : "operator";
  const named = outcomes.find((candidate) => candidate === choice.value);
  const outcome = named ?? toldOutcomes[choice.value] ?? "unknown";
  const done: CaseHappening = { type: "act.done", act: asking.act, performer, outcome };
  if (yields === undefined || choice.state === undefined) return [done];
  const report: Report = {
    observation: yields,
    epoch: given.state.epoch + 1,
    reporter: given.reporter,
    said: plain(choice.state),
    hedge: 0,
  };
  return [done, { type: "answer.given", report }];
}

function takeFact(asking: Asking, value: string): CaseHappening[] {
  switch (asking.about) {
    case "safety":
      return value === ALL_CLEAR
        ? [{ type: "safety.answered", clear: true }]
        : [{ type: "flag.raised", flag: value }];
    case "kind": {
      const kind = MachineKindId.safeParse(value);
      return kind.success ? [{ type: "machine.described", facts: { kind: kind.data } }] : [];
    }
    case "fuel": {
      const fuel = Fuel.safeParse(value);
      return fuel.success ? [{ type: "machine.described", facts: { fuel: fuel.data } }] : [];
    }
    case "urgency":
      return value === "high" || value === "normal" || value === "low"
        ? [{ type: "urgency.told", urgency: value }]
        : [];
    case "equipment":
      return [{ type: "equipment.told", has: asking.has ?? [] }];
    case "known": {
      const machine = asking.machines[Number(value)];
      return machine === undefined
        ? []
        : [{ type: "machine.described", facts: machine.facts, profile: machine.id }];
    }
    default:
      return [];
  }
}

function leads(asking: Asking, to: string): Asking {
  if (asking.about === "known") return { about: "kind" };
  if (asking.about === "equipment") return { ...asking, has: ticked(asking.has ?? [], to) };
  if (asking.about === "kind") return { ...asking, family: to };
  if (asking.about === "check") return { ...asking, menu: to };
  return asking;
}

/** Questions whose screen may have no room for it take a don't-know all the same. */
const takesDontKnow = ({ about }: Asking) =>
  about === "safety" || about === "kind" || about === "known" || about === "act";

/** What pressing (or naming) one of the offered answers means; null where it is not on offer. */
export function takeAnswer(
  asking: Asking,
  value: string,
  given: { state: CaseState; knowledge: Knowledge; reporter: Reporter },
): Taken | null {
  const offered = choicesFor(asking, given.state, given.knowledge);
  const choice =
    offered.find((candidate) => candidate.value === value) ??
    (value === DONT_KNOW && takesDontKnow(asking) ? dontKnow : undefined);
  if (choice === undefined) return null;
  const { label } = choice;
  if (value === DONT_KNOW) return { happenings: [passes(asking, "dont-know")], label };
  if (value === SKIP) {
    const why = asking.about === "act" ? "could-not" : "skipped";
    // Who is asked for place and number in one breath leaves out both.
    const isBoth = asking.about === "where" && asking.phone === true;
    const phone = isBoth ? [passes({ about: "phone" }, why)] : [];
    return { happenings: [passes(asking, why), ...phone], label };
  }
  if (value.startsWith(LEADS_TO)) {
    return { happenings: [], label, leadsTo: leads(asking, value.slice(LEADS_TO.length)) };
  }
  if (asking.about === "check") return { happenings: takeCheck(asking, choice, given), label };
  if (asking.about === "act") {
    if (asking.stage === "offer") {
      return { happenings: [], label, leadsTo: { ...asking, stage: "result" } };
    }
    return { happenings: takeAct(asking, choice, given), label };
  }
  if (asking.about === "trip") return { happenings: takeTrip(asking, value, given), label };
  if (asking.about === "meaning") return takeMeaning(asking, choice, given);
  return { happenings: takeFact(asking, value), label };
}

function takeMeaning(
  asking: Extract<Asking, { about: "meaning" }>,
  choice: Choice,
  given: { state: CaseState; knowledge: Knowledge; reporter: Reporter },
): Taken {
  const option = asking.options[Number(choice.value)];
  const observation = given.knowledge.observations.get(option?.observation ?? "");
  if (option === undefined || observation === undefined) {
    return { happenings: [passes(asking, "dont-know")], label: phrase("answer-dont-know") };
  }
  const report = reportNow(given.state, {
    observation: observation.id,
    said: saidOf(observation, option.state),
    reporter: given.reporter,
  });
  return {
    happenings: [passes(asking, "skipped"), { type: "answer.given", report }],
    label: choice.label,
  };
}

/** True where the open question is the one a button was made for. */
export function isOpen(state: CaseState, revision: number): boolean {
  return state.open.operator?.revision === revision || state.open.technician?.revision === revision;
}
