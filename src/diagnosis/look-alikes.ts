import type { Evidence } from "../domain/evidence.ts";
import type { Check } from "../domain/knowledge.ts";
import type { LookAlikes, Ranking } from "../domain/triage.ts";
import type { Belief } from "./belief.ts";
import type { Prospects } from "./channel.ts";
import { chanceHolds } from "./machine-condition.ts";
import type { Model } from "./model.ts";

/** Causes less likely than this are not worth telling apart. */
const LISTED_FROM = 0.05;
/** All that was told speaks for one at most this much more than for the other: 3 decibans. */
const ALIKE_WITHIN = Math.log(2);
const MOST_ALIKE = 4;
/** A check must raise the chance to name the right one of them by this much to be worth naming. */
const WORTH_NAMING = 0.1;
/** Checks that tell as much as this within each other differ in minutes only. */
const AS_GOOD = 0.03;
/** A check of a part that the machine hardly ever has tells nothing. */
const LIKELY_ENOUGH = 0.2;

/**
 * The leader and the likely causes that the evidence speaks for as much: what orders them is only
 * how often each happens. With them goes the check that would tell them apart best.
 * @param causes by falling probability
 */
export function lookAlikes(
  model: Model,
  given: { readonly evidence: Evidence; readonly belief: Belief; readonly prospects: Prospects },
  causes: Ranking["causes"],
): LookAlikes | null {
  const { probability } = given.belief;
  const { faults, prior } = model.hypotheses;
  const likely = causes
    .filter((cause) => cause.probability >= LISTED_FROM)
    .map((cause) => ({ fault: cause.fault, h: 1 + faults.indexOf(cause.fault) }));
  const spokenFor = (h: number) => Math.log(probability[h] ?? 0) - Math.log(prior[h] ?? 0);
  const [leader] = likely;
  if (leader === undefined || given.evidence.reports.length === 0) return null;
  const alike = likely
    .filter(({ h }) => Math.abs(spokenFor(h) - spokenFor(leader.h)) <= ALIKE_WITHIN)
    .slice(0, MOST_ALIKE);
  if (alike.length < 2) return null;
  const weighed = alike.map(({ h }) => ({ h, weight: probability[h] ?? 0 }));
  const check = bestCheck(model, given, weighed);
  return { faults: alike.map(({ fault }) => fault), check };
}

type Weighed = readonly { readonly h: number; readonly weight: number }[];

function bestCheck(
  model: Model,
  { evidence, prospects }: { readonly evidence: Evidence; readonly prospects: Prospects },
  alike: Weighed,
): string | null {
  const known = new Set(evidence.reports.map(({ observation }) => observation));
  const whole = alike.reduce((sum, { weight }) => sum + weight, 0);
  const guess = Math.max(...alike.map(({ weight }) => weight)) / whole;
  let best: { check: Check; told: number } | null = null;
  for (const check of model.knowledge.checks.values()) {
    if (known.has(check.yields) || !isOpen(model, check)) continue;
    const channel = prospects(check.yields);
    const named = channel.outcomes.map((_, outcome) =>
      Math.max(...alike.map(({ h, weight }) => weight * channel.chance(h, outcome))),
    );
    const told = named.reduce((sum, one) => sum + one, 0) / whole - guess;
    if (told < WORTH_NAMING) continue;
    if (best === null || isBetter({ check, told }, best)) best = { check, told };
  }
  return best?.check.id ?? null;
}

interface Rated {
  readonly check: Check;
  readonly told: number;
}

function isBetter(one: Rated, other: Rated): boolean {
  if (Math.abs(one.told - other.told) > AS_GOOD) return one.told > other.told;
  return one.check.minutes < other.check.minutes;
}

function isOpen({ knowledge, facts, observations }: Model, check: Check): boolean {
  const source = observations.get(check.yields)?.source;
  if (source === undefined || !check.performers.includes("technician")) return false;
  const kind = knowledge.machines.get(facts.kind);
  return [check.needs, source.needs].every(
    (needs) => chanceHolds(needs, facts, kind, 1) >= LIKELY_ENOUGH,
  );
}
