import { type FieldCase, forecastsAt } from "./field-forecasts.ts";
import { type ScoreBlock, scoreStage } from "./field-score.ts";

/** How good it would be if the interview were broken off early. */
export interface StoppedEarly {
  /** Questions put. */
  readonly after: number;
  readonly top1: ScoreBlock["top1"];
  readonly top3: ScoreBlock["top1"];
}

const percent = (value: number) => `${Math.round(100 * value)} %`.padStart(5);

/** After so many questions; the median interview has about as many as the last. */
const STOPS = [3, 5, 7, 9] as const;

/** The interview of each case broken off after three, five, seven and nine questions. */
export function stoppedEarly(cases: readonly FieldCase[]): StoppedEarly[] {
  return STOPS.map((after) => {
    const { top1, top3 } = scoreStage("operator", forecastsAt("operator", cases, after)).all;
    return { after, top1, top3 };
  });
}

/** A line for each stop. */
export const stoppedText = (stops: readonly StoppedEarly[]) =>
  stops
    .map(
      ({ after, top1, top3 }) =>
        `  stopped after ${after}: first ${percent(top1.value)}  in three ${percent(top3.value)}\n`,
    )
    .join("");
