import type { Spread } from "../domain/circuit.ts";
import type { Random } from "./random.ts";

/** How often a draw outside the stated limits is tried again before it is cut to them. */
const TRIES = 20;

/** Draws one figure. */
export function drawFigure(spread: Spread, random: Random): number {
  switch (spread.kind) {
    case "exact":
      return spread.value;
    case "even":
      return spread.low + (spread.high - spread.low) * random.next();
    case "choice":
      return drawFigure(choose(spread.choices, random).spread, random);
    default:
      return drawBounded(spread, random);
  }
}

function drawBounded(
  spread: Extract<Spread, { kind: "normal" | "about" }>,
  random: Random,
): number {
  const low = spread.low ?? (spread.kind === "about" ? 0 : Number.NEGATIVE_INFINITY);
  const high = spread.high ?? Number.POSITIVE_INFINITY;
  let value = spread.middle;
  for (let i = 0; i < TRIES; i++) {
    const step = random.normal();
    value =
      spread.kind === "about"
        ? spread.middle * spread.spread ** step
        : spread.middle + spread.spread * step;
    if (value >= low && value <= high) return value;
  }
  return Math.min(high, Math.max(low, value));
}

/** Picks one of several by weight. */
export function choose<T extends { readonly weight: number }>(
  choices: readonly T[],
  random: Random,
): T {
  let rest = random.next() * choices.reduce((sum, choice) => sum + choice.weight, 0);
  for (const choice of choices) {
    rest -= choice.weight;
    if (rest < 0) return choice;
  }
  const last = choices.at(-1);
  if (last === undefined) throw new RangeError("nothing to choose from");
  return last;
}

/** The middle of a spread: what the ordinary machine has. */
export function middleOf(spread: Spread): number {
  switch (spread.kind) {
    case "exact":
      return spread.value;
    case "even":
      return (spread.low + spread.high) / 2;
    case "choice": {
      const likely = [...spread.choices].sort((a, b) => b.weight - a.weight)[0];
      return likely === undefined ? 0 : middleOf(likely.spread);
    }
    default:
      return spread.middle;
  }
}
