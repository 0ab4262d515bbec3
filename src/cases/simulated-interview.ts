import type { Model } from "../diagnosis/model.ts";
import { chooseNext } from "../diagnosis/next-check.ts";
import type { Evidence, Report, Situation } from "../domain/evidence.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import { ON_START } from "../domain/vocabulary.ts";
import { AT_MACHINE } from "../talk/place.ts";
import { evidenceFrom } from "./case-evidence.ts";
import type { CaseAct, ReadCase } from "./case-file.ts";

/** More questions than this no operator bears; reaching it is a fault of the stopping rule. */
const MOST_QUESTIONS = 40;

/** An interview with somebody who knows exactly what a case file says. */
export interface Interview {
  readonly evidence: Evidence;
  /** Questions put, the symptom among them. */
  readonly asked: number;
  /** Those that the person could answer. */
  readonly answered: number;
  readonly questions: readonly string[];
}

interface Progress {
  readonly reports: Report[];
  readonly acts: CaseAct[];
  readonly asked: string[];
  answered: number;
}

function answer(read: ReadCase, observation: string, progress: Progress): boolean {
  const facts = read.operator.filter((report) => report.observation === observation);
  progress.reports.push(...facts.map((report) => ({ ...report, unasked: false })));
  return facts.length > 0;
}

function put(read: ReadCase, check: string, given: { knowledge: Knowledge; progress: Progress }) {
  const { knowledge, progress } = given;
  progress.asked.push(check);
  const yields = knowledge.checks.get(check)?.yields;
  const act = read.acts.find(
    (one) =>
      one.by === "operator" &&
      (one.act === check || (yields !== undefined && one.report?.observation === yields)),
  );
  if (act !== undefined) progress.acts.push(act);
  const known = yields !== undefined && answer(read, yields, progress);
  if (act !== undefined || known) progress.answered += 1;
}

const knows = (reports: readonly Report[], observation: string) =>
  reports.some((report) => report.observation === observation);

/**
 * Plays the operator's interview on a written-down case: the opening, the symptom, then only what
 * the engine asks until it stops. What the file does not say is answered "I don't know".
 * @param model the knowledge compiled for the case's machine
 * @param most stop after this many questions
 */
export function simulateInterview(read: ReadCase, model: Model, most = MOST_QUESTIONS): Interview {
  const { knowledge } = model;
  const place = read.operator.filter((report) => report.observation === AT_MACHINE);
  const progress: Progress = {
    reports: [...read.opening, ...place],
    acts: read.acts.filter((act) => act.toldIn === "opening"),
    asked: [],
    answered: 0,
  };
  const symptom = [...knowledge.checks.values()].find(
    (check) => check.yields === ON_START && check.performers.includes("operator"),
  );
  if (symptom !== undefined && most > 0 && !knows(progress.reports, ON_START)) {
    put(read, symptom.id, { knowledge, progress });
  }
  while (progress.asked.length < most) {
    const situation: Situation = {
      performer: "operator",
      place: "at-machine",
      has: ["meter", "leads"],
      asked: progress.asked,
      refused: progress.asked,
      urgency: "normal",
    };
    const evidence = evidenceFrom(progress.reports, progress.acts, knowledge);
    const next = chooseNext(model, evidence, situation);
    if (next.kind === "stop") break;
    put(read, next.check, { knowledge, progress });
  }
  return {
    evidence: evidenceFrom(progress.reports, progress.acts, knowledge),
    asked: progress.asked.length,
    answered: progress.answered,
    questions: progress.asked,
  };
}
