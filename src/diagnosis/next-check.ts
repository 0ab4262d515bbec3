import type { Evidence, Situation } from "../domain/evidence.ts";
import type { Act, Check } from "../domain/knowledge.ts";
import type { Decides, Next } from "../domain/triage.ts";
import { updateBelief } from "./belief.ts";
import { candidates, type Looking, reporterOf } from "./candidates.ts";
import { channelOf, seenNow } from "./channel.ts";
import { type Policy, pricesOf } from "./cost-to-go.ts";
import { savedByAsking } from "./look-ahead.ts";
import { chanceHolds } from "./machine-condition.ts";
import { doesNotFit } from "./misfits.ts";
import type { Model } from "./model.ts";
import { nextOnSite } from "./next-on-site.ts";
import { bestWithoutHelp, differenceOf, type Portfolio, portfolioOf } from "./policies.ts";
import { endedBy, savedBy, selfHelps } from "./self-help.ts";
import { shortlist } from "./shortlist.ts";
import { type AnswerValue, answersOn, answerValue } from "./value.ts";

/** Bounds on the work of one choice: counts, so that the same case always gets the same answer. */
export interface Budget {
  /** The best checks for which a second question is thought through; 0: none. */
  readonly lookAhead: number;
}

export const DEFAULT_BUDGET: Budget = { lookAhead: 6 };

/** A walk to the machine, in technician-minutes of goodwill; paid once however much is looked at. */
const WALK_BURDEN = 5;

/** Things worth looking at on one walk: more than these nobody remembers. */
const MOST_ON_A_WALK = 6;

/** How much dearer a step of the procedure is than it looks: talk first, measure last. */
const stepWeight: Readonly<Record<Check["step"], number>> = {
  talk: 1,
  inspect: 1.1,
  try: 1.2,
  measure: 1.3,
};

/** Values below this are rounding. */
const NO_VALUE = 1e-9;

/** A machine of which this is likelier than not is taken to have the thing. */
const PROBABLY_HAS = 0.5;

/** "Something else" from here on means that the answers contradict each other. */
const CONTRADICTED = 0.5;

interface Option {
  readonly id: string;
  readonly isAct: boolean;
  readonly burden: number;
  /** Burden with the preference of the procedure's steps. */
  readonly weighed: number;
  readonly atMachine: boolean;
  /** Expected saving in technician-minutes. */
  readonly minutes: number;
  readonly bits: number;
  readonly decides: Decides;
  /** Asked before the interview ends, whatever it saves. */
  readonly always: boolean;
}

/**
 * The check or act with the greatest expected saving per burden among those open to this person,
 * or why there is none: `clear-enough` (no answer would change what happens next),
 * `not-worth-asking`, `nothing-left`, `contradiction` (the answers do not fit together).
 * @throws UnknownId, OutOfRange for evidence that names what does not exist
 */
export function chooseNext(
  model: Model,
  evidence: Evidence,
  situation: Situation,
  budget: Budget = DEFAULT_BUDGET,
): Next {
  const belief = updateBelief(model, evidence);
  const { probability } = belief;
  const other = probability[probability.length - 1] ?? 0;
  if (other > CONTRADICTED && doesNotFit(model, evidence, belief).length > 1) {
    return { kind: "stop", because: "contradiction" };
  }
  const looking: Looking = {
    model,
    evidence,
    situation,
    probability,
    seen: seenNow(model, evidence),
  };
  const onSite = situation.performer === "technician" && situation.place === "at-machine";
  if (onSite) return nextOnSite(looking, belief);
  const options = optionsOf(looking, budget);
  if (options.length === 0) return { kind: "stop", because: "nothing-left" };
  const worth = worthDoing(options, situation);
  const [best] = worth;
  if (best === undefined) {
    const idle = options.every((option) => option.minutes < NO_VALUE);
    return { kind: "stop", because: idle ? "clear-enough" : "not-worth-asking" };
  }
  return {
    kind: "ask",
    check: best.id,
    isAct: best.isAct,
    decides: best.decides,
    valueMinutes: best.minutes,
    aboutMore: questionsAfter(worth),
    trip: situation.place === "can-go" && best.atMachine ? walkList(worth) : [],
  };
}

