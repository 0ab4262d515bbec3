import {
  brierScore,
  calibrationError,
  logLoss,
  type Share,
  wilson,
} from "../diagnosis/calibration.ts";
import { type CauseGroup, causeGroups } from "../domain/vocabulary.ts";

/** What a stage said of one case, by group. */
export interface GroupForecast {
  readonly id: string;
  readonly strict: boolean;
  /** The true groups; one of them is enough. */
  readonly truth: readonly string[];
  readonly byGroup: Readonly<Record<string, number>>;
  /** The same before any answer, from the machine alone. */
  readonly priors: Readonly<Record<string, number>>;
  readonly asked: number;
  readonly answered: number;
}

export interface CaseScore {
  readonly id: string;
  readonly rank: number;
  readonly probability: number;
  readonly leader: string;
  readonly asked: number;
  readonly answered: number;
}

interface Figures {
  readonly cases: number;
  readonly top1: Share;
  readonly top3: Share;
  readonly logLoss: number;
  readonly brier: number;
  readonly ece: number;
}

export interface ScoreBlock extends Figures {
  readonly questions: { readonly median: number; readonly p90: number };
  readonly weighted: Figures & { readonly effectiveCases: number };
  readonly baselines: { readonly priors: Figures; readonly uniform: Figures };
}

export interface StageScore {
  readonly stage: string;
  readonly all: ScoreBlock;
  readonly strict: ScoreBlock;
  readonly byCase: readonly CaseScore[];
}

/** Bins of the calibration error, by equal counts. */
const BINS = 5;

const groups: readonly string[] = causeGroups;

function scoreOf(forecast: GroupForecast, byGroup: Readonly<Record<string, number>>): CaseScore {
  const chance = (group: string) => byGroup[group] ?? 0;
  const order = [...groups].sort((a, b) => chance(b) - chance(a));
  const ranks = forecast.truth.map((group) => order.indexOf(group) + 1).filter((rank) => rank > 0);
  return {
    id: forecast.id,
    rank: ranks.length === 0 ? groups.length + 1 : Math.min(...ranks),
    probability: forecast.truth.reduce((sum, group) => sum + chance(group), 0),
    leader: order[0] ?? "",
    asked: forecast.asked,
    answered: forecast.answered,
  };
}

/** The true groups count as one class: any of them is right. */
function classes(forecast: GroupForecast, byGroup: Readonly<Record<string, number>>) {
  const wrong = groups.filter((group) => !forecast.truth.includes(group));
  const right = forecast.truth.reduce((sum, group) => sum + (byGroup[group] ?? 0), 0);
  const others = wrong.map((group) => byGroup[group] ?? 0);
  const rest = Math.max(0, 1 - right - others.reduce((sum, one) => sum + one, 0));
  return { probabilities: [right, ...others, rest], truth: 0 };
}

/** Repeats each case by its weight, so that the plain formulas give weighted means. */
const RESOLUTION = 200;

interface Weighed {
  readonly forecast: GroupForecast;
  readonly byGroup: Readonly<Record<string, number>>;
  readonly weight: number;
}

function figures(cases: readonly Weighed[], effective: number): Figures {
  const total = cases.reduce((sum, { weight }) => sum + weight, 0);
  const share = (holds: (score: CaseScore) => boolean) => {
    const held = cases
      .filter(({ forecast, byGroup }) => holds(scoreOf(forecast, byGroup)))
      .reduce((sum, { weight }) => sum + weight, 0);
    return wilson(total === 0 ? 0 : (held / total) * effective, effective);
  };
  const repeated = cases.flatMap((one) =>
    Array.from({ length: Math.round((one.weight / total) * RESOLUTION * cases.length) }, () => one),
  );
  const all = repeated.map(({ forecast, byGroup }) => classes(forecast, byGroup));
  const claims = repeated.map(({ forecast, byGroup }) => {
    const { leader } = scoreOf(forecast, byGroup);
    return { probability: byGroup[leader] ?? 0, held: forecast.truth.includes(leader) };
  });
  return {
    cases: cases.length,
    top1: share((score) => score.rank === 1),
    top3: share((score) => score.rank <= 3),
    logLoss: logLoss(all),
    brier: brierScore(all),
    ece: calibrationError(claims, BINS, "equal-count").l1,
  };
}

function quantile(values: readonly number[], at: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(at * sorted.length))] ?? 0;
}

/**
 * Weights that give each group the share it has in the shipped priors instead of the one it has in
 * the collection, which holds what people write up rather than what breaks.
 */
function weights(forecasts: readonly GroupForecast[]): readonly number[] {
  const count = new Map<string, number>();
  const prior = new Map<string, number>();
  for (const { truth, priors } of forecasts) {
    for (const group of truth) count.set(group, (count.get(group) ?? 0) + 1 / truth.length);
    for (const group of groups) {
      prior.set(group, (prior.get(group) ?? 0) + (priors[group] ?? 0) / forecasts.length);
    }
  }
  return forecasts.map(({ truth }) => {
    const ratios = truth.map((group) => {
      const share = (count.get(group) ?? 0) / forecasts.length;
      return share === 0 ? 0 : (prior.get(group) ?? 0) / share;
    });
    return ratios.reduce((sum, one) => sum + one, 0) / Math.max(1, ratios.length);
  });
}

function block(forecasts: readonly GroupForecast[]): ScoreBlock {
  const plain = (pick: (forecast: GroupForecast) => Readonly<Record<string, number>>) =>
    figures(
      forecasts.map((forecast) => ({ forecast, byGroup: pick(forecast), weight: 1 })),
      forecasts.length,
    );
  const weight = weights(forecasts);
  const sum = weight.reduce((total, one) => total + one, 0);
  const squares = weight.reduce((total, one) => total + one ** 2, 0);
  const effectiveCases = squares === 0 ? 0 : sum ** 2 / squares;
  const even = Object.fromEntries(groups.map((group) => [group, 1 / groups.length]));
  const asked = forecasts.map((forecast) => forecast.asked);
  const weighed = forecasts.map((forecast, index) => ({
    forecast,
    byGroup: forecast.byGroup,
    weight: weight[index] ?? 0,
  }));
  return {
    ...plain((forecast) => forecast.byGroup),
    questions: { median: quantile(asked, 0.5), p90: quantile(asked, 0.9) },
    weighted: { ...figures(weighed, effectiveCases), effectiveCases },
    baselines: { priors: plain((forecast) => forecast.priors), uniform: plain(() => even) },
  };
}

/** Scores a stage over all cases and over the strict ones. */
export function scoreStage(stage: string, forecasts: readonly GroupForecast[]): StageScore {
  return {
    stage,
    all: block(forecasts),
    strict: block(forecasts.filter((forecast) => forecast.strict)),
    byCase: forecasts.map((forecast) => scoreOf(forecast, forecast.byGroup)),
  };
}

/** The groups a case file may name; anything else is a mistake worth saying. */
export function isGroup(name: string): name is CauseGroup {
  return groups.includes(name);
}
