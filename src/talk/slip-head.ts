import type { CaseState } from "../domain/case-state.ts";
import type { Line, Phrase } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import { ON_START } from "../domain/vocabulary.ts";
import { stateLabel } from "./choices.ts";
import { cutWords } from "./cut-words.ts";
import { line, phrase } from "./decision.ts";
import { DAY, type Desk } from "./desk.ts";
import { byRoad, placeKnown } from "./distance.ts";
import { plainState } from "./place.ts";
import { momentIn, urgencyFacts } from "./urgency.ts";

/** A call that nobody took for this long is worth saying so, ms. */
const WAITED_LONG = DAY;

/** A person's own words on a slip, UTF-16 units: their first sentences. */
export const MOST_WORDS = 280;

export function headLines(state: CaseState): Line[] {
  const kind: Phrase = { know: wordKey("machine", state.machine.kind ?? "other") };
  const { fuel } = state.machine;
  const fuelWords = fuel === undefined ? phrase("fuel-unknown") : phrase(`fuel-${fuel}`);
  const who = state.operator.name === "" ? phrase("nobody-named") : { raw: state.operator.name };
  const title = phrase("slip-title", {
    number: state.id,
    machine: { phrase: kind },
    fuel: { phrase: fuelWords },
  });
  return [line(title, "heading"), line(phrase("slip-who", { who: { phrase: who } }))];
}

export function complaintLines(state: CaseState): Line[] {
  const symptom = plainState(state, ON_START);
  const what = symptom === null ? phrase("symptom-unknown") : stateLabel(ON_START, symptom);
  const said = state.words[0];
  return [
    line(phrase("slip-complaint", { what: { phrase: what } })),
    ...(said === undefined ? [] : [line({ raw: cutWords(said, MOST_WORDS) }, "quote")]),
  ];
}

/** The level by the shop's rules with each reason; without rules what the caller said. */
function levelLines(state: CaseState, desk: Desk): Line[] {
  const said = (level: string) =>
    line(phrase("slip-urgency", { urgency: { phrase: phrase(`urgency-${level}`) } }));
  if (desk.urgency === undefined || state.closed !== null) {
    return state.urgency === null ? [] : [said(state.urgency)];
  }
  const call = { ...state, openedAt: state.opened.at };
  const moment = momentIn(desk.shop.timeZone, desk.now);
  const { level, reasons } = desk.urgency(urgencyFacts(call, moment));
  const points = reasons.map(({ rule, points: count }) =>
    line(
      phrase("slip-urgency-reason", {
        because: { know: wordKey("rule", rule) },
        sign: count < 0 ? "−" : "+",
        points: Math.abs(count),
      }),
      "bullet",
    ),
  );
  return [said(level), ...points];
}

/** How urgent it is, each point of it with its reason. */
export function urgentLines(state: CaseState, desk: Desk): Line[] {
  const flags = state.flags.map((flag) =>
    line(
      phrase(flag.seenBy === null ? "slip-flag-unseen" : "slip-flag-seen", {
        flag: { know: wordKey("flag", flag.flag) },
      }),
      "caution",
    ),
  );
  const words =
    state.urgencyWords === null
      ? []
      : [line({ raw: cutWords(state.urgencyWords, MOST_WORDS) }, "quote")];
  const wanted = state.personWanted ? [line(phrase("slip-person-wanted"), "caution")] : [];
  const idle = state.technician === null && state.closed === null;
  const since = { time: state.opened.at, style: "day-hour" } as const;
  const waited =
    idle && desk.now - state.opened.at > WAITED_LONG
      ? [line(phrase("slip-waited", { since }))]
      : [];
  return [...flags, ...wanted, ...levelLines(state, desk), ...words, ...waited];
}

function distanceLines(state: CaseState, desk: Desk): Line[] {
  const there = placeKnown(state.where);
  if (there === null) return [];
  const { place } = desk.shop;
  if (place === undefined) return [line(phrase("slip-pin"))];
  const { km, minutes } = byRoad(place, there, desk.shop);
  const words = phrase("slip-distance", {
    km: { quantity: km, unit: "km", digits: 0 },
    minutes: { quantity: minutes, unit: "min", digits: 0 },
  });
  return [line(words)];
}

/** Who can be reached how, where the machine stands, what was sent, who pays. */
export function contactLines(state: CaseState, desk: Desk): Line[] {
  const place = state.where?.words;
  const { payment, files } = state;
  const photos = files.filter((one) => one.file.kind === "photo" && one.from === "operator").length;
  return [
    ...(state.phone === null ? [] : [line(phrase("slip-phone", { phone: state.phone }))]),
    ...(place === undefined
      ? []
      : [line(phrase("slip-place", { place: cutWords(place, MOST_WORDS) }))]),
    ...distanceLines(state, desk),
    ...(files.length === 0 ? [] : [line(phrase("slip-files", { count: files.length, photos }))]),
    ...(payment === null
      ? []
      : [
          line(
            phrase(payment.agreed ? "slip-pays-agreed" : "slip-pays", {
              payer: { phrase: phrase(`payer-${payment.payer}`) },
            }),
          ),
        ]),
  ];
}
