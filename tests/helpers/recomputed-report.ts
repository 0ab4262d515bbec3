import type { StoredCase, StoredEvent } from "./e2e-day.ts";

/**
 * The closing report worked out a second time, from nothing but the events as they stand on disk,
 * by what the words of the report mean. It shares no code with the program.
 */
const DAY_MS = 86_400_000;
const WINDOW_DAYS = 30;
/** Two-sided 95 % quantile of the normal distribution; common tables round it to 1.96. */
const Z = 1.959963984540054;

const last = (events: readonly StoredEvent[], type: string) =>
  events.findLast((one) => one.type === type);
const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value);
const text = (value: unknown) => (typeof value === "string" ? value : "");
const number = (value: unknown) => (typeof value === "number" ? value : Number.NaN);
const words = (value: unknown) => (isList(value) ? value.map(text) : []);
const field = (value: unknown, name: string): unknown =>
  typeof value === "object" && value !== null ? Reflect.get(value, name) : undefined;

/** From the start at the machine to the end of that visit, over all visits. */
function minutesAtMachine(events: readonly StoredEvent[]): number | null {
  const told = events.findLast((one) => one.type === "work.told" && "minutes" in one);
  if (told !== undefined) return number(told["minutes"]);
  const starts = events.filter((one) => one.type === "visit.started");
  const lengths = starts.map(({ at }) => {
    const end = events.find(
      (one) => one.at >= at && ["visit.cut-short", "case.closed"].includes(one.type),
    );
    return end === undefined ? 0 : end.at - at;
  });
  const sum = lengths.reduce((all, one) => all + one, 0);
  return starts.length === 0 ? null : Math.max(1, Math.round(sum / 60_000));
}

function figures({ id, events }: StoredCase) {
  const [opened] = events;
  const closed = last(events, "case.closed");
  const confirmed = last(events, "cause.confirmed");
  const foreseen = last(events, "visit.foreseen");
  const described = events.filter((one) => one.type === "machine.described");
  const kind = described.map((one) => text(field(one["facts"], "kind"))).findLast(Boolean);
  return {
    ...{ id, openedAt: opened?.at ?? 0, closedAt: closed?.at ?? null },
    operator: text(last(events, "operator.joined")?.["operator"] ?? opened?.["operator"]),
    kind: kind ?? "other",
    machine: described.map((one) => text(one["profile"])).findLast(Boolean) ?? "",
    end: text(closed?.["end"]),
    complaint: text(closed?.["complaint"]),
    causes: words(confirmed?.["faults"]),
    how: text(confirmed?.["how"]),
    missing: events
      .filter((one) => one.type === "visit.cut-short")
      .map((one) => text(one["missing"])),
    inVain: events.filter((one) => one.type === "remedy.done" && one["ran"] === false).length,
    ...{ minutes: minutesAtMachine(events), foreseen },
  };
}
type Figures = ReturnType<typeof figures>;

/** Interval after Wilson (1927): the roots of (p̂ − p)² = z²·p·(1 − p)/n. */
function share(part: number, of: number) {
  if (of === 0) return { value: 0, low: 0, high: 1, of };
  const value = part / of;
  const [a, b, c] = [1 + Z ** 2 / of, -2 * value - Z ** 2 / of, value ** 2];
  const root = Math.sqrt(b * b - 4 * a * c);
  return { value, low: (-b - root) / (2 * a), high: (-b + root) / (2 * a), of };
}

function middle(values: readonly number[]): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  if (sorted.length === 0) return null;
  const upper = sorted[half] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[half - 1] ?? Number.NaN)) / 2;
}

function tally(all: readonly string[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const one of all) counts[one] = (counts[one] ?? 0) + 1;
  return counts;
}

/** Each closed case that the same person reported again on the same machine within the window. */
function comebacks(closed: readonly Figures[]): Set<string> {
  const real = closed.filter(({ end }) => end !== "duplicate" && end !== "called-off");
  const isAgain = (one: Figures, later: Figures) =>
    later.openedAt > one.openedAt &&
    later.openedAt - (one.closedAt ?? 0) <= WINDOW_DAYS * DAY_MS &&
    later.operator === one.operator &&
    one.operator !== "" &&
    later.complaint === one.complaint &&
    (later.machine === "" ? later.kind === one.kind : later.machine === (one.machine || one.id));
  const again = real.filter((one) => real.some((later) => isAgain(one, later)));
  return new Set(again.map(({ id }) => id));
}

