/** One forecast: probabilities over the classes, and which class came true. */
export interface Forecast {
  /** P(class), each in [0, 1]. */
  readonly probabilities: readonly number[];
  /** Index of the true class. */
  readonly truth: number;
}

/** A claim with its probability and whether it held. */
export interface Claim {
  readonly probability: number;
  readonly held: boolean;
}

/** One bin of a reliability diagram. */
export interface ReliabilityBin {
  readonly count: number;
  /** Mean probability claimed. */
  readonly claimed: number;
  /** Share that held. */
  readonly held: number;
}

/** A share with its 95 % confidence interval; all in [0, 1]. */
export interface Share {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export type Binning = "equal-count" | "equal-width";

/** Standard normal quantile for 95 % two-sided. */
const Z95 = 1.959963984540054;

/**
 * Mean squared distance between forecast and outcome over all classes, in [0, 2]; 0 is best, NaN
 * without forecasts. Source: Brier 1950.
 */
export function brierScore(forecasts: readonly Forecast[]): number {
  return mean(
    forecasts.map(({ probabilities, truth }) =>
      probabilities.reduce((sum, p, k) => sum + (p - Number(k === truth)) ** 2, 0),
    ),
  );
}

/** Brier score of yes-or-no claims, in [0, 1]: half of what the two classes together give. */
export function binaryBrier(claims: readonly Claim[]): number {
  return mean(claims.map(({ probability, held }) => (probability - Number(held)) ** 2));
}

/**
 * Mean of −ln P(true class), in nats.
 * @param floor probabilities below it count as it, so that one miss is not infinite
 */
export function logLoss(forecasts: readonly Forecast[], floor = 1e-4): number {
  return mean(
    forecasts.map(
      ({ probabilities, truth }) => -Math.log(Math.max(floor, probabilities[truth] ?? 0)),
    ),
  );
}

/** Claims gathered into bins by probability, lowest first; empty bins are left out. */
export function reliability(
  claims: readonly Claim[],
  bins: number,
  binning: Binning,
): readonly ReliabilityBin[] {
  return binned(claims, bins, binning)
    .filter((bin) => bin.length > 0)
    .map((bin) => ({
      count: bin.length,
      claimed: mean(bin.map((claim) => claim.probability)),
      held: mean(bin.map((claim) => Number(claim.held))),
    }));
}

/**
 * Expected calibration error: how far claims and outcomes are apart in the bins. `l1` weighs the
 * distances by count, `l2` is the root of their weighted squares, `max` the largest.
 * Source: Naeini, Cooper & Hauskrecht 2015.
 */
export function calibrationError(
  claims: readonly Claim[],
  bins: number,
  binning: Binning,
): { readonly l1: number; readonly l2: number; readonly max: number } {
  let [l1, squares, max] = [0, 0, 0];
  for (const { count, claimed, held } of reliability(claims, bins, binning)) {
    const gap = Math.abs(claimed - held);
    l1 += (count / claims.length) * gap;
    squares += (count / claims.length) * gap ** 2;
    max = Math.max(max, gap);
  }
  return { l1, l2: Math.sqrt(squares), max };
}

/**
 * A share of successes with its 95 % interval; without trials 0 to 1.
 * Source: Wilson 1927.
 */
export function wilson(successes: number, trials: number): Share {
  if (trials <= 0) return { value: 0, low: 0, high: 1 };
  const value = successes / trials;
  const z2 = Z95 ** 2 / trials;
  const middle = (value + z2 / 2) / (1 + z2);
  const half = (Z95 / (1 + z2)) * Math.sqrt((value * (1 - value)) / trials + z2 / (4 * trials));
  return { value, low: Math.max(0, middle - half), high: Math.min(1, middle + half) };
}

function binned(claims: readonly Claim[], bins: number, binning: Binning): readonly Claim[][] {
  const result: Claim[][] = Array.from({ length: bins }, () => []);
  const sorted = [...claims].sort((a, b) => a.probability - b.probability);
  for (const [place, claim] of sorted.entries()) {
    const bin =
      binning === "equal-width"
        ? Math.floor(claim.probability * bins)
        : Math.floor((place * bins) / sorted.length);
    result[Math.min(bins - 1, bin)]?.push(claim);
  }
  return result;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
