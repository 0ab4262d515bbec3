import type { CaseState } from "../domain/case-state.ts";
import { phrase } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { sameWords } from "./same-words.ts";

/** Ways out of a question, as on their buttons. */
const ways = ["back", "change", "pause", "person", "runs", "stop"] as const;
/** Those that are also written in other words than stand on the button. */
const alsoWritten: ReadonlySet<string> = new Set(["change", "pause", "runs"]);

/**
 * The way out that was typed: the words of its button, or one of those that stand for it in the
 * person's language, with commas between them.
 * @returns its name, or null
 */
export function typedWay(text: string, state: CaseState, desk: Desk): string | null {
  const { language } = state.operator;
  // "It runs" is an answer, where it was just asked what a try came to.
  const asking = state.open.operator?.asking;
  const isTrying = asking?.about === "act" && asking.stage === "result";
  const found = ways.find((way) => {
    if (way === "runs" && isTrying) return false;
    const label = desk.words(phrase(`more-${way}`), language);
    const others = alsoWritten.has(way) ? desk.words(phrase(`word-${way}`), language) : "";
    return [label, ...others.split(",")].some((words) => words !== "" && sameWords(text, words));
  });
  return found ?? null;
}
