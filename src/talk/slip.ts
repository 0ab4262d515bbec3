import type { CaseState } from "../domain/case-state.ts";
import type { Button, Line, Message, Phrase, PlannedEffect } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { RankedCause, Triage } from "../domain/triage.ts";
import { ON_START } from "../domain/vocabulary.ts";
import { shownChance } from "./chance.ts";
import { stateLabel } from "./choices.ts";
import { button, line, phrase, revise } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { plainState } from "./place.ts";
import { planLines } from "./plan-lines.ts";
import { reasonLines } from "./reasons.ts";

const CAUSES_ON_SLIP = 4;
const PLAN_ON_SLIP = { steps: 5, turnings: 1 };
const PARTS_ON_SLIP = 6;

const know = (key: string): Phrase => ({ know: key });

/** The slot under which a case's slip stands at the counter, one for each reader. */
export const slipSlot = (reader: string): string => `slip-${reader}`;

function headLines(state: CaseState): Line[] {
  const kind = know(wordKey("machine", state.machine.kind ?? "other"));
  const fuel: Phrase =
    state.machine.fuel === undefined
      ? phrase("fuel-unknown")
      : phrase(`fuel-${state.machine.fuel}`);
  const who = state.operator.name === "" ? phrase("nobody-named") : { raw: state.operator.name };
  const title = line(
    phrase("slip-title", { number: state.id, machine: { phrase: kind }, fuel: { phrase: fuel } }),
    "heading",
  );
  return [title, line(phrase("slip-who", { who: { phrase: who } }))];
}

function complaintLines(state: CaseState): Line[] {
  const symptom = plainState(state, ON_START);
  const what = symptom === null ? phrase("symptom-unknown") : stateLabel(ON_START, symptom);
  const said = state.words[0];
  return [
    line(phrase("slip-complaint", { what: { phrase: what } })),
    ...(said === undefined ? [] : [line({ raw: said }, "quote")]),
  ];
}

function urgentLines(state: CaseState): Line[] {
  const flags = state.flags.map((flag) =>
    line(
      phrase(flag.seenBy === null ? "slip-flag-unseen" : "slip-flag-seen", {
        flag: { know: wordKey("flag", flag.flag) },
      }),
      "caution",
    ),
  );
  const urgency =
    state.urgency === null
      ? []
      : [line(phrase("slip-urgency", { urgency: { phrase: phrase(`urgency-${state.urgency}`) } }))];
  const wanted = state.personWanted ? [line(phrase("slip-person-wanted"), "caution")] : [];
  return [...flags, ...wanted, ...urgency];
}

function contactLines(state: CaseState): Line[] {
  const place = state.where?.words ?? null;
  const pin = state.where?.latitude !== undefined;
  return [
    ...(state.phone === null ? [] : [line(phrase("slip-phone", { phone: state.phone }))]),
    ...(place === null ? [] : [line(phrase("slip-place", { place }))]),
    ...(pin ? [line(phrase("slip-pin"))] : []),
    ...(state.files.length === 0
      ? []
      : [line(phrase("slip-files", { count: state.files.length }))]),
  ];
}

function causeLines(triage: Triage): Line[] {
  const { causes, somethingElse, nothingWrong } = triage.ranking;
  const shown = causes.slice(0, CAUSES_ON_SLIP).flatMap((cause: RankedCause) => [
    line(
      phrase("cause-line", {
        cause: { know: wordKey("fault", cause.fault) },
        chance: { quantity: shownChance(cause.probability), unit: "percent" },
      }),
      "step",
    ),
    ...reasonLines(cause, 2),
  ]);
  return [
    line(phrase("slip-causes"), "heading", true),
    ...shown,
    line(
      phrase("slip-rest", {
        else: { quantity: shownChance(somethingElse), unit: "percent" },
        nothing: { quantity: shownChance(nothingWrong), unit: "percent" },
      }),
    ),
  ];
}

/** What to load, with the chance of need, and what that covers. */
export function kitLines(triage: Triage): Line[] {
  const { kit } = triage;
  const parts = kit.items
    .filter((item) => item.carry)
    .slice(0, PARTS_ON_SLIP)
    .map((item) =>
      line(
        phrase("kit-part", {
          part: { know: wordKey("part", item.part) },
          chance: { quantity: shownChance(item.chance), unit: "percent" },
        }),
        "bullet",
      ),
    );
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

/** Who said that they look after it, so that two do not. */
function lookingLines(state: CaseState, desk: Desk): Line[] {
  const who = desk.members.find((member) => member.person === state.shopSaw);
  if (who === undefined || state.closed !== null) return [];
  return [line(phrase("slip-looked-after", { who: who.name }), undefined, true)];
}

function statusLine(state: CaseState, desk: Desk): Line {
  if (state.closed !== null) {
    const { cause } = state.closed;
    // A technician may have named it in words of their own.
    const known = desk.knowledge.faults.has(cause);
    const what = known ? { know: wordKey("fault", cause) } : cause;
    if (cause === "") return line(phrase("slip-called-off"), "heading", true);
    return line(phrase("slip-closed", { cause: what }), "heading", true);
  }
  if (state.technician !== null) {
    const key = state.visit === "started" ? "slip-on-site" : "slip-assigned";
    return line(phrase(key, { technician: state.technician.name }), "heading", true);
  }
  const running = state.interview === "ended" ? "slip-waiting" : "slip-interview";
  return line(phrase(running), "heading", true);
}

function slipButtons(state: CaseState): (readonly Button[])[] {
  const press = (act: string, value?: string) => ({
    case: state.id,
    revision: 0,
    act,
    ...(value === undefined ? {} : { value }),
  });
  if (state.closed !== null) return [];
  const unseen = state.flags.filter((flag) => flag.seenBy === null);
  const seen = unseen.map((flag) => button(phrase("press-seen"), press("seen", flag.flag)));
  const noticed = state.shopSaw === null ? [button(phrase("press-noticed"), press("noticed"))] : [];
  const hand =
    state.technician === null
      ? [button(phrase("press-hand-over"), press("hand-over"))]
      : [button(phrase("press-take-back"), press("take-back"))];
  return [...seen, ...noticed, ...hand, button(phrase("press-files"), press("files"))];
}

/** A case on one page for the person who decides what happens with it. */
export function slipMessage(state: CaseState, desk: Desk): Message {
  const known = state.answers.length > 0;
  const triage = known ? desk.triage(state, "technician") : null;
  return {
    lines: [
      ...headLines(state),
      ...urgentLines(state),
      ...complaintLines(state),
      ...contactLines(state),
      ...(triage === null
        ? []
        : [
            ...causeLines(triage),
            ...planLines(triage.plan, PLAN_ON_SLIP, desk),
            ...kitLines(triage),
          ]),
      ...lookingLines(state, desk),
      statusLine(state, desk),
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
  return slipReaders(desk).map((reader) => revise(reader, message, slipSlot(reader.key)));
}