/** How the percentages of the leading cause did, in fifths of the scale. */
function calibration(closed: readonly Figures[], back: ReadonlySet<string>) {
  const judged = closed.filter(
    ({ id, how, causes, foreseen }) =>
      causes.length > 0 && how !== "guess" && !back.has(id) && foreseen !== undefined,
  );
  const claims = judged.map(({ foreseen, causes }) => {
    const list = isList(foreseen?.["causes"]) ? foreseen["causes"] : [];
    const chances = list.map((one) => ({
      fault: text(field(one, "fault")),
      chance: number(field(one, "probability")),
    }));
    const given = chances.filter(({ fault }) => causes.includes(fault));
    return {
      said: chances[0]?.chance ?? Number.NaN,
      came: causes.includes(chances[0]?.fault ?? "") ? 1 : 0,
      truth: given.reduce((sum, { chance }) => sum + chance, 0),
    };
  });
  const mean = (all: readonly number[]) => all.reduce((sum, one) => sum + one, 0) / all.length;
  const fifths = [0, 1, 2, 3, 4].flatMap((fifth) => {
    const inside = claims.filter(({ said }) => Math.min(4, Math.floor(said * 5)) === fifth);
    if (inside.length === 0) return [];
    const [claimed, held] = [mean(inside.map((c) => c.said)), mean(inside.map((c) => c.came))];
    return [{ count: inside.length, claimed, held }];
  });
  return {
    claims: claims.length,
    brier: claims.length === 0 ? null : mean(claims.map(({ said, came }) => (said - came) ** 2)),
    logLoss:
      claims.length === 0
        ? null
        : mean(claims.map(({ truth }) => -Math.log(Math.max(truth, 1e-4)))),
    bins: fifths,
  };
}

/** What the cases on disk add up to. */
export function recomputedReport(cases: readonly StoredCase[]) {
  const all = cases.map(figures);
  const closed = all.filter(({ closedAt }) => closedAt !== null);
  const visits = closed.filter(({ end }) => end === "visit");
  const back = comebacks(closed);
  const earnest = closed.filter(({ end }) => end !== "duplicate" && end !== "called-off");
  const timed = visits.flatMap(({ minutes, foreseen }) =>
    minutes === null || foreseen === undefined ? [] : [{ minutes, foreseen }],
  );
  const within = timed.filter(({ minutes, foreseen }) => minutes <= number(foreseen["p90Minutes"]));
  const missing = all.flatMap((one) => one.missing);
  return {
    ...{ cases: all.length, open: all.length - closed.length, closed: closed.length },
    byEnd: tally(closed.map(({ end }) => end)),
    solvedByChat: share(closed.filter((c) => c.end === "solved-by-chat").length, earnest.length),
    firstVisitFix: share(
      visits.filter((one) => one.missing.length === 0 && !back.has(one.id)).length,
      visits.length,
    ),
    firstRepairFix: share(visits.filter(({ inVain }) => inVain === 0).length, visits.length),
    secondTrips: missing.length,
    missing: tally(missing),
    minutes: {
      visits: timed.length,
      foreseen: middle(timed.map(({ foreseen }) => number(foreseen["medianMinutes"]))),
      taken: middle(timed.map(({ minutes }) => minutes)),
      withinP90: share(within.length, timed.length),
    },
    comebacks: back.size,
    causes: tally(closed.flatMap((one) => one.causes.map((cause) => `${one.kind} ${cause}`))),
    calibration: calibration(closed, back),
  };
}

/**
 * A report with its counted lists by name, and numbers to twelve digits: the program adds the same
 * numbers up in another order.
 */
export function comparable(report: object): unknown {
  const keyed = (name: string, ...keys: readonly string[]) => {
    const list = field(report, name);
    if (!isList(list)) return list;
    const entries = list.map((one) => [
      keys.map((key) => text(field(one, key))).join(" "),
      field(one, "count"),
    ]);
    return Object.fromEntries(entries);
  };
  const lists = { missing: keyed("missing", "what"), causes: keyed("causes", "machine", "fault") };
  return JSON.parse(JSON.stringify({ ...report, ...lists }), (_, one: unknown) =>
    typeof one === "number" ? Number(one.toPrecision(12)) : one,
  );
}
