import type { CaseState } from "../domain/case-state.ts";
import type { Line, Message } from "../domain/effects.ts";
import { type Knowledge, wordKey } from "../domain/knowledge.ts";
import type { RankedCause } from "../domain/triage.ts";
import { chanceWord, shownChance } from "./chance.ts";
import { line, phrase } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { wantsPlate } from "./next-question.ts";
import { plainReason } from "./reasons.ts";
import { refusedActLines } from "./refused-acts.ts";
import { summaryButton } from "./summary.ts";

/** An operator is told of three causes at most, and of none that is very unlikely. */
const MOST_CAUSES = 3;
const LEAST_CHANCE = 0.05;
/** Nobody keeps more than two things in mind that they shall not buy. */
const MOST_WARNINGS = 2;

function causeLines(cause: RankedCause, isFirst: boolean, knowledge: Knowledge): Line[] {
  const words = phrase(`chance-${chanceWord(cause.probability)}`, {
    cause: { know: wordKey("fault", cause.fault) },
    chance: { quantity: shownChance(cause.probability), unit: "percent" },
  });
  const explain = line({ know: wordKey("fault", cause.fault, "explain") });
  return [line(words, "step", !isFirst), explain, ...plainReason(cause, knowledge)];
}

function notYetLines(causes: readonly RankedCause[], desk: Desk): Line[] {
  const warnings = causes.flatMap((cause) => desk.knowledge.faults.get(cause.fault)?.notYet ?? []);
  const seen = new Set<string>();
  const lines: Line[] = [];
  for (const warning of warnings) {
    if (seen.has(warning.part)) continue;
    seen.add(warning.part);
    lines.push(
      line(
        phrase("do-not-buy-yet", {
          part: { know: wordKey("part", warning.part) },
          check: { know: wordKey("check", warning.before) },
        }),
        "bullet",
        lines.length === 0,
      ),
    );
  }
  return lines.slice(0, MOST_WARNINGS);
}

function nextLines(state: CaseState, desk: Desk): Line[] {
  const readers = desk.members.some((member) => member.role !== "technician");
  const told = readers || desk.counter !== undefined ? "what-next-told" : "what-next-nobody";
  return [
    line(
      phrase(told, { number: state.id, shop: desk.shop.name, phone: desk.shop.phone }),
      undefined,
      true,
    ),
  ];
}

/** What it may be, what not to buy, and what happens next: the operator's last message. */
export function endingMessage(state: CaseState, before: readonly Line[], desk: Desk): Message {
  if (state.closed !== null) {
    return {
      lines: [...before, line(phrase("closed-thanks", { number: state.id }))],
      endOffer: true,
    };
  }
  const plate = wantsPlate(state) ? [line(phrase("ask-plate"))] : [];
  if (state.answers.length === 0) {
    return { lines: [...before, ...nextLines(state, desk), ...plate], endOffer: true };
  }
  const { ranking } = desk.triage(state, "operator");
  const causes = ranking.causes
    .filter((cause) => cause.probability >= LEAST_CHANCE)
    .slice(0, MOST_CAUSES);
  const unsure = ranking.somethingElse > (causes[0]?.probability ?? 0);
  return {
    lines: [
      ...before,
      line(phrase("what-it-may-be"), "heading", before.length > 0),
      ...causes.flatMap((cause, at) => causeLines(cause, at === 0, desk.knowledge)),
      ...(unsure ? [line(phrase("may-be-else"))] : []),
      ...notYetLines(causes, desk),
      ...refusedActLines(causes, state, desk),
      ...nextLines(state, desk),
      ...plate,
      line(phrase("manual-first")),
    ],
    buttons: [summaryButton(state)],
    endOffer: true,
  };
}
