import type { CaseState } from "../domain/case-state.ts";
import type { Arg, Button, Line } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import { cutWords } from "./cut-words.ts";
import { button, line, phrase } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { untestedLines } from "./hand-back.ts";
import { MOST_WORDS } from "./slip-head.ts";

/** Who said that they look after it, so that two do not. */
function lookingLines(state: CaseState, desk: Desk): Line[] {
  const who = desk.members.find((member) => member.person === state.shopSaw);
  if (who === undefined || state.closed !== null) return [];
  return [line(phrase("slip-looked-after", { who: who.name }), undefined, true)];
}

function closedLine(state: CaseState, desk: Desk): Line {
  const { cause = "", end = "visit" } = state.closed ?? {};
  if (end !== "visit" && end !== "solved-by-chat" && end !== "called-off") {
    const how = { phrase: phrase(`end-${end}`) };
    return line(phrase("slip-ended", { how }), "heading", true);
  }
  if (cause === "") return line(phrase("slip-called-off"), "heading", true);
  // A technician may have named it in words of their own.
  const known = desk.knowledge.faults.has(cause);
  const what = known ? { know: wordKey("fault", cause) } : cause;
  return line(phrase("slip-closed", { cause: what }), "heading", true);
}

function statusLine(state: CaseState, desk: Desk): Line {
  if (state.closed !== null) return closedLine(state, desk);
  if (state.technician !== null) {
    const waiting = state.setOut ? "slip-set-out" : "slip-assigned";
    const key = state.visit === "started" ? "slip-on-site" : waiting;
    return line(phrase(key, { technician: state.technician.name }), "heading", true);
  }
  const running = state.interview === "ended" ? "slip-waiting" : "slip-interview";
  return line(phrase(running), "heading", true);
}

function missingWords(missing: string, desk: Desk): Arg {
  const isPart = desk.knowledge.parts.has(missing);
  return isPart ? { know: wordKey("part", missing) } : cutWords(missing, MOST_WORDS);
}

/** What is open about the case besides its cause: a question, a booking, what is missing. */
function openLines(state: CaseState, desk: Desk): Line[] {
  const { booked, askedBack } = state;
  const missing = state.cutShort.at(-1);
  return [
    ...(askedBack === null
      ? []
      : [line(phrase("slip-asked", { question: cutWords(askedBack.text, MOST_WORDS) }))]),
    ...(booked === null
      ? []
      : [
          line(
            phrase("slip-booked", {
              from: { time: booked.from, style: "day-hour" },
              until: { time: booked.until, style: "hour" },
            }),
          ),
        ]),
    ...(missing === undefined
      ? []
      : [line(phrase("slip-second-visit", { what: missingWords(missing, desk) }))]),
    ...state.tookIn.map((other) => line(phrase("slip-took-in", { other }))),
    ...untestedLines(state),
  ];
}

/** Where the case stands and with whom. */
export function statusLines(state: CaseState, desk: Desk): Line[] {
  return [...lookingLines(state, desk), ...openLines(state, desk), statusLine(state, desk)];
}

/** What can be done with the case at once; everything else is under "more". */
export function slipButtons(state: CaseState): (readonly Button[])[] {
  const press = (act: string, value?: string, revision = 0) => ({
    case: state.id,
    revision,
    act,
    ...(value === undefined ? {} : { value }),
  });
  const files = button(phrase("press-files"), press("files"));
  const more = button(phrase("press-acts"), press("acts"));
  if (state.closed !== null) return [button(phrase("press-reopen"), press("open-again")), more];
  const unseen = state.flags.filter((flag) => flag.seenBy === null);
  const seen = unseen.map((flag) => button(phrase("press-seen"), press("seen", flag.flag)));
  const noticed = state.shopSaw === null ? [button(phrase("press-noticed"), press("noticed"))] : [];
  const hand =
    state.technician === null
      ? button(phrase("press-hand-over"), press("hand-over", undefined, state.hands))
      : button(phrase("press-take-back"), press("take-back", undefined, state.hands));
  return [...seen, ...noticed, hand, files, more];
}
