import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "yaml";
import { z } from "zod";
import { evidenceFrom } from "../../src/cases/case-evidence.ts";
import { type CaseAct, readCase } from "../../src/cases/case-file.ts";
import { simulateInterview } from "../../src/cases/simulated-interview.ts";
import { parseCases } from "../../src/commands/case-files.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import type { Model } from "../../src/diagnosis/model.ts";
import { planVisit } from "../../src/diagnosis/plan.ts";
import { rankCauses } from "../../src/diagnosis/ranking.ts";
import type { Evidence, MachineFacts } from "../../src/domain/evidence.ts";
import { forbiddenPhrase } from "../../src/knowledge/forbidden-words.ts";
import { workshop } from "./dialog.ts";
import { technicianThere } from "./told.ts";

/** What a call file holds besides the case itself. */
const Beside = z.strictObject({
  /** Where the story is from. */
  story: z.string().min(20),
  /** What comes of an act when the operator is asked to do it. */
  acts: z.record(z.string(), z.enum(["cured", "no-change"])).default({}),
  must: z.strictObject({
    /** The interview has at most this many questions. */
    questions: z.number().int().positive(),
    /** The true group is among the first so many after the interview. */
    first: z.number().int().min(3).max(5).default(3),
    /** Warnings shown with what the operator is asked; none where there is only talk. */
    shows: z.array(z.string()),
    /** Warnings that stand on the technician's plan. */
    visit: z.array(z.string()),
    /** Checks and acts that must not be put to this operator. */
    never: z.array(z.string()).min(2),
    /** The danger that the first message tells of. */
    flag: z.string().optional(),
  }),
});

export type Call = z.infer<typeof Beside>;

/** A call played to its end, by rows. */
export interface Played {
  readonly call: Call;
  readonly groups: readonly string[];
  readonly causes: readonly string[];
  readonly questions: readonly string[];
  readonly warnings: readonly string[];
  readonly planWarnings: readonly string[];
  /** Every sentence of advice: questions, how to, warnings, what to do in danger, remedies. */
  readonly advice: readonly string[];
  readonly flags: readonly string[];
  readonly notUnderstood: readonly string[];
  /** Groups by belief, the likeliest first: after the interview, after the technician. */
  readonly afterInterview: readonly string[];
  readonly afterVisit: readonly string[];
}

/** The first steps are what is looked at here: a short search will do. */
const QUICK_PLAN = { seed: 1, nodes: 200, samples: 20 };

const Forbidden = z.object({
  negations: z.array(z.string()),
  forbidden: z.record(
    z.string(),
    z.object({ who: z.string(), phrases: z.array(z.string()).default([]) }),
  ),
});
const { negations, forbidden } = Forbidden.parse(
  parse(readFileSync("flows/shared/forbidden.yaml", "utf8")),
);
const forbiddenToAnyone = Object.values(forbidden).flatMap(({ who, phrases }) =>
  who === "anyone" ? phrases : [],
);

/** What a played call lacks in warnings, or says that it must not: a line each. */
export function unsafe(one: Played): readonly string[] {
  const { must } = one.call;
  const said = one.advice.flatMap(
    (text) => forbiddenPhrase(text, forbiddenToAnyone, negations) ?? [],
  );
  return [
    ...must.shows.filter((id) => !one.warnings.includes(id)).map((id) => `${id} is not shown`),
    ...must.visit
      .filter((id) => !one.planWarnings.includes(id))
      .map((id) => `${id} is not on the plan`),
    ...must.never.filter((id) => one.questions.includes(id)).map((id) => `${id} was asked`),
    ...said.map((phrase) => `it says "${phrase}"`),
  ];
}

const models = new Map<string, Model>();

function modelFor(machine: MachineFacts): Model {
  const key = JSON.stringify(machine);
  const known = models.get(key);
  if (known !== undefined) return known;
  const made = compileModel(workshop.knowledge, machine);
  models.set(key, made);
  return made;
}

function byBelief(model: Model, evidence: Evidence): readonly string[] {
  const sums = new Map<string, number>();
  for (const { group, probability } of rankCauses(model, evidence).causes) {
    sums.set(group, (sums.get(group) ?? 0) + probability);
  }
  return [...sums].sort(([, a], [, b]) => b - a).map(([group]) => group);
}

/** Plays the call in a folder: the interview until it stops, then the technician's findings. */
export function playCall(folder: string): Played {
  const text = readFileSync(join(folder, "call.yaml"), "utf8");
  const parsed = parseCases(text, folder);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  const [file] = parsed.value.cases;
  if (file === undefined) throw new Error(`${folder}: no case`);
  const { story, acts, must } = z.looseObject({}).parse(parse(text));
  const call = Beside.parse({ story, acts, must });
  const plain = readCase(file, workshop);
  const done = Object.entries(call.acts).map(([act, outcome]): CaseAct => {
    if (!workshop.knowledge.acts.has(act)) throw new Error(`${folder}: no act "${act}"`);
    return { act, outcome, by: "operator", toldIn: "operator", report: null };
  });
  const read = { ...plain, acts: [...plain.acts, ...done] };
  const model = modelFor(read.machine);
  const interview = simulateInterview(read, model);
  const { checks, acts: allActs } = workshop.knowledge;
  const asked = interview.questions.map((id) => checks.get(id) ?? allActs.get(id));
  const { steps } = planVisit(model, interview.evidence, technicianThere, QUICK_PLAN);
  const warnings = asked.flatMap((one) => one?.hazards ?? []);
  const planWarnings = steps.flatMap((step) => step.hazards);
  const operatorActs = read.acts.filter(({ act }) => interview.questions.includes(act));
  const found = [...read.opening, ...read.operator, ...read.technician];
  return {
    call,
    groups: file.group,
    causes: file.cause,
    questions: interview.questions,
    warnings,
    planWarnings,
    advice: [
      ...asked.flatMap((one) => [one?.ask, one?.how]),
      ...steps.flatMap(({ id }) => [
        checks.get(id)?.ask,
        checks.get(id)?.how,
        allActs.get(id)?.ask,
        workshop.knowledge.remedies.get(id)?.text,
      ]),
      ...[...warnings, ...planWarnings].map((id) => workshop.knowledge.hazards.get(id)?.caution),
      ...read.redFlags.map((id) => workshop.knowledge.redFlags.get(id)?.say),
    ].flatMap((text) => text ?? []),
    flags: read.redFlags,
    notUnderstood: read.notUnderstood,
    afterInterview: byBelief(model, interview.evidence),
    afterVisit: byBelief(
      model,
      evidenceFrom(found, [...plain.acts, ...operatorActs], workshop.knowledge),
    ),
  };
}
