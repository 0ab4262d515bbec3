import { chanceHolds } from "../diagnosis/machine-condition.ts";
import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line, Message } from "../domain/effects.ts";
import type { Report } from "../domain/evidence.ts";
import { type Check, type Observation, wordKey } from "../domain/knowledge.ts";
import { raiseAlarm } from "./alarm.ts";
import { saidOf } from "./answer.ts";
import { stateLabel } from "./choices.ts";
import { back, type Given, saying, withSlip } from "./counter-given.ts";
import { button, type Decision, line, nothingToDo, phrase, say } from "./decision.ts";
import { type Desk, machineOf } from "./desk.ts";

/** Things to mark that are shown first; the others come behind "Something else". */
const SHOWN_FIRST = 7;
/** Less likely than this the machine does not have what could be seen. */
const LEAST_CHANCE = 0.05;
/** Values of the second step that are no observation. */
const OTHERS = "+";
const DANGER = "!";

type Kept = CaseState["files"][number];

/** Pictures, sent as a photo or as a file: what something can be seen on. */
const isPicture = ({ file }: Kept) =>
  file.kind === "photo" || (file.kind === "document" && file.mime?.startsWith("image/") === true);

/** How much of the belief rests on causes that this observation speaks about, in [0, 1]. */
function bearing(observation: string, state: CaseState, desk: Desk): number {
  const { causes } = desk.triage(state, "technician").ranking;
  return causes
    .filter(({ fault }) => desk.knowledge.faults.get(fault)?.rows.has(observation) === true)
    .reduce((sum, { probability }) => sum + probability, 0);
}

/** What can be seen on a photo of this machine, what bears most on its causes first. */
export function markable(state: CaseState, desk: Desk): readonly Observation[] {
  const { checks, observations, machines } = desk.knowledge;
  const facts = machineOf(state);
  const kind = machines.get(facts.kind);
  const fits = (check: Check) =>
    check.photo && chanceHolds(check.needs, facts, kind, 1) > LEAST_CHANCE;
  const ids = new Set([...checks.values()].filter(fits).map((check) => check.yields));
  return [...ids]
    .flatMap((id) => observations.get(id) ?? [])
    .filter(({ kind: sort }) => sort !== "text")
    .map((observation) => ({ observation, weight: bearing(observation.id, state, desk) }))
    .sort((a, b) => b.weight - a.weight)
    .map(({ observation }) => observation);
}

const pressFor = (state: CaseState, index: number) => (rest: string) => ({
  case: state.id,
  revision: 0,
  act: "mark",
  value: `${index}${rest}`,
});

const marksOf = ({ marks = [] }: Kept): Line[] =>
  marks.map(({ observation, state }) =>
    line(
      phrase("named-value", {
        name: { know: wordKey("observation", observation) },
        value: { know: wordKey("state", `${observation}.${state}`) },
      }),
      "bullet",
    ),
  );

/** The case's photos and files for the counter; what each photo shows can be marked under it. */
export function filesToMark(state: CaseState, given: Given): Decision {
  if (state.files.length === 0) return { ...nothingToDo, toast: phrase("no-files") };
  const effects = state.files.map((kept, index) => {
    const { file, caption } = kept;
    const words = caption === undefined ? [] : [line({ raw: caption }, "quote")];
    const mark = button(phrase("press-mark"), pressFor(state, index)(""));
    const buttons = isPicture(kept) && state.closed === null ? { buttons: [mark] } : {};
    return say(back(given), { lines: [...words, ...marksOf(kept)], file, ...buttons });
  });
  return { happenings: [], effects };
}

function whatMessage(state: CaseState, index: number, all: boolean, desk: Desk): Message {
  const press = pressFor(state, index);
  const found = markable(state, desk);
  const shown = all ? found.slice(SHOWN_FIRST) : found.slice(0, SHOWN_FIRST);
  const things = shown.map(({ id }) =>
    button({ know: wordKey("observation", id) }, press(`:${id}`)),
  );
  const rest = all || found.length <= SHOWN_FIRST;
  const others = rest ? [] : [button(phrase("press-mark-else"), press(`:${OTHERS}`))];
  const danger = button(phrase("press-mark-danger"), press(`:${DANGER}`));
  return { lines: [line(phrase("mark-what"), "heading")], buttons: [...things, ...others, danger] };
}

