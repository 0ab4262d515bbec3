import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Press } from "../domain/effects.ts";
import { lastStep } from "../domain/undo-step.ts";
import { advance } from "./advance.ts";
import { takeAnswer } from "./answer.ts";
import { filesTo } from "./counter-turn.ts";
import { type Decision, keepEdited, line, nothingToDo, phrase, revise, say } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import { paperTo } from "./job-sheet.ts";
import { takeReadingOf, whichReading } from "./late-reading.ts";
import { pictureTo } from "./pictures.ts";
import { probesTold } from "./probes.ts";
import { may } from "./rights.ts";
import { slipEffects } from "./slip.ts";
import { matchTyped } from "./typed.ts";
import { factsIn } from "./understand.ts";
import { actCured, confirmCause, remedyResult } from "./visit-close.ts";
import { couldNotTest, cutShort, handBackResult, ran } from "./visit-end.ts";
import { type Given, goOn, nobody, put, repeatStep, technicianOf } from "./visit-proceed.ts";
import { changeRecord } from "./visit-record.ts";
import { sheetEffects } from "./visit-sheet.ts";
import { typedChoice } from "./visit-step.ts";

function result(state: CaseState, value: string, given: Given): Decision {
  const open = state.open.technician;
  if (open === null) return goOn(state, [], given);
  const { asking } = open;
  if (asking.about === "ran") return ran(state, value, given);
  if (asking.about === "hand-back") return handBackResult(state, asking, value, given);
  if (asking.about === "missing") return cutShort(state, value, given);
  if (asking.about === "remedy") {
    return value === "-" ? skip(state, given) : remedyResult(state, asking.remedy, value, given);
  }
  const taken = takeAnswer(asking, value, {
    state,
    knowledge: given.desk.knowledge,
    reporter: "technician",
  });
  if (taken === null) return nothingToDo;
  if (taken.leadsTo !== undefined) return put(state, taken.leadsTo, [], given.desk);
  const passed = taken.happenings.some((one) => one.type === "question.passed");
  if (passed) return skip(state, given);
  return actCured(state, taken.happenings, given) ?? goOn(state, taken.happenings, given);
}

function skip(state: CaseState, given: Given): Decision {
  const asking = state.open.technician?.asking;
  const step =
    asking?.about === "check"
      ? asking.check
      : asking?.about === "act"
        ? asking.act
        : asking?.about === "remedy"
          ? asking.remedy
          : null;
  if (step === null) return goOn(state, [], given);
  return goOn(state, [{ type: "step.skipped", step }], given);
}

/** Takes the technician's newest step back, whatever it was, and puts the next one anew. */
function undo(state: CaseState, given: Given): Decision {
  const of = lastStep(state);
  if (of === null) return { ...nothingToDo, toast: phrase("nothing-before") };
  return goOn(state, [{ type: "step.undone", of }], given);
}

/** The technician sets out: the operator is told, and the counter sees it. */
function setOut(state: CaseState, { heard, desk }: Given): Decision {
  if (state.setOut || state.visit === "started") return nothingToDo;
  const happenings: CaseHappening[] = [{ type: "visit.set-out" }];
  const after = advance(state, happenings, heard);
  const technician = state.technician?.name ?? "";
  const told = phrase("operator-on-the-way", { technician, shop: desk.shop.name });
  const toOperator =
    state.operator.chat === "" ? [] : [say(state.operator, { lines: [line(told)] })];
  const effects = [...toOperator, ...sheetEffects(after, desk), ...slipEffects(after, desk)];
  return { happenings, effects, toast: phrase("told-operator") };
}

const plainActs: Readonly<Record<string, (state: CaseState, given: Given) => Decision>> = {
  begin: (state, given) =>
    goOn(state, state.visit === "started" ? [] : [{ type: "visit.started" }], given),
  "set-out": setOut,
  "skip-step": skip,
  found: (state, given) => put(state, { about: "cause" }, [], given.desk),
  short: (state, given) => put(state, { about: "missing" }, [], given.desk),
  undo,
  sheet: (state, given) => ({ happenings: [], effects: sheetEffects(state, given.desk) }),
  paper: (state, given) => paperTo(technicianOf(state), state, given.desk),
  causes: (state, { desk }) => pictureTo(technicianOf(state), "causes", { state, desk }),
  circuit: (state, { desk }) => pictureTo(technicianOf(state), "circuit", { state, desk }),
  files: (state) => filesTo(technicianOf(state), state),
};

/** What may still be looked at when the case is closed. */
const afterwards = new Set(["sheet", "files", "record", "paper", "causes", "circuit"]);

