import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import { advance } from "./advance.ts";
import { button, type Decision, line, phrase, revise, say, together } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import { repeatOpen } from "./more-menu.ts";
import { proceed, silenceOpen } from "./proceed.ts";
import { slipEffects, slipReaders } from "./slip.ts";
import { complaintOf } from "./solved.ts";

interface Given {
  readonly heard: Heard;
  readonly desk: Desk;
}

/** It started again by itself: closed without a cause, for nobody knows what it was. */
export function runsAgain(state: CaseState, given: Given): Decision {
  const closed: CaseHappening = {
    type: "case.closed",
    end: "nothing-found",
    complaint: complaintOf(state),
    cause: "",
    correction: "",
  };
  const after = advance(state, [closed], given.heard);
  const press = { case: state.id, revision: state.revision, act: "reopen" };
  const message = {
    lines: [line(phrase("runs-again", { number: state.id }))],
    buttons: [button(phrase("answer-open-again"), press)],
    endOffer: true,
  };
  const told = state.shopTold ? slipEffects(after, given.desk) : [];
  const said = say(state.operator, message, "ending");
  return { happenings: [closed], effects: [...silenceOpen(state), said, ...told] };
}

/** Days after the end the machine still runs. */
export function staysFine(state: CaseState): Decision {
  const thanks = { lines: [line(phrase("still-fine-thanks"))] };
  const effects = [revise(state.operator, thanks, "aftermath")];
  const told: CaseHappening = { type: "aftermath.told", fine: true };
  return { happenings: state.aftermath === "asked" ? [told] : [], effects };
}

/** The trouble is back: the case opens again, and the shop hears of it at once. */
export function cameBack(state: CaseState, given: Given): Decision {
  if (state.closed === null) return repeatOpen(state, phrase("here-we-are"), given);
  const { desk } = given;
  const happenings: CaseHappening[] = [
    { type: "aftermath.told", fine: false },
    { type: "case.reopened" },
    ...(state.shopTold ? [] : [{ type: "shop.told" } as const]),
  ];
  const said = phrase("came-back-told", { number: state.id, shop: desk.shop.name });
  const news = { lines: [line(phrase("came-back-for-shop", { number: state.id }), "caution")] };
  const told = slipReaders(desk).map((reader) => say(reader, news));
  const sorry = revise(state.operator, { lines: [line(said)] }, "aftermath");
  return together(
    { happenings: [], effects: [sorry, ...told] },
    proceed(state, { happenings, before: [] }, given),
  );
}
