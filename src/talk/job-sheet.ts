import type { CaseState } from "../domain/case-state.ts";
import type { Line, Phrase, PlannedEffect } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { JobSheet, SheetLine } from "../domain/paper.ts";
import type { Triage } from "../domain/triage.ts";
import { shownChance } from "./chance.ts";
import { type Decision, line, nothingToDo, phrase, say } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { untestedLines } from "./hand-back.ts";
import { causeBars, circuitWish } from "./pictures.ts";
import { mainLine, planLines } from "./plan-lines.ts";
import { cautionLines } from "./question.ts";
import { complaintLines, contactLines, headLines } from "./slip-head.ts";
import { kitPart } from "./stock.ts";
import { reportWords } from "./understand.ts";
import { recordLines } from "./visit-record.ts";

const CAUSES = 5;
const PLAN = { steps: 8, turnings: 2 };
const ANSWERS = 16;
const NOTES = 6;

const styles = { step: "step", bullet: "turn", caution: "caution", quote: "quote" } as const;

/** A line of the chat as a line on paper; headings become plain. */
function onPaper({ say: words, style }: Line): SheetLine<Phrase> {
  return style === undefined || style === "heading" ? { words } : { words, style: styles[style] };
}

function loadLines(triage: Triage, state: CaseState, desk: Desk): SheetLine<Phrase>[] {
  const { items, tools, covers } = triage.kit;
  const parts = items
    .filter((item) => item.carry)
    .map((item): SheetLine<Phrase> => ({ words: kitPart(item, state, desk), style: "tick" }));
  const toolLines = tools.map(
    (tool): SheetLine<Phrase> => ({ words: { know: wordKey("tool", tool) }, style: "tick" }),
  );
  const chance = { quantity: shownChance(covers), unit: "percent" } as const;
  return [...parts, ...toolLines, { words: phrase("kit-covers", { chance }) }];
}

function answerLines(state: CaseState, desk: Desk): SheetLine<Phrase>[] {
  return state.answers.slice(-ANSWERS).flatMap(({ report }) => {
    const words = reportWords(report, desk.knowledge);
    if (words.length === 0) return [];
    const name = { know: wordKey("observation", report.observation) };
    const said =
      report.said.kind === "value"
        ? phrase("named-answer", { what: { list: words } })
        : phrase("answer-in-list", { name, value: { list: words } });
    const isPhoto = report.reporter === "photo";
    return [{ words: isPhoto ? phrase("seen-on-photo", { what: { phrase: said } }) : said }];
  });
}

/** The plan, with what is to be minded before its steps. */
function plan(triage: Triage, desk: Desk): SheetLine<Phrase>[] {
  const [, ...lines] = planLines(triage.plan, PLAN, desk);
  const shown = mainLine(triage.plan).slice(0, PLAN.steps);
  const hazards = [...new Set(shown.flatMap(({ step }) => step.hazards))];
  return [...cautionLines(hazards), ...lines].map(onPaper);
}

/** The job on paper: what to know before leaving; once closed, what came of it as well. */
export function jobSheet(state: CaseState, desk: Desk): JobSheet<Phrase> {
  const triage = desk.triage(state, "technician");
  const isClosed = state.closed !== null;
  const [title, ...head] = headLines(state);
  const record = [...recordLines(state, desk).slice(1), ...untestedLines(state)].map(onPaper);
  const notes = state.notes
    .slice(-NOTES)
    .map((note) => line(phrase("sheet-note", { note: note.text })));
  return {
    kind: "sheet",
    name: `case-${state.id}`,
    made: desk.now,
    title: title?.say ?? { raw: state.id },
    head: [...head, ...complaintLines(state), ...contactLines(state, desk), ...notes].map(onPaper),
    causes: { title: phrase("slip-causes"), bars: causeBars(triage, CAUSES, desk.knowledge) },
    circuit: circuitWish(state, desk),
    sections: [
      ...(isClosed ? [{ heading: phrase("sheet-record"), lines: record }] : []),
      { heading: phrase("sheet-told"), lines: answerLines(state, desk) },
      ...(isClosed
        ? []
        : [
            { heading: phrase("slip-plan"), lines: plan(triage, desk) },
            { heading: phrase("slip-kit"), lines: loadLines(triage, state, desk) },
          ]),
    ],
  };
}

interface Reader {
  readonly chat: string;
  readonly language: string;
  readonly topic?: number;
}

/** Sends the job sheet as a file. */
export function paperEffect(to: Reader, state: CaseState, desk: Desk): PlannedEffect {
  return say(to, { lines: [], paper: jobSheet(state, desk) });
}

/** The sheet for whoever pressed for it. */
export function paperTo(to: Reader, state: CaseState, desk: Desk): Decision {
  if (state.answers.length === 0) return { ...nothingToDo, toast: phrase("sheet-too-early") };
  return { happenings: [], effects: [paperEffect(to, state, desk)] };
}
