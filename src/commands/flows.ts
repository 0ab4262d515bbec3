import { join } from "node:path";
import type { Knowledge } from "../domain/knowledge.ts";
import type { Problem } from "../domain/result.ts";
import { checkCircuits } from "../knowledge/check-circuits.ts";
import { loadCircuits } from "../knowledge/circuit-files.ts";
import { withCircuitLabels } from "../knowledge/circuit-labels.ts";
import { loadKnowledge } from "../knowledge/load.ts";
import { checkLocales, type LocaleReport } from "../knowledge/locale-check.ts";
import { loadPhrases } from "../knowledge/phrases.ts";
import { nearestNeighbours, type Separation, sumUpApartness } from "../knowledge/separation.ts";
import type { CommandIo } from "./io.ts";
import { commandLine } from "./options.ts";

const usage =
  'Use it as "npm run flows", with "-- --json", "-- words LANG" or "-- apart" behind it.\n';

/** More pairs than these nobody reads. */
const CLOSEST_NAMED = 10;

/** What the check of the knowledge found. */
interface Findings {
  readonly knowledge: Knowledge | undefined;
  readonly words: LocaleReport["words"];
  readonly problems: readonly Problem[];
}

/**
 * `flows`: checks flows/ and locales/ and lists every mistake with file, line and a plain sentence.
 * `flows words LANG` lists what the language lacks; `flows apart` shows for each fault its nearest
 * neighbour and the check that tells the two apart best.
 * @returns 0 where nothing is wrong, 1 where something is, 2 for a wrong command line
 */
export async function flowsCommand(args: readonly string[], io: CommandIo): Promise<number> {
  const line = commandLine(args, { flags: ["json"], valued: [] });
  const [verb, language] = line.words;
  const known = verb === undefined || verb === "apart" || (verb === "words" && language);
  if (line.unknown.length > 0 || !known) {
    io.stderr(usage);
    return 2;
  }
  const found = await findings(io.root);
  if (verb === "words") return printWords(found, language ?? "", io);
  if (verb === "apart") return printSeparation(found, io);
  io.stdout(line.options["json"] ? `${JSON.stringify(asJson(found), null, 2)}\n` : asText(found));
  return found.problems.length > 0 ? 1 : 0;
}

async function findings(root: string): Promise<Findings> {
  const circuits = loadCircuits(root);
  const loaded = await loadKnowledge(join(root, "flows"));
  if (!loaded.ok) {
    const phrases = loadPhrases(root, null);
    const unread = phrases.ok ? [] : phrases.problems;
    const problems = [...loaded.problems, ...circuits.problems, ...unread];
    return { knowledge: undefined, words: {}, problems };
  }
  const knowledge = withCircuitLabels(loaded.value, circuits.circuits.values());
  const locales = await checkLocales(join(root, "locales"), knowledge);
  const phrases = loadPhrases(root, statesOf(knowledge));
  const problems = [
    ...circuits.problems,
    ...checkCircuits(knowledge, circuits.circuits),
    ...(phrases.ok ? [] : phrases.problems),
    ...locales.problems,
  ];
  return { knowledge, words: locales.words, problems };
}

function statesOf(knowledge: Knowledge): ReadonlyMap<string, ReadonlySet<string>> {
  return new Map(
    [...knowledge.observations].map(([id, observation]) => [
      id,
      new Set(observation.states.map((state) => state.id)),
    ]),
  );
}

function counts(knowledge: Knowledge | undefined) {
  return {
    faults: knowledge?.faults.size ?? 0,
    observations: knowledge?.observations.size ?? 0,
    checks: knowledge?.checks.size ?? 0,
    machineKinds: knowledge?.machines.size ?? 0,
    parts: knowledge?.parts.size ?? 0,
  };
}

function asJson({ knowledge, words, problems }: Findings) {
  return { ...counts(knowledge), words, problems };
}

function asText({ knowledge, problems }: Findings): string {
  const lines = problems.map(problemLine);
  if (problems.length > 0) {
    const what = problems.length === 1 ? "One mistake" : `${problems.length} mistakes`;
    return `${lines.join("\n")}\n\n${what}. ${outcome(knowledge, problems)}\n`;
  }
  const { faults, observations, checks, machineKinds, parts } = counts(knowledge);
  return (
    `No mistakes: ${faults} faults, ${observations} observations, ${checks} checks, ` +
    `${machineKinds} kinds of machine, ${parts} parts.\n`
  );
}

/** Words that lack their translation keep nobody from using the knowledge. */
function outcome(knowledge: Knowledge | undefined, problems: readonly Problem[]): string {
  const wordsOnly = problems.every(({ file }) => file?.endsWith(".ftl"));
  if (knowledge === undefined || !wordsOnly) return "Nothing is used until they are mended.";
  return "The knowledge itself is sound; only words in locales/ are missing or old.";
}

function problemLine({ file, line, at, says }: Problem): string {
  const place = `${file ?? ""}${line === undefined ? "" : `:${line}`}`;
  return `${place}${at === undefined ? "" : `  (${at})`}\n    ${says}`;
}

function printWords({ words, problems }: Findings, language: string, io: CommandIo): number {
  const counted = words[language];
  if (counted === undefined) {
    const known = Object.keys(words).join(", ");
    const mend = problems[0] === undefined ? "" : ' "npm run flows" lists mistakes to mend first.';
    io.stderr(`There is no language "${language}" in locales/. There are: ${known}.${mend}\n`);
    return 2;
  }
  const own = problems.filter(({ file }) => file?.startsWith(`locales/${language}/`));
  const lines = own.map((problem) => `${problemLine(problem)}\n`).join("");
  io.stdout(
    `${lines}${language}: ${counted.missing} missing, ${counted.stale} older than their English.\n`,
  );
  return own.length > 0 ? 1 : 0;
}

function printSeparation({ knowledge, problems }: Findings, io: CommandIo): number {
  if (knowledge === undefined) {
    io.stderr(`${problems.map(problemLine).join("\n")}\n`);
    return 1;
  }
  const rows = nearestNeighbours(knowledge).sort((a, b) => a.decibans - b.decibans);
  const shown = ({ fault, neighbour, check, decibans }: Separation) =>
    `${decibans.toFixed(1).padStart(5)} dB  ${fault} / ${neighbour}: ${check}\n`;
  const { median, closest } = sumUpApartness(rows, CLOSEST_NAMED);
  io.stdout(
    `${rows.map(shown).join("")}\n` +
      `${rows.length} faults; half of them are ${median.toFixed(1)} dB or more from their nearest ` +
      `neighbour. The closest pairs, with the check that tells them apart best:\n` +
      closest.map(shown).join(""),
  );
  return 0;
}
