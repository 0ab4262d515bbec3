import type { Asking } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line, Message } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { PlanStep } from "../domain/triage.ts";
import { shownChance } from "./chance.ts";
import { type Choice, choicesFor, DONT_KNOW, SKIP } from "./choices.ts";
import { button, line, phrase } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { expectedLines } from "./expected.ts";
import { handBackChoices, handBackLines } from "./hand-back.ts";
import { cautionsFor, questionLines } from "./question.ts";

const CAUSES_OFFERED = 5;
const PARTS_OFFERED = 4;

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

/** The results that a technician can press for what is asked. */
export function stepChoices(asking: Asking, state: CaseState, desk: Desk): readonly Choice[] {
  if (asking.about === "hand-back") return handBackChoices(asking, desk);
  if (asking.about === "missing") {
    const parts = desk.triage(state, "technician").kit.items.slice(0, PARTS_OFFERED);
    return parts.map(({ part }) => ({ value: part, label: { know: wordKey("part", part) } }));
  }
  return choicesFor(asking, state, desk.knowledge).filter(
    (choice) => choice.value !== DONT_KNOW && choice.value !== SKIP,
  );
}

/** The result whose words were typed, in the technician's language; null: none of them. */
export function typedChoice(
  asking: Asking,
  text: string,
  given: { readonly state: CaseState; readonly desk: Desk },
): string | null {
  const { state, desk } = given;
  const language = state.technician?.language ?? "en";
  const wanted = text.trim().toLowerCase();
  const choice = stepChoices(asking, state, desk).find(
    ({ label }) => desk.words(label, language).toLowerCase() === wanted,
  );
  return choice?.value ?? null;
}

/** Ways on besides the results; at the end there is nothing left to skip. */
function waysFor(asking: Asking): readonly string[] {
  if (asking.about === "ran") return ["short", "found", "undo", "sheet"];
  if (/^(hand-back|missing)/.test(asking.about)) return ["undo", "sheet"];
  return ["skip-step", "found", "short", "undo", "sheet"];
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
  const answers = stepChoices(asking, state, desk).map((choice) =>
    button(choice.label, press("result", choice.value)),
  );
  const ways = waysFor(asking).map((way) => button(phrase(`press-${way}`), press(way)));
  const asked =
    asking.about === "hand-back" ? handBackLines(asking.check, desk) : questionLines(asking, desk);
  const cautions = cautionsFor(asking, { state, to: "technician", knowledge: desk.knowledge });
  const [first, ...rest] = [...cautions, ...asked];
  const question = first === undefined ? [] : [{ ...first, gap: before.length > 0 }, ...rest];
  return {
    lines: [
      ...before,
      ...question,
      ...expectedLines(state, asking, desk),
      ...toolLines(asking, desk),
    ],
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
