import type { CaseState } from "../domain/case-state.ts";
import type { Line, Phrase } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import { button, type Decision, line, phrase, say } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { complaintLines, headLines } from "./slip-head.ts";
import { reportWords } from "./understand.ts";

/** The button under the last message. */
export const summaryButton = (state: CaseState) =>
  button(phrase("press-summary"), { case: state.id, revision: state.revision, act: "summary" });

function toldLines(state: CaseState, desk: Desk): Line[] {
  return state.answers.flatMap(({ report }) => {
    const value = reportWords(report, desk.knowledge);
    if (value.length === 0) return [];
    const name = { know: wordKey("observation", report.observation) };
    return [line(phrase("answer-in-list", { name, value: { list: value } }), "bullet")];
  });
}

function triedLines({ acts }: CaseState): Line[] {
  const told = acts.filter(({ outcome }) => outcome !== "unknown");
  return told.map(({ act, outcome }) => {
    const came: Phrase = phrase(`outcome-${outcome}`);
    const words = { name: { know: wordKey("act", act) }, value: { phrase: came } };
    return line(phrase("answer-in-list", words), "bullet");
  });
}

/** What is known of the case in one message without buttons, to be passed on to somebody else. */
export function sendSummary(state: CaseState, desk: Desk): Decision {
  const { name, phone } = desk.shop;
  const lines = [
    ...headLines(state).slice(0, 1),
    ...complaintLines(state),
    ...toldLines(state, desk),
    ...triedLines(state),
    line(phrase("summary-shop", { shop: name, phone }), undefined, true),
  ];
  return { happenings: [], effects: [say(state.operator, { lines })] };
}
