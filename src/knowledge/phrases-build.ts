import type {
  BandRule,
  Meaning,
  Outcomes,
  Phrases,
  Sign,
  SignRef,
  Together,
} from "../domain/phrases.ts";
import type { Problem } from "../domain/result.ts";
import {
  type Bench,
  checkClaim,
  checkObservation,
  claims,
  type KnownStates,
  lists,
  parts,
  patterns,
  split,
  weighed,
} from "./phrases-bench.ts";
import { foundSigns } from "./phrases-found.ts";
import { grammarOf, numbersOf } from "./phrases-grammar.ts";
import type { PhrasesFile } from "./phrases-schema.ts";
import { answersOf, namesOf, thingSigns } from "./phrases-things.ts";
import { type Path, problemIn, type SourceFile } from "./source-file.ts";

/** Turns a file of the right shape into phrases; everything that does not fit is a problem. */
export function buildPhrases(
  source: SourceFile,
  file: PhrasesFile,
  known: KnownStates,
): { readonly phrases: Phrases; readonly problems: readonly Problem[] } {
  const classes = new Map(
    Object.entries(file.classes ?? {}).map(([name, list]) => [name, split(list)] as const),
  );
  const bench: Bench = { source, problems: [], classes, pieces: new Map(), known };
  const phrases: Phrases = {
    language: file.language,
    stemmer: file.stemmer,
    endings: split(file.endings ?? ""),
    sameAs: new Map(
      Object.entries(file["same-as"] ?? {}).map(([word, words]) => [word, split(words)] as const),
    ),
    ordinary: split(file.ordinary),
    known: split(file.known ?? ""),
    grammar: grammarOf(bench, file.grammar),
    numbers: numbersOf(bench, file.numbers),
    signs: [
      ...Object.entries(file.signs).map(([id, sign]) => signOf(bench, id, sign)),
      ...foundSigns(bench, file, "bad"),
      ...thingSigns(bench, file),
      ...foundSigns(bench, file, "good"),
    ],
    together: (file.together ?? []).flatMap((rule, index) =>
      togethersOf(bench, file, { rule, index }),
    ),
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
    acts: lists(bench, file.acts ?? {}, ["acts"]),
    repairs: new Map(Object.entries(file.repairs ?? {})),
    outcomes: outcomesOf(bench, file),
    answers: answersOf(bench, file),
    names: namesOf(bench, file),
    urgency: {
      high: patterns(bench, file.urgency.high, ["urgency", "high"]),
      low: patterns(bench, file.urgency.low, ["urgency", "low"]),
    },
    redFlags: lists(bench, file["red-flags"], ["red-flags"]),
    commands: lists(bench, file.commands, ["commands"]),
    politeness: split(file.politeness),
    fuels: lists(bench, file.fuels, ["fuels"]),
    machines: lists(bench, file.machines ?? {}, ["machines"]),
  };
  return { phrases, problems: bench.problems };
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
    unless: patterns(bench, sign.unless ?? [], [...path, "unless"]),
    means: claims(bench, sign.means, [...path, "means"]),
    maybe: weighed(bench, sign.maybe, [...path, "maybe"]),
    sure: sign.sure,
    past: sign.past,
    givesWay: sign["gives-way"],
    ...(isDenied ? { denied } : {}),
  };
}

/** One rule for each choice: "jump, starts|fires" is one with "starts" and one with "fires". */
function togethersOf(
  bench: Bench,
  file: PhrasesFile,
  place: { readonly rule: NonNullable<PhrasesFile["together"]>[number]; readonly index: number },
): readonly Together[] {
  const { rule, index } = place;
  const path = ["together", index];
  const settles = signRefs(bench, file, { text: rule.settles, path }).map((one) => one.sign);
  const means = claims(bench, rule.means, [...path, "means"]);
  const choices = parts(rule.when).reduce<readonly (readonly SignRef[])[]>(
    (begun, part) =>
      part
        .split("|")
        .flatMap((text) => signRefs(bench, file, { text, path }))
        .flatMap((ref) => begun.map((signs) => [...signs, ref])),
    [[]],
  );
  return choices.map((signs) => {
    return { signs, settles, means, maybe: [], oneSentence: rule["one-sentence"] };
  });
}

/** `slow, not starts`: signs as they must stand. */
function signRefs(
  bench: Bench,
  file: PhrasesFile,
  { text, path }: { readonly text: string; readonly path: Path },
): readonly SignRef[] {
  return parts(text).map((part) => {
    const denied = part.startsWith("not ");
    const sign = denied ? part.slice(4).trim() : part;
    if (!(sign in file.signs)) {
      bench.problems.push(problemIn(bench.source, path, `There is no sign "${sign}".`));
    }
    return { sign, denied };
  });
}

function outcomesOf(bench: Bench, file: PhrasesFile): Outcomes {
  const refs = (key: "cured" | "no-change" | "still") =>
    signRefs(bench, file, { text: file.outcomes?.[key] ?? "", path: ["outcomes", key] });
  return { cured: refs("cured"), noChange: refs("no-change"), still: refs("still") };
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