function pressed(state: CaseState, press: Press, given: Given): Decision {
  if (state.closed !== null && !afterwards.has(press.act)) {
    return { ...nothingToDo, toast: phrase("case-is-closed") };
  }
  const stepwise = press.act === "result" || press.act === "cause" || press.act === "skip-step";
  if (stepwise && press.revision !== state.open.technician?.revision) {
    return { ...repeatStep(state, given), toast: phrase("step-is-closed") };
  }
  if (press.act === "result") return result(state, press.value ?? "", given);
  if (press.act === "probes") {
    const told = probesTold(state, press.value ?? "");
    if (told === null) return nothingToDo;
    return { ...goOn(state, [told], given), toast: phrase("probes-noted") };
  }
  if (press.act === "reading-of") return takeReadingOf(state, press.value ?? "", given);
  if (press.act === "record") return changeRecord(state, press.value ?? "", given);
  if (press.act === "cause") return confirmCause(state, press.value ?? "", given);
  return plainActs[press.act]?.(state, given) ?? nothingToDo;
}

function words(state: CaseState, text: string, given: Given): Decision {
  const { heard, desk } = given;
  const open = state.open.technician;
  if (open?.asking.about === "cause-words") {
    const confirmed: CaseHappening = {
      type: "cause.confirmed",
      faults: [],
      how: "measured",
      words: text,
    };
    const after = advance(state, [confirmed], heard);
    const asked = put(after, { about: "ran" }, [], desk);
    return { happenings: [confirmed, ...asked.happenings], effects: asked.effects };
  }
  if (open?.asking.about === "missing") return cutShort(state, text, given);
  if (open?.asking.about === "hand-back-why") return couldNotTest(state, open.asking, text, given);
  const typed =
    open === null
      ? null
      : (typedChoice(open.asking, text, { state, desk }) ??
        matchTyped(open.asking, text, { state, desk }));
  const late = whichReading(state, text, { ...given, isChoice: typed !== null });
  if (late !== null) return late;
  if (typed !== null) return result(state, typed, given);
  const facts =
    heard.reading === null
      ? []
      : factsIn(heard.reading, { state, knowledge: desk.knowledge, reporter: "technician" });
  const answers = facts.filter((fact) => fact.type === "answer.given");
  if (answers.length > 0) return goOn(state, answers, given);
  const odd = heard.reading?.implausible[0];
  if (odd !== undefined) {
    const why = phrase("implausible", {
      value: `${odd.value} ${odd.unit}`,
      low: odd.range[0],
      high: odd.range[1],
      unit: odd.unit,
    });
    return { happenings: [], effects: [say(technicianOf(state), { lines: [line(why)] })] };
  }
  const note: CaseHappening = { type: "note.added", text, from: "technician" };
  const kept = say(technicianOf(state), {
    lines: [line(phrase("note-kept", { number: state.id }))],
  });
  return { happenings: [note], effects: [kept] };
}

/** A press is refused where it was made; whoever writes gets an answer in words. */
function refused(state: CaseState, { incoming }: Heard, { shop }: Desk): Decision {
  if (incoming.what.kind === "press") return { ...nothingToDo, toast: phrase("not-allowed") };
  const had = state.technician?.id === incoming.from.id ? state.technician : nobody;
  const lines = [line(phrase("no-member", { shop: shop.name, phone: shop.phone }))];
  return { happenings: [], effects: [say({ ...had, chat: incoming.chat }, { lines })] };
}

/** What the technician who has the case does with it. */
export function visitTurn(state: CaseState, heard: Heard, desk: Desk): Decision {
  const { id } = heard.incoming.from;
  const handed = state.technician?.id === id;
  // Whoever was taken out of the shop is a stranger at once, also to the cases they had.
  const belongs = desk.members.some((member) => member.person === id);
  const standing = handed && belongs ? "handed-technician" : "stranger";
  const { what } = heard.incoming;
  if (!may(standing, "visit")) return refused(state, heard, desk);
  const given = { heard, desk };
  if (what.kind === "press")
    return what.press === null ? nothingToDo : pressed(state, what.press, given);
  if (what.kind === "text") return words(state, what.text, given);
  if (what.kind === "edited") {
    return keepEdited(technicianOf(state), { text: what.text, from: "technician" });
  }
  if (what.kind !== "file") {
    const key = what.kind === "command" ? "unknown-command" : "cannot-use-that";
    const sorry = say(technicianOf(state), { lines: [line(phrase(key))] });
    return { happenings: [], effects: [sorry] };
  }
  const file: CaseHappening = {
    type: "file.received",
    file: what.file,
    from: "technician",
    ...(what.caption === undefined ? {} : { caption: what.caption }),
  };
  const slot = `visit-files-${state.id}`;
  const lines = [line(phrase("file-kept-with", { number: state.id }))];
  const kept = revise(technicianOf(state), { lines }, slot);
  const slips = slipEffects(advance(state, [file], heard), desk);
  return { happenings: [file], effects: [kept, ...slips] };
}
