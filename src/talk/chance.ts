/** Nobody is told of more certainty than this; figures for machines stay uncapped. */
const MOST_SHOWN = 0.97;

/** A probability as people are shown it, in per cent: whole, at least 1 where there is any. */
export function shownChance(probability: number): number {
  const capped = Math.min(probability, MOST_SHOWN);
  return capped <= 0 ? 0 : Math.max(1, Math.round(capped * 100));
}

/** The word that goes with a chance; its sentence is in the chat's own words. */
export function chanceWord(probability: number): "likely" | "possible" | "less-likely" {
  if (probability >= 0.5) return "likely";
  return probability >= 0.15 ? "possible" : "less-likely";
}
