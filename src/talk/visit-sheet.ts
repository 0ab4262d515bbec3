import type { CaseState } from "../domain/case-state.ts";
import type { Line, Message, PlannedEffect } from "../domain/effects.ts";
import { type Knowledge, wordKey } from "../domain/knowledge.ts";
import type { Triage } from "../domain/triage.ts";
import { ON_START } from "../domain/vocabulary.ts";
import { shownChance } from "./chance.ts";
import { stateLabel } from "./choices.ts";
import { cutWords } from "./cut-words.ts";
import { button, line, phrase, revise, say } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { earlierLines } from "./earlier-cases.ts";
import { alikeLines } from "./look-alikes.ts";
import { readingPhrase } from "./pictures.ts";
import { plainState } from "./place.ts";
import { mainLine, planLines } from "./plan-lines.ts";
import { cautionLines } from "./question.ts";
import { causesWithReasons } from "./reasons.ts";
import { kitLines } from "./slip.ts";

/** Of what was said or noted, letters a text: the causes and the plan need the room. */
const WORDS_ON_SHEET = 95;
const CAUSES_ON_SHEET = 6;
/** Reasons told of the first cause; of the others one in a few words: the sheet is read standing. */
const REASONS_OF_FIRST = 2;
const NOTES_ON_SHEET = 3;
const PLAN_ON_SHEET = { steps: 8, turnings: 2 };

function headLines(state: CaseState): Line[] {
  const machine = { know: wordKey("machine", state.machine.kind ?? "other") };
  const symptom = plainState(state, ON_START);
  const complaint = symptom === null ? phrase("symptom-unknown") : stateLabel(ON_START, symptom);
  const words = state.words
    .slice(0, 3)
    .map((text) => line({ raw: cutWords(text, WORDS_ON_SHEET) }, "quote"));
  const place = state.where?.words;
  return [
    line(phrase("sheet-title", { number: state.id, machine }), "heading"),
    line(phrase("slip-complaint", { what: { phrase: complaint } })),
    ...words,
    ...(place === undefined
      ? []
      : [line(phrase("slip-place", { place: cutWords(place, WORDS_ON_SHEET) }))]),
    ...(state.phone === null ? [] : [line(phrase("slip-phone", { phone: state.phone }))]),
    ...state.notes
      .slice(-NOTES_ON_SHEET)
      .map((note) => line(phrase("sheet-note", { note: cutWords(note.text, WORDS_ON_SHEET) }))),
  ];
}

function causeLines(triage: Triage, knowledge: Knowledge): Line[] {
  const { ranking } = triage;
  const leaders = ranking.causes.slice(0, CAUSES_ON_SHEET);
  const causes = causesWithReasons(leaders, REASONS_OF_FIRST, knowledge);
  const rest = phrase("slip-rest", {
    else: { quantity: shownChance(ranking.somethingElse), unit: "percent" },
    nothing: { quantity: shownChance(ranking.nothingWrong), unit: "percent" },
  });
  const mind = ranking.wouldChangeMind;
  const change =
    mind === null
      ? []
      : [
          line(
            phrase("would-change-mind", {
              what: { know: wordKey("observation", mind.observation) },
              state: { know: wordKey("state", `${mind.observation}.${mind.state}`) },
            }),
          ),
        ];
  return [
    line(phrase("slip-causes"), "heading", true),
    ...causes,
    ...alikeLines(ranking),
    line(rest),
    ...change,
  ];
}

function planWithCautions(triage: Triage, desk: Desk): Line[] {
  const shown = mainLine(triage.plan).slice(0, PLAN_ON_SHEET.steps);
  const hazards = [...new Set(shown.flatMap(({ step }) => step.hazards))];
  const [heading, ...plan] = planLines(triage.plan, PLAN_ON_SHEET, desk);
  return [...(heading === undefined ? [] : [heading]), ...cautionLines(hazards), ...plan];
}

/** What the meter should show at the plan's measurements, where the circuit is simulated. */
function pointLines(triage: Triage, state: CaseState, desk: Desk): Line[] {
  const { checks, observations } = desk.knowledge;
  const measured = mainLine(triage.plan)
    .slice(0, PLAN_ON_SHEET.steps)
    .flatMap(({ step }) => observations.get(checks.get(step.id)?.yields ?? "") ?? [])
    .filter(({ id, unit }) => unit === "V" && (desk.expected?.(state, id) ?? null) !== null);
  if (measured.length === 0) return [];
  const lines = measured.map((one) => line(readingPhrase(one, state, desk), "bullet"));
  return [line(phrase("sheet-points"), "heading", true), ...lines];
}

/** What a technician reads before leaving: machine, complaint, causes, plan, kit, cautions. */
export function sheetMessage(state: CaseState, desk: Desk): Message {
  const triage = desk.triage(state, "technician");
  const press = (act: string) => ({ case: state.id, revision: 0, act });
  const isThere = state.visit === "started";
  const leave = isThere || state.setOut ? [] : [button(phrase("press-set-out"), press("set-out"))];
  const begin = isThere ? [] : [button(phrase("press-begin"), press("begin"))];
  return {
    lines: [
      ...headLines(state),
      ...earlierLines(desk.earlier?.(state) ?? []),
      ...causeLines(triage, desk.knowledge),
      ...planWithCautions(triage, desk),
      ...pointLines(triage, state, desk),
      ...kitLines(triage, state, desk),
    ],
    buttons: [
      ...leave,
      ...begin,
      button(phrase("press-files"), press("files")),
      button(phrase("press-causes"), press("causes")),
      button(phrase("press-circuit"), press("circuit")),
      button(phrase("press-paper"), press("paper")),
    ],
  };
}

/** Gives the sheet to the technician who has the case; in place where it already stands. */
export function sheetEffects(state: CaseState, desk: Desk): PlannedEffect[] {
  const technician = state.technician;
  if (technician === null) return [];
  return [revise(technician, sheetMessage(state, desk), `sheet-${technician.id}`)];
}

/** The place on the map, once, where the operator shared it. */
export function pinEffects(state: CaseState): PlannedEffect[] {
  const { latitude, longitude } = state.where ?? {};
  if (state.technician === null || latitude === undefined || longitude === undefined) return [];
  return [say(state.technician, { lines: [], place: { latitude, longitude } })];
}
