import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { IncomingContent } from "../domain/incoming.ts";
import { advance } from "./advance.ts";
import { type Decision, keepEdited, line, nothingToDo, phrase, together } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import { takeFile } from "./files.ts";
import { repeatOpen } from "./more-menu.ts";
import { withLanguage } from "./operator-language.ts";
import { type Given, goOn, menuAct, press } from "./operator-press.ts";
import { openingLines, words } from "./operator-words.ts";
import { proceed } from "./proceed.ts";

function content(state: CaseState, what: IncomingContent, given: Given): Decision {
  const { desk } = given;
  switch (what.kind) {
    case "text":
      return words(state, what.text, given);
    case "press":
      return what.press === null ? nothingToDo : press(state, what.press, given);
    case "file":
      return takeFile(state, what, { ...given, opening: openingLines(state, desk) });
    case "location": {
      const { latitude, longitude } = what;
      const where: CaseHappening = { type: "where.told", latitude, longitude };
      const before = [...openingLines(state, desk), line(phrase("place-noted"))];
      return goOn(state, { happenings: [where], before }, given);
    }
    case "contact": {
      if (!what.own) return repeatOpen(state, phrase("contact-not-own"), given);
      const told: CaseHappening = { type: "phone.told", phone: what.phone };
      return goOn(state, { happenings: [told], before: [line(phrase("phone-noted"))] }, given);
    }
    case "command":
      return command(state, what.name, given);
    case "edited":
      return keepEdited(state.operator, { text: what.text, from: "operator" });
    case "reachable":
    case "moved":
      return nothingToDo;
    case "other":
      return repeatOpen(state, phrase("cannot-use-that"), given);
  }
}

/** Commands that are ways out of a question. */
const commandActs: ReadonlyMap<string, string> = new Map([
  ["start", "repeat"],
  ["person", "person"],
  ["back", "back"],
  ["stop", "stop"],
]);

function command(state: CaseState, name: string, given: Given): Decision {
  const act = commandActs.get(name);
  if (act !== undefined && (state.askedEver.length > 0 || act === "person")) {
    return menuAct(act, state, given) ?? nothingToDo;
  }
  if (name === "start") {
    return proceed(state, { happenings: [], before: openingLines(state, given.desk) }, given);
  }
  return repeatOpen(state, phrase("unknown-command"), given);
}

/** What this person told in an earlier case need not be asked again. */
function remembered(state: CaseState, desk: Desk): CaseHappening[] {
  const has = desk.remembered?.has ?? [];
  const isNew = state.askedEver.length === 0 && state.has === null;
  return isNew && has.length > 0 ? [{ type: "equipment.told", has }] : [];
}

/** Buttons that go on with the interview. */
const goesOn = new Set(["answer", "back", "withdraw", "return", "safe-now"]);

/** Whoever answers, or tells something, has ended their pause; words see to that themselves. */
function woken(state: CaseState, { what }: Heard["incoming"]): CaseHappening[] {
  if (state.interview !== "paused") return [];
  const wakes =
    what.kind === "press"
      ? what.press !== null && goesOn.has(what.press.act)
      : what.kind === "location" || what.kind === "contact";
  return wakes ? [{ type: "interview.resumed" }] : [];
}

/** One message, press or file from the operator of a case: what follows from it. */
export function operatorTurn(state: CaseState, heard: Heard, desk: Desk): Decision {
  const given = { heard, desk };
  const known = [...remembered(state, desk), ...woken(state, heard.incoming)];
  const decided = content(advance(state, known, heard), heard.incoming.what, given);
  const both = together({ happenings: known, effects: [] }, decided);
  return withLanguage(state, both, given);
}
