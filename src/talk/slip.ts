import type { CaseState } from "../domain/case-state.ts";
import type { Line, Message, PlannedEffect } from "../domain/effects.ts";
import { type Knowledge, wordKey } from "../domain/knowledge.ts";
import type { Triage } from "../domain/triage.ts";
import { shownChance } from "./chance.ts";
import { line, phrase, quietly, revise } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { earlierLines } from "./earlier-cases.ts";
import { isQuietAt } from "./hours.ts";
import { alikeLines } from "./look-alikes.ts";
import { planLines } from "./plan-lines.ts";
import { causesWithReasons } from "./reasons.ts";
import { complaintLines, contactLines, headLines, urgentLines } from "./slip-head.ts";
import { slipButtons, statusLines } from "./slip-status.ts";
import { kitPart } from "./stock.ts";

const CAUSES_ON_SLIP = 4;
/** Reasons told of the first cause; of the others one in a few words. */
const REASONS_OF_FIRST = 2;
const PLAN_ON_SLIP = { steps: 5, turnings: 1 };
const PARTS_ON_SLIP = 6;

/** The slot under which a case's slip stands at the counter, one for each reader. */
export const slipSlot = (reader: string): string => `slip-${reader}`;

function causeLines(triage: Triage, knowledge: Knowledge): Line[] {
  const { causes, somethingElse, nothingWrong } = triage.ranking;
  const leaders = causes.slice(0, CAUSES_ON_SLIP);
  const shown = causesWithReasons(leaders, REASONS_OF_FIRST, knowledge);
  return [
    line(phrase("slip-causes"), "heading", true),
    ...shown,
    ...alikeLines(triage.ranking),
    line(
      phrase("slip-rest", {
        else: { quantity: shownChance(somethingElse), unit: "percent" },
        nothing: { quantity: shownChance(nothingWrong), unit: "percent" },
      }),
    ),
  ];
}

/** Is there a chance that nobody has to drive? */
function byChatLines(state: CaseState, triage: Triage): Line[] {
  if (state.technician !== null) return [];
  const chance = { quantity: shownChance(triage.ways.byChat), unit: "percent" } as const;
  return [line(phrase("slip-by-chat", { chance }))];
}

/** What to load, with the chance of need, and what that covers. */
export function kitLines(triage: Triage, state: CaseState, desk: Desk): Line[] {
  const { kit } = triage;
  const parts = kit.items
    .filter((item) => item.carry)
    .slice(0, PARTS_ON_SLIP)
    .map((item) => line(kitPart(item, state, desk), "bullet"));
  const tools =
    kit.tools.length === 0
      ? []
      : [
          line(
            phrase("kit-tools", {
              tools: { list: kit.tools.map((tool) => ({ know: wordKey("tool", tool) })) },
            }),
          ),
        ];
  const covers = phrase("kit-covers", {
    chance: { quantity: shownChance(kit.covers), unit: "percent" },
  });
  return [line(phrase("slip-kit"), "heading", true), ...parts, ...tools, line(covers)];
}

/** A case on one page for the person who decides what happens with it. */
export function slipMessage(state: CaseState, desk: Desk): Message {
  // Once it is over nobody drives out by it any more: what it was is told below.
  const known = state.answers.length > 0 && state.closed === null;
  const triage = known ? desk.triage(state, "technician") : null;
  return {
    lines: [
      ...headLines(state),
      ...earlierLines(desk.earlier?.(state) ?? []),
      ...urgentLines(state, desk),
      ...complaintLines(state),
      ...contactLines(state, desk),
      ...(triage === null
        ? []
        : [
            ...causeLines(triage, desk.knowledge),
            ...byChatLines(state, triage),
            ...planLines(triage.plan, PLAN_ON_SLIP, desk),
            ...kitLines(triage, state, desk),
          ]),
      ...statusLines(state, desk),
    ],
    buttons: slipButtons(state),
  };
}

interface Reader {
  readonly key: string;
  readonly chat: string;
  readonly language: string;
  readonly topic?: number;
}

/** Who reads slips: the counter's group, or each dispatcher privately. */
export function slipReaders(desk: Desk): Reader[] {
  if (desk.counter !== undefined) {
    const language = desk.shop.languages[0] ?? "en";
    return [{ key: "counter", language, ...desk.counter }];
  }
  return desk.members
    .filter((member) => member.role !== "technician")
    .map((member) => ({ key: member.person, chat: member.chat, language: member.language }));
}

/** Shows the case at the counter, in place where its slip already stands. */
export function slipEffects(state: CaseState, desk: Desk): PlannedEffect[] {
  const message = slipMessage(state, desk);
  // Dangers are told in messages of their own; a slip wakes nobody.
  const quiet = isQuietAt(desk.now, desk.shop.timeZone, desk.shop.quietHours);
  return slipReaders(desk).map((reader) => {
    const shown = revise(reader, message, slipSlot(reader.key));
    return quiet ? quietly(shown) : shown;
  });
}
