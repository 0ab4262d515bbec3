import type { CircuitNetwork } from "../domain/circuit.ts";
import { BAND_HALF_WIDTH, hypothesesOf, TEMPERATURE_BANDS, type TemperatureBand } from "./bank.ts";
import type { StandingBank } from "./standing-bank.ts";
import type { WeighedBank } from "./weighing.ts";

/** What a bank is a pure function of, besides the circuit and the version of the model. */
export interface BankRequest {
  readonly band: TemperatureBand;
  readonly seed: number;
  /** Standing machines of each hypothesis. */
  readonly machines: number;
  /** Pairs `a+b` to simulate beside the single faults. */
  readonly pairs: readonly string[];
}

/** Machines that stand for each hypothesis. */
export const STANDING_MACHINES = 2000;

/** Everything to simulate for a bank, in order. */
export function bankHypotheses(network: CircuitNetwork, { pairs }: BankRequest): readonly string[] {
  return [...hypothesesOf(network), ...pairs];
}

/** The block request of one hypothesis of a bank. */
export function blockRequest(hypothesis: string, request: BankRequest) {
  const { band, seed, machines } = request;
  const celsius = TEMPERATURE_BANDS[band];
  return { hypothesis, celsius, kelvinAround: BAND_HALF_WIDTH, seed, machines };
}

/**
 * Weighs the temperature bands for a temperature that is known: the two around it by their
 * distance, the outermost alone beyond the ends.
 * @returns weights that sum to 1; bands that do not count are left out
 */
export function bandsAt(celsius: number): readonly { band: TemperatureBand; weight: number }[] {
  const bands = bandList().sort((a, b) => a.middle - b.middle);
  const above = bands.findIndex(({ middle }) => middle >= celsius);
  const upper = bands[above];
  const lower = bands[above - 1];
  if (upper === undefined) return bands.slice(-1).map(({ band }) => ({ band, weight: 1 }));
  if (lower === undefined) return [{ band: upper.band, weight: 1 }];
  const share = (celsius - lower.middle) / (upper.middle - lower.middle);
  const both = [
    { band: lower.band, weight: 1 - share },
    { band: upper.band, weight: share },
  ];
  return both.filter(({ weight }) => weight > 0);
}

/**
 * Weighs the bands for a temperature known as a mean and a spread, both in °C: five points of the
 * normal distribution, each between its two bands.
 */
export function bandsAround(
  celsius: number,
  kelvin: number,
): readonly { band: TemperatureBand; weight: number }[] {
  // Gauss–Hermite points and weights of five nodes for a normal distribution.
  const nodes = [
    [-2.85697, 0.0112574],
    [-1.355626, 0.222076],
    [0, 0.533333],
    [1.355626, 0.222076],
    [2.85697, 0.0112574],
  ] as const;
  const sums = new Map<TemperatureBand, number>();
  for (const [place, share] of nodes) {
    for (const { band, weight } of bandsAt(celsius + place * kelvin)) {
      sums.set(band, (sums.get(band) ?? 0) + share * weight);
    }
  }
  const whole = [...sums.values()].reduce((sum, weight) => sum + weight, 0);
  return [...sums].map(([band, weight]) => ({ band, weight: weight / whole }));
}

function bandList(): { band: TemperatureBand; middle: number }[] {
  return [
    { band: "hot", middle: TEMPERATURE_BANDS.hot },
    { band: "mild", middle: TEMPERATURE_BANDS.mild },
    { band: "frost", middle: TEMPERATURE_BANDS.frost },
    { band: "hard-frost", middle: TEMPERATURE_BANDS["hard-frost"] },
  ];
}

/** Drops banks that count for nothing and makes the rest's weights sum to 1. */
export function weighBanks(
  banks: readonly { readonly bank: StandingBank; readonly weight: number }[],
): readonly WeighedBank[] {
  const counting = banks.filter(({ weight }) => weight > 0);
  const whole = counting.reduce((sum, { weight }) => sum + weight, 0);
  return counting.map(({ bank, weight }) => ({ bank, weight: weight / whole }));
}
