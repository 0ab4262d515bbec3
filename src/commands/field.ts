import { readdir } from "node:fs/promises";
import { isAbsolute, join } from "node:path";
import { type CaseFile, type ReadCase, readCase } from "../cases/case-file.ts";
import { compileModel } from "../diagnosis/compile.ts";
import type { Result } from "../domain/result.ts";
import { phraseLanguages } from "../knowledge/phrase-texts.ts";
import { parseCases, problemLines, readInput } from "./case-files.ts";
import { languagesOf } from "./case-languages.ts";
import { type CircuitBanks, noBanks, openBanks, weatherTold } from "./circuit-banks.ts";
import { type CallCost, costOf, costText, toldIn } from "./field-cost.ts";
import { type FieldCase, forecastsAt, isStage, type Stage, stages } from "./field-forecasts.ts";
import { type ScoreBlock, type StageScore, scoreStage } from "./field-score.ts";
import { stoppedEarly, stoppedText } from "./field-stopped.ts";
import type { CommandIo } from "./io.ts";
import { commandLine, optionValue } from "./options.ts";
import { openSpeech } from "./speech.ts";
import { createCalls } from "./whole-call.ts";
import { brokenFlows, openWorkshop, type Workshop } from "./workshop.ts";

/** The cases with their models; simulated circuits are waited for, so that figures are the same each time. */
async function withModels(
  cases: readonly ReadCase[],
  workshop: Workshop,
  banks: CircuitBanks,
): Promise<FieldCase[]> {
  const done: FieldCase[] = [];
  for (const read of cases) {
    const joint = await banks.ready(read.machine, weatherTold([...read.opening, ...read.operator]));
    done.push({ read, model: compileModel(workshop.knowledge, read.machine, { joint }) });
  }
  return done;
}

const percent = (value: number) => `${Math.round(100 * value)} %`.padStart(5);

function row(name: string, block: ScoreBlock): string {
  const { top1, top3 } = block;
  return (
    `  ${name.padEnd(7)} ${String(block.cases).padStart(3)} cases` +
    `  first ${percent(top1.value)} [${percent(top1.low)}-${percent(top1.high)}]` +
    `  in three ${percent(top3.value)} [${percent(top3.low)}-${percent(top3.high)}]` +
    `  log loss ${block.logLoss.toFixed(2)}  Brier ${block.brier.toFixed(2)}  ECE ${block.ece.toFixed(2)}` +
    `  (priors alone: first ${percent(block.baselines.priors.top1.value)},` +
    ` log loss ${block.baselines.priors.logLoss.toFixed(2)})`
  );
}

/** A table of one stage for somebody who reads it in a terminal. */
export function stageText(score: StageScore): string {
  const { all, strict } = score;
  const asked =
    score.stage === "operator"
      ? `  questions: median ${all.questions.median}, 90 % ${all.questions.p90}\n`
      : "";
  const missed = score.byCase
    .filter((one) => one.rank > 3)
    .map((one) => `${one.id} (${one.rank}, leader ${one.leader})`);
  const misses = missed.length === 0 ? "" : `  not in the first three: ${missed.join(", ")}\n`;
  return `${score.stage}\n${row("all", all)}\n${row("strict", strict)}\n${asked}${misses}`;
}

/** The case files of a folder, and those one folder deeper: a call has one of its own. */
async function filesOf(folder: string): Promise<readonly string[]> {
  const names = await readdir(folder, { recursive: true });
  return names
    .filter((name) => /^([^\\/]+[\\/])?[^\\/]+\.(ya?ml|json)$/.test(name))
    .sort()
    .map((name) => join(folder, name));
}

/** Each case played as a whole call, by rows alone. */
function callCost(cases: readonly ReadCase[], workshop: Workshop, root: string): CallCost {
  const speech = openSpeech(root, workshop.knowledge, { timeZone: "UTC" });
  const play = createCalls({ workshop, speech, language: "en" });
  return costOf(cases.map((read) => play(toldIn(read, workshop.knowledge))));
}

/** The cases of all files, or the mistakes of the first file that has any. */
async function writtenIn(
  files: readonly string[],
  io: CommandIo,
): Promise<Result<readonly CaseFile[]>> {
  const cases: CaseFile[] = [];
  for (const file of files) {
    const parsed = parseCases(await readInput(file, io), file);
    if (!parsed.ok) return parsed;
    cases.push(...parsed.value.cases);
  }
  return { ok: true, value: cases };
}

/** How often each stage is right; of the operator's also when stopped early, where wanted. */
function scoresOf(
  ready: readonly FieldCase[],
  { wanted, isStopped }: { readonly wanted: readonly Stage[]; readonly isStopped: boolean },
) {
  return wanted.map((one) => {
    const score = scoreStage(one, forecastsAt(one, ready));
    return {
      ...score,
      ...(one === "operator" && isStopped ? { stopped: stoppedEarly(ready) } : {}),
    };
  });
}

/**
 * `field DIR [--stage S] [--json]`: how good the engine is on troubles with a known cause; with
 * `--calls` what each call costs its operator, played to its end by rows.
 */
export async function fieldCommand(args: readonly string[], io: CommandIo): Promise<number> {
  const line = commandLine(args, {
    flags: ["json", "rows", "stopped", "calls"],
    valued: ["stage", "lang"],
  });
  const [name] = line.words;
  const stage = optionValue(line, "stage", "");
  if (name === undefined || line.unknown.length > 0 || (stage !== "" && !isStage(stage))) {
    io.stderr(
      `Use: npm run -s field -- DIR [--stage ${stages.join("|")}] [--json] [--rows] [--stopped] [--calls]\n`,
    );
    return 2;
  }
  const folder = isAbsolute(name) ? name : join(io.cwd, name);
  const files = await filesOf(folder).catch(() => null);
  if (files === null) {
    io.stderr(`${name}: there is no such folder\n`);
    return 2;
  }
  const written = await writtenIn(files, io);
  if (!written.ok) {
    io.stderr(problemLines(written.problems));
    return 2;
  }
  const workshop = await openWorkshop(
    io.root,
    languagesOf(written.value, phraseLanguages(io.root)),
  );
  if (!workshop.ok) {
    io.stderr(brokenFlows(workshop.problems));
    return 1;
  }
  const cases = written.value.map((one) => readCase(one, workshop.value));
  if (cases.every((read) => read.file.group.length === 0)) {
    io.stderr(`${name}: no case here names the group of its cause, so nothing can be scored\n`);
    return 2;
  }
  const isJson = line.options["json"] === true;
  if (line.options["calls"] === true) {
    const cost = callCost(cases, workshop.value, io.root);
    io.stdout(isJson ? `${JSON.stringify(cost, null, 2)}\n` : costText(cost));
    return 0;
  }
  const rows = line.options["rows"] === true;
  if (!rows) io.stderr("Simulating starting circuits where they are not on disk yet …\n");
  const banks = rows ? noBanks : openBanks(io.root, workshop.value);
  const ready = await withModels(cases, workshop.value, banks);
  const scores = scoresOf(ready, {
    wanted: isStage(stage) ? [stage] : stages,
    isStopped: line.options["stopped"] === true,
  });
  if (isJson) {
    io.stdout(`${JSON.stringify(isStage(stage) ? scores[0] : scores, null, 2)}\n`);
  } else io.stdout(scores.map((one) => stageText(one) + stoppedText(one.stopped ?? [])).join("\n"));
  return 0;
}
