import type {
  BandRule,
  Grammar,
  Meaning,
  NumberWords,
  Pattern,
  PhraseLists,
  Phrases,
  Sign,
  StateClaim,
  Together,
  WeighedClaim,
} from "../domain/reading.ts";
import type { Problem } from "../domain/result.ts";
import { type Classes, parsePattern } from "./phrases-pattern.ts";
import type { PhrasesFile } from "./phrases-schema.ts";
import { type Path, problemIn, type SourceFile } from "./source-file.ts";

type Say = string | readonly string[];

/** Observation id → its state ids (none for numbers and texts); null: claims are not checked. */
export type KnownStates = ReadonlyMap<string, ReadonlySet<string>> | null;

interface Bench {
  readonly source: SourceFile;
  readonly problems: Problem[];
  readonly classes: Classes;
  readonly known: KnownStates;
}

/** Turns a file of the right shape into phrases; everything that does not fit is a problem. */
export function buildPhrases(
  source: SourceFile,
  file: PhrasesFile,
  known: KnownStates,
): { readonly phrases: Phrases; readonly problems: readonly Problem[] } {
  const classes = new Map(
    Object.entries(file.classes ?? {}).map(([name, list]) => [name, split(list)] as const),
  );
  const bench: Bench = { source, problems: [], classes, known };
  const phrases: Phrases = {
    language: file.language,
    stemmer: file.stemmer,
    endings: split(file.endings ?? ""),
    sameAs: new Map(
      Object.entries(file["same-as"] ?? {}).map(([word, words]) => [word, split(words)] as const),
    ),
    ordinary: split(file.ordinary),
    grammar: grammarOf(bench, file.grammar),
    numbers: numbersOf(bench, file.numbers),
    signs: Object.entries(file.signs).map(([id, sign]) => signOf(bench, id, sign)),
    together: (file.together ?? []).map((rule, index) => togetherOf(bench, file, { rule, index })),
    measures: (file.measures ?? []).map((one, index) => {
      const path = ["measures", index];
      checkObservation(bench, one.observation, path);
      return {
        ...one,
        near: patterns(bench, one.near, [...path, "near"]),
        unless: patterns(bench, one.unless ?? [], [...path, "unless"]),
      };
    }),
    bands: (file.bands ?? []).map((band, index) => bandOf(bench, band, index)),
    components: lists(bench, file.components, ["components"]),
    replaced: patterns(bench, file.replaced, ["replaced"]),
    notReplaced: patterns(bench, file["not-replaced"] ?? [], ["not-replaced"]),
    replacedMeans: new Map(
      Object.entries(file["replaced-means"] ?? {}).map(
        ([id, text]) => [id, claims(bench, text, ["replaced-means", id])] as const,
      ),
    ),
    urgency: {
      high: patterns(bench, file.urgency.high, ["urgency", "high"]),
      low: patterns(bench, file.urgency.low, ["urgency", "low"]),
    },
    redFlags: lists(bench, file["red-flags"], ["red-flags"]),
    commands: lists(bench, file.commands, ["commands"]),
    fuels: lists(bench, file.fuels, ["fuels"]),
    machines: lists(bench, file.machines ?? {}, ["machines"]),
  };
  return { phrases, problems: bench.problems };
}

function split(text: string): readonly string[] {
  return text.split(/\s+/).filter((word) => word !== "");
}

function patterns(bench: Bench, say: Say, path: Path): readonly Pattern[] {
  const items = typeof say === "string" ? [say] : say;
  return items.flatMap((item, index) => {
    const here = typeof say === "string" ? path : [...path, index];
    return parts(item).map((text) => {
      const { pattern, mistakes } = parsePattern(text, bench.classes);
      for (const says of mistakes) bench.problems.push(problemIn(bench.source, here, says));
      return pattern;
    });
  });
}

