import type { Asking } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line, Message } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { PlanStep } from "../domain/triage.ts";
import { shownChance } from "./chance.ts";
import { choicesFor, DONT_KNOW, SKIP } from "./choices.ts";
import { button, line, phrase } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { cautionsFor, questionLines } from "./question.ts";

const CAUSES_OFFERED = 5;

/** The step that comes first in the plan as it stands, as something to put to the technician. */
export function nextStep(state: CaseState, desk: Desk): Asking | null {
  const { plan } = desk.triage(state, "technician");
  const step = plan.steps.find((candidate) => doable(candidate, state));
  if (step === undefined) return null;
  if (step.kind === "remedy") return { about: "remedy", remedy: step.id };
  if (step.kind === "act") return { about: "act", act: step.id, stage: "offer" };
  return { about: "check", check: step.id };
}

function doable(step: PlanStep, state: CaseState): boolean {
  return (
    (step.kind === "check" || step.kind === "act" || step.kind === "remedy") &&
    !state.skippedSteps.includes(step.id)
  );
}

function toolLines(asking: Asking, desk: Desk): Line[] {
  const { checks, acts, remedies } = desk.knowledge;
  const tools =
    asking.about === "check"
      ? checks.get(asking.check)?.tools
      : asking.about === "act"
        ? acts.get(asking.act)?.tools
        : asking.about === "remedy"
          ? remedies.get(asking.remedy)?.tools
          : [];
  if (tools === undefined || tools.length === 0) return [];
  const list = { list: tools.map((tool) => ({ know: wordKey("tool", tool) })) };
  return [line(phrase("step-tools", { tools: list }))];
}

/** One step at a time: what to do, with what, how carefully, and the results to press. */
export function stepMessage(
  state: CaseState,
  parts: { readonly asking: Asking; readonly revision: number; readonly before: readonly Line[] },
  desk: Desk,
): Message {
  const { asking, revision, before } = parts;
  const press = (act: string, value?: string) => ({
    case: state.id,
    revision,
    act,
    ...(value === undefined ? {} : { value }),
  });
  const answers = choicesFor(asking, state, desk.knowledge)
    .filter((choice) => choice.value !== DONT_KNOW && choice.value !== SKIP)
    .map((choice) => button(choice.label, press("result", choice.value)));
  const ways = ["skip-step", "found", "undo", "sheet"].map((way) =>
    button(phrase(`press-${way}`), press(way)),
  );
  const cautions = cautionsFor(asking, { state, to: "technician", knowledge: desk.knowledge });
  const [first, ...rest] = [...cautions, ...questionLines(asking, desk)];
  const question = first === undefined ? [] : [{ ...first, gap: before.length > 0 }, ...rest];
  return {
    lines: [...before, ...question, ...toolLines(asking, desk)],
    buttons: [...answers, ...ways],
  };
}

/** "This was it": the leading causes to choose from, or words of one's own. */
export function causeMessage(
  state: CaseState,
  parts: { readonly revision: number; readonly before: readonly Line[] },
  desk: Desk,
): Message {
  const { revision, before } = parts;
  const { ranking } = desk.triage(state, "technician");
  const press = (value: string) => ({ case: state.id, revision, act: "cause", value });
  const causes = ranking.causes.slice(0, CAUSES_OFFERED).map((cause) =>
    button(
      phrase("cause-choice", {
        cause: { know: wordKey("fault", cause.fault) },
        chance: { quantity: shownChance(cause.probability), unit: "percent" },
      }),
      press(cause.fault),
    ),
  );
  return {
    lines: [...before, line(phrase("which-cause"), "heading", before.length > 0)],
    buttons: [...causes, button(phrase("cause-other"), press("other"))],
  };
}
