import type { Model } from "../diagnosis/model.ts";
import { chooseNext } from "../diagnosis/next-check.ts";
import { rankCauses } from "../diagnosis/ranking.ts";
import type { Evidence, Report, Situation } from "../domain/evidence.ts";
import type { Act, Knowledge } from "../domain/knowledge.ts";
import { ON_START } from "../domain/vocabulary.ts";
import { operatorCheckFor } from "../talk/next-question.ts";
import { isSeenOn, likeliestSubject } from "../talk/photo-subject.ts";
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

/** The one question without answers to choose from. */
const STORY = "story";

interface Progress {
  readonly reports: Report[];
  readonly acts: CaseAct[];
  readonly asked: string[];
  answered: number;
}

/**
 * Answers a question from what the file says. A person answers in a sentence, not in a state: what
 * else the same entry says is heard with it.
 */
function answer(read: ReadCase, observation: string, progress: Progress): boolean {
  const said = read.entries.filter(
    ({ key, observations }) => key === observation || observations.includes(observation),
  );
  const about = new Set([observation, ...said.flatMap(({ observations }) => observations)]);
  const facts = read.operator.filter((report) => about.has(report.observation));
  const fresh = facts.filter((report) => !isSaid(progress.reports, report));
  progress.reports.push(
    ...fresh.map((report) => ({ ...report, unasked: report.observation !== observation })),
  );
  return facts.length > 0;
}

const isSaid = (said: readonly Report[], report: Report) =>
  said.some((one) => one.observation === report.observation && one.said === report.said);

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
  const asked = knowledge.acts.get(check);
  const looked = asked === undefined ? [] : seenDoing(asked, knowledge);
  const topics = yields === undefined ? looked : [yields, ...looked];
  const known = topics.map((topic) => answer(read, topic, progress)).includes(true);
  if (act !== undefined || known) progress.answered += 1;
}

/**
 * What people tell of when asked what happened and what they have found: what needs no look at the
 * machine, and what nobody would be sent to do but they did. Whoever is there sends the photo that is
 * asked for with it.
 */
function story(read: ReadCase, model: Model, progress: Progress): void {
  const { knowledge } = model;
  progress.asked.push(STORY);
  const left = new Set(
    [...knowledge.checks.values()].flatMap(({ performers, step, yields }) =>
      step !== "talk" && performers.includes("operator") ? [yields] : [],
    ),
  );
  const subject = photoAskedFor(model, progress);
  const photo = subject === null ? [] : seenOnPhoto(read, subject, knowledge);
  const facts = read.operator.filter(
    (report) =>
      (!left.has(report.observation) || photo.includes(report.observation)) &&
      !isSaid(progress.reports, report),
  );
  progress.reports.push(...facts);
  if (facts.length > 0) progress.answered += 1;
}

/** The entry of a case file that tells what a photo would have shown. */
const PHOTO = "photo-would-show";
/** Places from which no photo of the machine can be sent. */
const elsewhere: readonly string[] = ["no", "for-someone-else"];

/** What the one photo should show, as the belief stands; null for somebody who is not there. */
function photoAskedFor(model: Model, { reports, acts }: Progress): string | null {
  const place = reports.findLast(({ observation }) => observation === AT_MACHINE)?.said;
  const state = place?.kind === "states" ? Object.keys(place.weights)[0] : undefined;
  if (elsewhere.includes(state ?? "")) return null;
  const evidence = evidenceFrom(reports, acts, model.knowledge);
  return likeliestSubject(rankCauses(model, evidence).causes, model.knowledge);
}

/** What a photo of this subject tells of what the file says a photo would have shown. */
function seenOnPhoto(read: ReadCase, subject: string, knowledge: Knowledge): readonly string[] {
  const shown = read.entries.flatMap(({ key, observations }) =>
    key === PHOTO ? observations : [],
  );
  return shown.filter((observation) => isSeenOn(subject, observation, knowledge));
}

/** What is seen while an act is done: what must be looked at again after it. */
function seenDoing(act: Act, knowledge: Knowledge): readonly string[] {
  return [...knowledge.checks.values()].flatMap(({ performers, step, yields }) =>
    step === "inspect" && performers.includes("operator") && act.makesStale.includes(yields)
      ? [yields]
      : [],
  );
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
  const symptom = operatorCheckFor(knowledge, ON_START, model.facts);
  if (symptom !== null && most > 0 && !knows(progress.reports, ON_START)) {
    put(read, symptom, { knowledge, progress });
  }
  if (progress.asked.length < most) story(read, model, progress);
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