function parts(text: string): readonly string[] {
  return text
    .split(/[,\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== "");
}

function lists(
  bench: Bench,
  file: Readonly<Record<string, Say | undefined>>,
  path: Path,
): PhraseLists {
  return new Map(
    Object.entries(file).map(
      ([id, say]) => [id, patterns(bench, say ?? [], [...path, id])] as const,
    ),
  );
}

function claims(bench: Bench, text: string | undefined, path: Path): readonly StateClaim[] {
  return weighed(bench, text, path).map(({ observation, state }) => ({ observation, state }));
}

/** `engine-turns=normal 60, on-start=starts 40`; weights are made to sum to 1. */
function weighed(bench: Bench, text: string | undefined, path: Path): readonly WeighedClaim[] {
  const read = parts(text ?? "").flatMap((part) => {
    const form = /^([a-z0-9-]+)=([a-z0-9-]+)(?:\s+(\d+))?$/.exec(part);
    const [, observation, state, weight] = form ?? [];
    if (observation === undefined || state === undefined) {
      const says = `"${part}" is not written as "observation=state".`;
      bench.problems.push(problemIn(bench.source, path, says));
      return [];
    }
    checkClaim(bench, { observation, state }, path);
    return [{ observation, state, weight: Number(weight ?? "1") }];
  });
  const total = read.reduce((sum, claim) => sum + claim.weight, 0);
  return read.map((claim) => ({ ...claim, weight: claim.weight / total }));
}

function checkObservation(bench: Bench, observation: string, path: Path): void {
  if (bench.known === null || bench.known.has(observation)) return;
  const says = `There is no observation "${observation}".`;
  bench.problems.push(problemIn(bench.source, path, says));
}

function checkClaim(bench: Bench, claim: StateClaim, path: Path): void {
  checkObservation(bench, claim.observation, path);
  const states = bench.known?.get(claim.observation);
  if (states === undefined || states.has(claim.state)) return;
  const says = `The observation "${claim.observation}" has no state "${claim.state}".`;
  bench.problems.push(problemIn(bench.source, path, says));
}

function signOf(bench: Bench, id: string, sign: PhrasesFile["signs"][string]): Sign {
  const path = ["signs", id];
  const denied: Meaning = {
    means: claims(bench, sign.denied, [...path, "denied"]),
    maybe: weighed(bench, sign["denied-maybe"], [...path, "denied-maybe"]),
  };
  const isDenied = denied.means.length > 0 || denied.maybe.length > 0;
  return {
    id,
    say: patterns(bench, sign.say, [...path, "say"]),
    means: claims(bench, sign.means, [...path, "means"]),
    maybe: weighed(bench, sign.maybe, [...path, "maybe"]),
    sure: sign.sure,
    past: sign.past,
    givesWay: sign["gives-way"],
    ...(isDenied ? { denied } : {}),
  };
}

function togetherOf(
  bench: Bench,
  file: PhrasesFile,
  place: { readonly rule: NonNullable<PhrasesFile["together"]>[number]; readonly index: number },
): Together {
  const { rule, index } = place;
  const path = ["together", index];
  const signs = parts(rule.when).map((part) => {
    const denied = part.startsWith("not ");
    return { sign: denied ? part.slice(4).trim() : part, denied };
  });
  const settles = parts(rule.settles);
  for (const sign of [...signs.map((one) => one.sign), ...settles]) {
    if (sign in file.signs) continue;
    bench.problems.push(problemIn(bench.source, path, `There is no sign "${sign}".`));
  }
  const means = claims(bench, rule.means, [...path, "means"]);
  return { signs, settles, means, maybe: [], oneSentence: rule["one-sentence"] };
}

function bandOf(
  bench: Bench,
  band: NonNullable<PhrasesFile["bands"]>[number],
  index: number,
): BandRule {
  const path = ["bands", index];
  const states = parts(band.states).flatMap((part) => {
    const [, state, limit] = /^([a-z0-9-]+)(?:\s+below\s+(-?[\d.]+))?$/.exec(part) ?? [];
    if (state === undefined) {
      const says = `"${part}" is not written as "state below 24".`;
      bench.problems.push(problemIn(bench.source, [...path, "states"], says));
      return [];
    }
    checkClaim(bench, { observation: band.observation, state }, [...path, "states"]);
    return [{ state, upTo: limit === undefined ? Number.POSITIVE_INFINITY : Number(limit) }];
  });
  return {
    observation: band.observation,
    unit: band.unit,
    near: patterns(bench, band.near ?? [], [...path, "near"]),
    unless: patterns(bench, band.unless ?? [], [...path, "unless"]),
    states,
  };
}

function grammarOf(bench: Bench, file: PhrasesFile["grammar"]): Grammar {
  const at = (key: string): Path => ["grammar", key];
  return {
    not: split(file.not),
    notAfter: split(file["not-after"]),
    or: split(file.or),
    stop: split(file.stop),
    perceive: split(file.perceive),
    joins: split(file.joins),
    sequence: split(file.sequence),
    fillers: split(file.fillers),
    now: patterns(bench, file.now, at("now")),
    before: patterns(bench, file.before, at("before")),
    secondHand: patterns(bench, file["second-hand"], at("second-hand")),
    secondHandAll: patterns(bench, file["second-hand-all"], at("second-hand-all")),
    unreal: patterns(bench, file.unreal, at("unreal")),
    hedges: file.hedges.map((hedge, index) => ({
      strength: hedge.strength,
      say: patterns(bench, hedge.say, ["grammar", "hedges", index, "say"]),
    })),
  };
}

function numbersOf(bench: Bench, file: PhrasesFile["numbers"]): NumberWords {
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
    ago: split(file.ago),
    since: split(file.since),
    nominal: split(file.nominal),
    age: split(file.age),
    months: file.months.map(split),
  };
}
