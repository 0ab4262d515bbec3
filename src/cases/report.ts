import { binaryBrier, logLoss, reliability, wilson } from "../diagnosis/calibration.ts";
import type { Counted, Share, ShopReport } from "../domain/shop-report.ts";
import { type CaseFigures, comebacksIn } from "./case-figures.ts";

const BINS = 5;

const share = (part: number, of: number): Share => ({ ...wilson(part, of), of });

function counted(all: readonly string[]): Counted[] {
  const counts = new Map<string, number>();
  for (const what of all) counts.set(what, (counts.get(what) ?? 0) + 1);
  return [...counts]
    .map(([what, count]) => ({ what, count }))
    .sort((a, b) => b.count - a.count || (a.what < b.what ? -1 : 1));
}

function median(values: readonly number[]): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  const [low, high] = [sorted[(sorted.length - 1) >> 1], sorted[sorted.length >> 1]];
  return low === undefined || high === undefined ? null : (low + high) / 2;
}

function causesIn(closed: readonly CaseFigures[]): ShopReport["causes"] {
  const all = closed.flatMap((one) =>
    (one.confirmed?.faults ?? []).map((fault) => `${one.kind}|${fault}`),
  );
  return counted(all).map(({ what, count }) => {
    const [machine = "", fault = ""] = what.split("|");
    return { machine, fault, count };
  });
}

function minutesIn(visits: readonly CaseFigures[]): ShopReport["minutes"] {
  const known = visits.flatMap(({ foreseen, minutes }) =>
    foreseen === null || minutes === null ? [] : [{ ...foreseen, minutes }],
  );
  const within = known.filter((one) => one.minutes <= one.p90Minutes).length;
  return {
    visits: known.length,
    foreseen: median(known.map((one) => one.medianMinutes)),
    taken: median(known.map((one) => one.minutes)),
    withinP90: share(within, known.length),
  };
}

/** The leading cause as foreseen, against what was found; guesses and comebacks say nothing. */
function calibrationIn(
  closed: readonly CaseFigures[],
  back: ReadonlySet<string>,
): ShopReport["calibration"] {
  const sure = closed.filter(
    ({ id, confirmed }) =>
      confirmed !== null &&
      confirmed.how !== "guess" &&
      confirmed.faults.length > 0 &&
      !back.has(id),
  );
  const pairs = sure.flatMap(({ foreseen, confirmed }) => {
    const [leader] = foreseen?.causes ?? [];
    const found = confirmed?.faults ?? [];
    if (foreseen === null || leader === undefined) return [];
    const truth = foreseen.causes.filter((one) => found.includes(one.fault));
    const given = truth.reduce((sum, one) => sum + one.probability, 0);
    const { probability } = leader;
    return [{ claim: { probability, held: found.includes(leader.fault) }, given }];
  });
  const claims = pairs.map((pair) => pair.claim);
  const none = claims.length === 0;
  const forecasts = pairs.map(({ given }) => ({ probabilities: [given, 1 - given], truth: 0 }));
  return {
    claims: claims.length,
    brier: none ? null : binaryBrier(claims),
    logLoss: none ? null : logLoss(forecasts),
    bins: reliability(claims, BINS, "equal-width"),
  };
}

/** Adds the figures of a shop's cases up. @param comebackDays the window of the shop's settings */
export function reportOf(all: readonly CaseFigures[], comebackDays: number): ShopReport {
  const closed = all.filter((one) => one.closed !== null);
  const ends = (end: string) => closed.filter((one) => one.closed?.end === end);
  const visits = ends("visit");
  const back = comebacksIn(all, comebackDays);
  const real = closed.length - ends("called-off").length - ends("duplicate").length;
  const fixed = visits.filter((one) => one.cutShort.length === 0 && !back.has(one.id));
  const cutShort = all.flatMap((one) => one.cutShort);
  return {
    cases: all.length,
    open: all.length - closed.length,
    closed: closed.length,
    byEnd: Object.fromEntries(
      counted(closed.flatMap((one) => one.closed?.end ?? [])).map(({ what, count }) => [
        what,
        count,
      ]),
    ),
    solvedByChat: share(ends("solved-by-chat").length, real),
    firstVisitFix: share(fixed.length, visits.length),
    firstRepairFix: share(visits.filter((one) => one.triedInVain === 0).length, visits.length),
    secondTrips: cutShort.length,
    missing: counted(cutShort),
    minutes: minutesIn(visits),
    comebacks: back.size,
    causes: causesIn(closed),
    calibration: calibrationIn(closed, back),
  };
}
