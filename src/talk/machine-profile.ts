import type { CaseHappening, KnownMachine } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Message } from "../domain/effects.ts";
import type { MachineFacts } from "../domain/evidence.ts";
import { MachineKindId } from "../domain/vocabulary.ts";
import { advance } from "./advance.ts";
import { choicesFor, DONT_KNOW, LEADS_TO } from "./choices.ts";
import { back, type Given, withSlip } from "./counter-given.ts";
import { button, type Decision, line, phrase, say, together } from "./decision.ts";
import { machineOf } from "./desk.ts";
import { changedMachine, profileMessage, writtenMachine } from "./own-machines.ts";

/** What the counter writes down about a machine. */
export type Written = "title" | "serial";

/** The case's machine as it is kept with its owner. */
function machineIn(state: CaseState): KnownMachine {
  const facts = machineOf(state);
  return { id: state.profile ?? state.id, title: facts.words ?? "", facts };
}

const pressFor = (state: CaseState) => (value: string) => ({
  ...{ case: state.id, revision: 0, act: "machine", value },
});

function page(state: CaseState, given: Given): Message {
  const { knowledge } = given.desk;
  const press = pressFor(state);
  const { lines, buttons } = profileMessage(machineIn(state), { past: [], knowledge, press });
  return { lines, buttons: [button(phrase("own-machine-kind"), press("kind")), ...buttons] };
}

/** The kinds of machines, in the steps in which an operator is asked for them. */
function kinds(state: CaseState, family: string | undefined, given: Given): Message {
  const asking = { about: "kind", ...(family === undefined ? {} : { family }) } as const;
  const offered = choicesFor(asking, state, given.desk.knowledge);
  const buttons = offered
    .filter(({ value }) => value !== DONT_KNOW)
    .map(({ value, label }) => button(label, pressFor(state)(`kind:${value}`)));
  return { lines: [line(phrase("ask-kind"), "heading")], buttons };
}

const show = (message: Message, given: Given): Decision => ({
  happenings: [],
  effects: [say(back(given), message)],
});

/** The facts go into the case, from there to the machine that is kept with its owner. */
function describe(state: CaseState, facts: Partial<MachineFacts>, given: Given): Decision {
  const happenings: CaseHappening[] = [
    { type: "machine.described", facts },
    ...(state.prompt === null ? [] : [{ type: "counter.left" } as const]),
  ];
  const after = advance(state, happenings, given.heard);
  return together(withSlip(state, happenings, given), show(page(after, given), given));
}

/**
 * The counter looks at a case's machine and puts it right: kind, fuel, volts; name and serial number
 * are asked for in words.
 * @param value nothing: the machine's page; else what to change, and to what, parted by a colon
 */
export function machineAct(state: CaseState, value: string, given: Given): Decision {
  const [about = "", to = ""] = value.split(":");
  if (about === "title" || about === "serial") {
    const key = about === "title" ? "own-machine-write-name" : "own-machine-write-plate";
    const leave = { case: state.id, revision: 0, act: "leave" };
    const buttons = [button(phrase("press-leave"), leave)];
    const asked = show({ lines: [line(phrase(key))], buttons }, given);
    return { ...asked, happenings: [{ type: "counter.prompted", about }] };
  }
  if (about === "kind") {
    const kind = MachineKindId.safeParse(to);
    if (kind.success) return describe(state, { kind: kind.data }, given);
    const family = to.startsWith(LEADS_TO) ? to.slice(LEADS_TO.length) : undefined;
    return show(kinds(state, family, given), given);
  }
  const machine = machineIn(state);
  const changed = changedMachine(machine, about, to);
  if (changed === null) return show(page(state, given), given);
  const { fuel, volts } = changed.facts;
  const facts = {
    ...(about === "fuel" && fuel !== undefined ? { fuel } : {}),
    ...(about === "volts" && volts !== undefined ? { volts } : {}),
  };
  return describe(state, facts, given);
}

/** What the dispatcher wrote after being asked for the machine's name or serial number. */
export function machineWritten(
  state: CaseState,
  { about, text }: { readonly about: Written; readonly text: string },
  given: Given,
): Decision {
  const { words, serial } = writtenMachine(machineIn(state), about, text).facts;
  const facts = {
    ...(about === "title" && words !== undefined ? { words } : {}),
    ...(about === "serial" && serial !== undefined ? { serial } : {}),
  };
  return describe(state, facts, given);
}