function dangerMessage(state: CaseState, index: number, desk: Desk): Message {
  const press = pressFor(state, index);
  const flags = [...desk.knowledge.redFlags.keys()].map((id) =>
    button({ know: wordKey("flag", id) }, press(`:${DANGER}:${id}`)),
  );
  return { lines: [line(phrase("mark-danger"), "heading")], buttons: flags };
}

function statesMessage(state: CaseState, index: number, observation: Observation): Message {
  const { id } = observation;
  const press = pressFor(state, index);
  const name = { know: wordKey("observation", id) };
  return {
    lines: [line(phrase("mark-how", { what: name }), "heading")],
    buttons: observation.states.map((one) =>
      button(stateLabel(id, one.id), press(`:${id}:${one.id}`)),
    ),
  };
}

/** What the photo shows is evidence of its own, as sure as photos are; it was so when it came. */
function marked(kept: Kept, observation: Observation, shows: string): CaseHappening[] {
  const { id } = observation;
  const report: Report = {
    observation: id,
    epoch: kept.epoch,
    reporter: "photo",
    hedge: 0,
    said: saidOf(observation, shows),
  };
  return [
    { type: "answer.given", report },
    { type: "photo.marked", file: kept.file.id, observation: id, state: shows },
  ];
}

function markDanger(state: CaseState, flag: string, given: Given): Decision {
  if (!given.desk.knowledge.redFlags.has(flag)) return nothingToDo;
  if (state.flags.some((one) => one.flag === flag && state.safety === "not-clear")) {
    return { ...nothingToDo, toast: phrase("seen-already") };
  }
  // Whoever marks it has seen it.
  const happenings: CaseHappening[] = [
    { type: "flag.raised", flag },
    { type: "flag.seen", flag },
  ];
  return raiseAlarm(state, happenings, given);
}

/**
 * What a photo shows, in three steps: the photo, what of it, how it is. The value of the press
 * grows with them: `0`, `0:post-look`, `0:post-look:corroded`.
 */
export function markPhoto(state: CaseState, value: string, given: Given): Decision {
  const [place = "", what, how] = value.split(":");
  const index = Number(place);
  const kept = state.files[index];
  if (kept === undefined || !isPicture(kept)) return nothingToDo;
  const show = (message: Message): Decision => ({
    happenings: [],
    effects: [say(back(given), message)],
  });
  if (what === undefined || what === OTHERS) {
    return show(whatMessage(state, index, what === OTHERS, given.desk));
  }
  if (what === DANGER) {
    return how === undefined
      ? show(dangerMessage(state, index, given.desk))
      : markDanger(state, how, given);
  }
  const observation = given.desk.knowledge.observations.get(what);
  if (observation === undefined) return nothingToDo;
  if (how === undefined) return show(statesMessage(state, index, observation));
  if (!observation.states.some((one) => one.id === how)) return nothingToDo;
  return noteMark(state, { kept, index, observation, shows: how }, given);
}

function noteMark(
  state: CaseState,
  mark: { kept: Kept; index: number; observation: Observation; shows: string },
  given: Given,
): Decision {
  const { kept, index, observation, shows } = mark;
  const words = {
    number: state.id,
    what: { know: wordKey("observation", observation.id) },
    state: { phrase: stateLabel(observation.id, shows) },
  };
  const undo = { case: state.id, revision: 0, act: "unmark", value: `${index}:${observation.id}` };
  const message = {
    lines: [line(phrase("marked", words))],
    buttons: [button(phrase("press-unmark"), undo)],
  };
  const decision = withSlip(state, marked(kept, observation, shows), given);
  return { ...decision, effects: [say(back(given), message), ...decision.effects] };
}

/** Takes back what a photo was said to show. */
export function unmarkPhoto(state: CaseState, value: string, given: Given): Decision {
  const [place = "", observation = ""] = value.split(":");
  const kept = state.files[Number(place)];
  const stands = kept?.marks?.some((mark) => mark.observation === observation) === true;
  if (kept === undefined || !stands) return { ...nothingToDo, toast: phrase("nothing-before") };
  const { epoch, file } = kept;
  const happenings: CaseHappening[] = [
    { type: "answer.withdrawn", observation, epoch, reporter: "photo" },
    { type: "photo.marked", file: file.id, observation, state: "" },
  ];
  return saying([line(phrase("taken-back"))], withSlip(state, happenings, given), given);
}