function optionsOf(looking: Looking, budget: Budget): readonly Option[] {
  const { model, situation, probability } = looking;
  const open = candidates(looking);
  const prices = pricesOf(model, shortlist(model, probability), situation);
  const operator = situation.performer === "operator";
  const portfolio = portfolioOf(
    prices,
    operator ? selfHelps(prices, open.acts, situation.has) : [],
  );
  const reporter = reporterOf(situation);
  const questions = open.checks.map((check) => {
    const channel = channelOf(model, looking.seen, { observation: check.yields, reporter });
    const answers = answersOn(prices.list, channel);
    const value = answerValue(portfolio, answers);
    const group = model.observations.get(check.yields)?.group ?? -1;
    return { ...value, check, answers, group, burden: burdenOf(check, operator) };
  });
  const further = savedByAsking(portfolio, questions, budget.lookAhead);
  const checks = questions.map((question, index) => ({
    id: question.check.id,
    isAct: false,
    burden: question.burden,
    weighed: question.burden * stepWeight[question.check.step],
    atMachine: question.check.atMachine,
    minutes: question.saved + (further[index] ?? 0),
    bits: question.bits,
    decides: decidedBy(question),
    always: operator && askedAnyway(model, question.check),
  }));
  return [...checks, ...actOptions(portfolio, open.acts, operator)];
}

/** A check that is asked of every machine that probably has what it looks at. */
function askedAnyway({ facts, knowledge }: Model, { alwaysAsked, needs }: Check): boolean {
  if (alwaysAsked !== true) return false;
  return chanceHolds(needs, facts, knowledge.machines.get(facts.kind), 1) >= PROBABLY_HAS;
}

/** What the answers change: the kind of change that saves most. */
function decidedBy({ now, then }: AnswerValue<Policy>): Decides {
  const changes = new Map<Decides, number>();
  for (const { policy, saved } of then) {
    const what = differenceOf(now, policy);
    changes.set(what, (changes.get(what) ?? 0) + saved);
  }
  let decides: Decides = "cause";
  let most = 0;
  for (const [what, saved] of changes) if (saved > most) [decides, most] = [what, saved];
  return decides;
}

function burdenOf(asked: { readonly burden: number; readonly minutes: number }, operator: boolean) {
  return operator ? asked.burden : asked.minutes;
}

/** An act's value: what it saves against the best way without self-help. */
function actOptions(
  portfolio: Portfolio,
  acts: readonly Act[],
  operator: boolean,
): readonly Option[] {
  const { weights, helps } = portfolio;
  const after = bestWithoutHelp(portfolio);
  return acts.flatMap((act) => {
    const help = helps.find(({ id }) => id === act.id);
    if (help === undefined) return [];
    const burden = burdenOf(act, operator);
    return {
      id: act.id,
      isAct: true,
      burden,
      weighed: burden * stepWeight.try,
      atMachine: true,
      minutes: savedBy(help, weights, after),
      bits: binaryEntropy(endedBy(help, weights)),
      decides: "chat" as const,
      always: false,
    };
  });
}

function binaryEntropy(p: number): number {
  return p <= 0 || p >= 1 ? 0 : -p * Math.log2(p) - (1 - p) * Math.log2(1 - p);
}

/**
 * The options that save more than their burden and those asked in any case, best first. Asking for
 * less would pay by a hair in simulated calls, but it makes the median interview half as long again
 * (11 and more questions instead of 9 on the field cases) for the same list of causes: a tired
 * person's patience decides.
 */
function worthDoing(options: readonly Option[], situation: Situation): readonly Option[] {
  const score = (option: Option): number => option.minutes / option.weighed;
  const ranked = options
    .filter((option) => option.always || pays(option))
    .sort(
      (a, b) => differs(score(b), score(a)) || differs(b.bits, a.bits) || (a.id < b.id ? -1 : 1),
    );
  if (situation.place !== "can-go" || situation.performer === "technician") return ranked;
  const seated = ranked.filter((option) => !option.atMachine);
  const walk = ranked.filter((option) => option.atMachine);
  const saved = walk
    .slice(0, MOST_ON_A_WALK)
    .reduce((sum, { minutes, burden }) => sum + minutes - burden, 0);
  if (seated.length > 0) return [...seated, ...walk];
  return saved > WALK_BURDEN || walk.some(({ always }) => always) ? walk : [];
}

function pays({ minutes, burden }: Option): boolean {
  return minutes > burden && minutes >= NO_VALUE;
}

/** A difference beyond rounding, relative to the size of the numbers. */
function differs(a: number, b: number): number {
  return Math.abs(a - b) > 1e-9 * Math.max(1, Math.abs(a), Math.abs(b)) ? a - b : 0;
}

function walkList(worth: readonly Option[]): readonly string[] {
  return worth
    .filter((option) => option.atMachine)
    .slice(0, MOST_ON_A_WALK)
    .map((option) => option.id);
}

/** Of the questions worth asking now, about this part is still worth asking in its turn. */
const STILL_WORTH = 0.6;

/** More than this nobody wants to hear. */
const MOST_TOLD = 9;

/** How many questions are likely after this one: answers make some of the others needless. */
function questionsAfter(worth: readonly Option[]): number {
  return Math.min(MOST_TOLD, Math.round(STILL_WORTH * (worth.length - 1)));
}
