import type { Line, Phrase } from "../domain/effects.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { Plan, PlanStep } from "../domain/triage.ts";
import { line, phrase } from "./decision.ts";
import type { Desk } from "./desk.ts";

/** The knowledge's own word for a step of the plan. */
export function stepKey(step: { readonly id: string; readonly kind: string }): string {
  if (step.kind === "act") return wordKey("act", step.id);
  if (step.kind === "remedy") return wordKey("remedy", step.id);
  if (step.kind === "open-up") return wordKey("access", step.id);
  return wordKey("check", step.id);
}

/** One step of the plan in words. */
export function stepPhrase(step: PlanStep): Phrase {
  if (step.kind === "call-for-help") return phrase("plan-call-help");
  const what = { know: stepKey(step) };
  return phrase("plan-step", { what, minutes: { quantity: step.minutes, unit: "min" } });
}

/** The most likely result of a step, and the step it leads to; `result` "" says that it failed. */
type Branch = PlanStep["then"][number];

/** A step of the main line with the ways that leave it. */
export interface LineStep {
  readonly step: PlanStep;
  /** Results that lead elsewhere than the next step of the line, likeliest first. */
  readonly otherwise: readonly { readonly result: string; readonly next: PlanStep | null }[];
}

const onward = (then: readonly Branch[]): Branch | undefined =>
  // After a repair the line goes on where it did not help: otherwise the plan is at its end.
  then.find((branch) => branch.next !== null);

/**
 * The plan along its likeliest course: each check followed by what its most likely result leads to,
 * each repair by what comes when it did not help. No step stands in it twice.
 */
export function mainLine(plan: Plan): readonly LineStep[] {
  const byId = new Map(plan.steps.map((step) => [step.id, step]));
  const line: LineStep[] = [];
  const met = new Set<string>();
  let step = plan.steps[0];
  while (step !== undefined && !met.has(step.id)) {
    met.add(step.id);
    const [likely] = step.then;
    const on: Branch | undefined = step.kind === "check" ? likely : onward(step.then);
    const otherwise = step.then
      .filter((branch) => branch.next !== on?.next && branch.next !== null)
      .map((branch) => ({ result: branch.result, next: byId.get(branch.next ?? "") ?? null }));
    line.push({ step, otherwise });
    // What is opened up is opened for the step that stands after it.
    const after = plan.steps[plan.steps.indexOf(step) + 1];
    step = step.kind === "open-up" ? after : byId.get(on?.next ?? "");
  }
  return line;
}

function resultPhrase(check: string, result: string, knowledge: Knowledge): Phrase {
  const yields = knowledge.checks.get(check)?.yields ?? "";
  const states = knowledge.observations.get(yields)?.states ?? [];
  return states.some((state) => state.id === result)
    ? { know: wordKey("state", `${yields}.${result}`) }
    : { raw: result };
}

function branchLines({ step, otherwise }: LineStep, most: number, desk: Desk): Line[] {
  if (step.kind !== "check") return [];
  return otherwise.slice(0, most).flatMap(({ result, next }) =>
    next === null
      ? []
      : [
          line(
            phrase("plan-if", {
              result: { phrase: resultPhrase(step.id, result, desk.knowledge) },
              next:
                next.kind === "call-for-help"
                  ? { phrase: phrase("plan-call-help") }
                  : { know: stepKey(next) },
            }),
            "bullet",
          ),
        ],
  );
}

/** The plan in lines: its main course, with the first turnings, what is left, and how long it takes. */
export function planLines(
  plan: Plan,
  most: { readonly steps: number; readonly turnings: number },
  desk: Desk,
): Line[] {
  const course = mainLine(plan);
  const steps = course
    .slice(0, most.steps)
    .flatMap((one) => [
      line(stepPhrase(one.step), "step"),
      ...branchLines(one, most.turnings, desk),
    ]);
  const left = course.length - most.steps;
  const more = left > 0 ? [line(phrase("plan-more", { count: left }))] : [];
  const minutes = phrase("plan-minutes", {
    median: { quantity: plan.minutes.median, unit: "min" },
    most: { quantity: plan.minutes.p90, unit: "min" },
  });
  return [line(phrase("slip-plan"), "heading", true), ...steps, ...more, line(minutes)];
}
