import type { SharedLikelihood } from "./model.ts";

/**
 * What is so on this share of machines is told without meaning anything by it: "it does it every
 * time". Engineering estimate.
 */
const ORDINARY = 0.5;

/**
 * Reports that nobody asked for. Somebody who looks a machine over notes what is odd, and of that
 * mostly what may have to do with the trouble: what a hypothesis explains is `times` likelier to be
 * mentioned than what would be so anyway. Of P(report | h) the part above `usual`, the chance that
 * it is so on the machines in general, is what the hypothesis explains.
 *
 * @param usual P(report) over all hypotheses; > 0
 * @param times at least 1; 1 leaves the likelihoods as they are
 */
export function toldUnasked(
  weighed: SharedLikelihood,
  usual: number,
  times: number,
): SharedLikelihood {
  if (times === 1 || !(usual > 0) || usual >= ORDINARY) return weighed;
  const like = weighed.like.map((chance) =>
    chance > usual ? times * (chance - usual) + usual : chance,
  );
  return { ...weighed, like };
}
