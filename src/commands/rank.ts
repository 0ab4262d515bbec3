import { evidenceOf } from "../cases/case-evidence.ts";
import { type ReadCase, readCase } from "../cases/case-file.ts";
import { compileModel } from "../diagnosis/compile.ts";
import type { Model } from "../diagnosis/model.ts";
import { triage } from "../diagnosis/triage.ts";
import type { Situation } from "../domain/evidence.ts";
import { type Knowledge, wordKey } from "../domain/knowledge.ts";
import type { LookAlikes, Next, PlanStep, Triage } from "../domain/triage.ts";
import { phraseLanguages } from "../knowledge/phrase-texts.ts";
import { parseCases, problemLines, readInput } from "./case-files.ts";
import { languagesOf } from "./case-languages.ts";
import { openStoredBanks, weatherTold } from "./circuit-banks.ts";
import type { CommandIo } from "./io.ts";
import { commandLine, optionValue } from "./options.ts";
import { readingsOut } from "./rank-readings.ts";
import { rankedText } from "./rank-text.ts";
import type { Ranked } from "./ranked.ts";
import { openSpeech } from "./speech.ts";
import { brokenFlows, openWorkshop } from "./workshop.ts";

/** Said where no simulated circuit stands on disk for a machine. */
const BY_ROWS =
  "weighed by rows alone; no simulated circuit is on disk for this machine " +
  "(npm start and npm run field make them)\n";

/** The same file always gives the same plan. */
const SEED = 1;

export type Word = (key: string) => string;

/** Whose turn it is: the technician's once there are technician facts. */
function situationOf(read: ReadCase): Situation {
  const technician = read.technician.length > 0 || read.acts.some((act) => act.by === "technician");
  return {
    performer: technician ? "technician" : "operator",
    place: "at-machine",
    has: technician ? ["meter", "charger", "leads", "second-person"] : [],
    asked: [],
    refused: [],
    urgency: "normal",
  };
}

/** Ranks one case as read. */
export function rankCase(read: ReadCase, model: Model, word: Word): Ranked {
  const { knowledge } = model;
  const evidence = evidenceOf(read, "technician", model.knowledge);
  const found = triage(model, evidence, situationOf(read), { seed: SEED });
  const cautionsOf = (hazards: readonly string[]) =>
    [...new Set(hazards)].map((id) => word(wordKey("hazard", id, "caution")));
  const steps = found.plan.steps.map((step) => stepOut(step, cautionsOf(step.hazards), word));
  return {
    id: read.file.id,
    machineKind: read.machine.kind,
    causes: found.ranking.causes.map((cause) => ({
      id: cause.fault,
      group: cause.group,
      name: word(wordKey("fault", cause.fault)),
      probability: cause.probability,
      reasons: cause.reasons.map(({ observation, state, decibans }) => ({
        observation,
        state,
        decibans,
      })),
    })),
    somethingElse: found.ranking.somethingElse,
    nothingWrong: found.ranking.nothingWrong,
    next: nextOut(found.next, word),
    plan: {
      steps,
      minutes: found.plan.minutes,
      expectedCost: found.plan.expectedCost,
    },
    kit: kitOut(found, word),
    kitCovers: found.kit.covers,
    cautions: [...new Set(steps.flatMap((step) => step.cautions))],
    redFlags: flagsOf(read, knowledge, word),
    notUnderstood: read.notUnderstood,
    lookAlike: alikeOut(found.ranking.alike, word),
    readings: readingsOut(model, evidence, { ranking: found.ranking, word }),
    unexplained: found.ranking.unexplained.map(({ observation, value }) => ({
      observation,
      name: word(wordKey("observation", observation)),
      value,
      unit: knowledge.observations.get(observation)?.unit ?? "",
    })),
  };
}

function alikeOut(alike: LookAlikes | null, word: Word): Ranked["lookAlike"] {
  if (alike === null) return null;
  const { faults: causes, check } = alike;
  const separatedBy = check === null ? null : { check, text: word(wordKey("check", check)) };
  return { causes, separatedBy };
}

function stepOut(step: PlanStep, cautions: readonly string[], word: Word) {
  const kinds = { "open-up": "access", check: "check", act: "act", remedy: "remedy" } as const;
  const text =
    step.kind === "call-for-help" ? "call for help" : word(wordKey(kinds[step.kind], step.id));
  return {
    id: step.id,
    kind: step.kind,
    text,
    who: step.who,
    minutes: step.minutes,
    tools: step.tools.map((tool) => word(wordKey("tool", tool))),
    cautions,
    then: step.then.map(({ result, next }) => ({ result, next })),
  };
}

function nextOut(next: Next, word: Word): Ranked["next"] {
  if (next.kind === "stop") return null;
  const text = word(wordKey(next.isAct ? "act" : "check", next.check, "ask"));
  return { check: next.check, text, decides: next.decides };
}

function kitOut(found: Triage, word: Word): Ranked["kit"] {
  return found.kit.items.map(({ part, chance, carry }) => ({
    part,
    name: word(wordKey("part", part)),
    chance,
    carry,
  }));
}

function flagsOf(read: ReadCase, knowledge: Knowledge, word: Word): Ranked["redFlags"] {
  return read.redFlags
    .filter((id) => knowledge.redFlags.has(id))
    .map((id) => ({ id, text: word(wordKey("flag", id, "say")) }));
}

/** `rank FILE [--json] [--lang L]`: causes, reasons, plan and kit of each case in a file. */
export async function rankCommand(args: readonly string[], io: CommandIo): Promise<number> {
  const line = commandLine(args, { flags: ["json"], valued: ["lang"] });
  const [name] = line.words;
  if (name === undefined || line.words.length > 1 || line.unknown.length > 0) {
    io.stderr("Use: npm run -s rank -- FILE [--json] [--lang en]   (FILE may be - for stdin)\n");
    return 2;
  }
  const text = await readInput(name, io).catch(() => null);
  if (text === null) {
    io.stderr(`${name}: there is no such file\n`);
    return 2;
  }
  const parsed = parseCases(text, name);
  if (!parsed.ok) {
    io.stderr(problemLines(parsed.problems));
    return 2;
  }
  const { cases, isList } = parsed.value;
  const workshop = await openWorkshop(io.root, languagesOf(cases, phraseLanguages(io.root)));
  if (!workshop.ok) {
    io.stderr(brokenFlows(workshop.problems));
    return 1;
  }
  const speech = openSpeech(io.root, workshop.value.knowledge, { timeZone: "UTC" });
  const language = optionValue(line, "lang", "en");
  const word: Word = (key) => speech.word(key, language);
  const banks = openStoredBanks(io.root, workshop.value);
  const ranked: Ranked[] = [];
  for (const file of cases) {
    const read = readCase(file, workshop.value);
    const told = weatherTold([...read.opening, ...read.operator]);
    const joint = await banks.ready(read.machine, told).catch(() => []);
    if (joint.length === 0) io.stderr(`${read.file.id}: ${BY_ROWS}`);
    ranked.push(
      rankCase(read, compileModel(workshop.value.knowledge, read.machine, { joint }), word),
    );
  }
  if (line.options["json"] === true) {
    io.stdout(`${JSON.stringify(isList ? ranked : ranked[0], null, 2)}\n`);
  } else io.stdout(ranked.map((one) => rankedText(one)).join("\n"));
  return 0;
}
