import type { Grammar, NumberWords } from "../domain/phrases.ts";
import { type Bench, patterns, split } from "./phrases-bench.ts";
import type { PhrasesFile } from "./phrases-schema.ts";
import type { Path } from "./source-file.ts";

/** The small words of a language. */
export function grammarOf(bench: Bench, file: PhrasesFile["grammar"]): Grammar {
  const at = (key: string): Path => ["grammar", key];
  return {
    not: split(file.not),
    notAfter: split(file["not-after"]),
    or: split(file.or),
    stop: split(file.stop),
    perceive: split(file.perceive),
    joins: split(file.joins),
    sequence: split(file.sequence),
    after: split(file.after ?? ""),
    remedy: patterns(bench, file.remedy ?? [], at("remedy")),
    at: split(file.at ?? ""),
    looked: split(file.looked ?? ""),
    fillers: split(file.fillers),
    now: patterns(bench, file.now, at("now")),
    before: patterns(bench, file.before, at("before")),
    secondHand: patterns(bench, file["second-hand"], at("second-hand")),
    secondHandAll: patterns(bench, file["second-hand-all"], at("second-hand-all")),
    unreal: patterns(bench, file.unreal, at("unreal")),
    elsewhere: patterns(bench, file.elsewhere ?? [], at("elsewhere")),
    here: patterns(bench, file.here ?? [], at("here")),
    hedges: file.hedges.map((hedge, index) => ({
      strength: hedge.strength,
      say: patterns(bench, hedge.say, ["grammar", "hedges", index, "say"]),
    })),
  };
}

/** Number words, units and expressions of time. */
export function numbersOf(bench: Bench, file: PhrasesFile["numbers"]): NumberWords {
  return {
    thousands: file.thousands,
    words: new Map(Object.entries(file.words)),
    ordinals: new Map(Object.entries(file.ordinals)),
    units: new Map(Object.entries(file.units).map(([unit, list]) => [unit, split(list)] as const)),
    about: split(file.about),
    rangeWords: split(file.range),
    between: split(file.between),
    betweenAnd: split(file["between-and"]),
    times: file.times.map((time, index) => ({
      ...time,
      say: patterns(bench, time.say, ["numbers", "times", index, "say"]),
    })),
    zeros: Object.entries(file.zero ?? {}).map(([unit, say]) => ({
      unit,
      say: patterns(bench, say, ["numbers", "zero", unit]),
    })),
    ago: split(file.ago),
    agoFirst: file["ago-first"],
    minus: split(file.minus ?? ""),
    belowZero: split(file["below-zero"] ?? ""),
    since: split(file.since),
    nominal: split(file.nominal),
    nominalOf: split(file["nominal-of"] ?? ""),
    age: split(file.age),
    months: file.months.map(split),
  };
}
