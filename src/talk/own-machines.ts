import type { KnownMachine } from "../domain/case-events.ts";
import type { Noting } from "../domain/documents.ts";
import type { Line, Message, Phrase, Press } from "../domain/effects.ts";
import { type Knowledge, wordKey } from "../domain/knowledge.ts";
import { Fuel } from "../domain/vocabulary.ts";
import { button, line, phrase } from "./decision.ts";

/** System voltages that machines of these kinds have. */
const VOLTS = [6, 12, 24] as const;
/** Longer than any plate or name, and short enough for a button. */
const MOST_WRITTEN = 40;

const press = (value: string) => ({ revision: 0, act: "own-machine", value });

/** A machine as its owner calls it, else by its kind. */
function nameOf({ title, facts }: KnownMachine): Phrase {
  return title === "" ? { know: wordKey("machine", facts.kind) } : { raw: title };
}

const volts = (value: number) => ({ quantity: value, unit: "V", digits: 0 }) as const;

/** The machines that are kept for a person. */
export function machinesMessage(machines: readonly KnownMachine[]): Message {
  const key = machines.length === 0 ? "own-machines-none" : "own-machines";
  return {
    lines: [line(phrase(key), "heading")],
    buttons: machines.map((machine) => button(nameOf(machine), press(machine.id))),
  };
}

function factLines({ facts }: KnownMachine, past: readonly string[]): Line[] {
  const { fuel, serial } = facts;
  return [
    line({ know: wordKey("machine", facts.kind) }),
    ...(fuel === undefined
      ? []
      : [line(phrase("own-machine-fuel", { fuel: { phrase: phrase(`fuel-${fuel}`) } }))]),
    ...(facts.volts === undefined
      ? []
      : [line(phrase("own-machine-volts", { volts: volts(facts.volts) }))]),
    ...(serial === undefined ? [] : [line(phrase("own-machine-serial", { serial }))]),
    ...(past.length === 0 ? [] : [line(phrase("own-machine-cases", { list: { list: past } }))]),
  ];
}

/** One machine: what is kept of it, and what can be changed. @param past numbers of its cases */
export function machineMessage(
  machine: KnownMachine,
  past: readonly string[],
  knowledge: Knowledge,
): Message {
  const { id } = machine;
  const { lines, buttons } = profileMessage(machine, {
    ...{ past, knowledge },
    press: (change) => press(`${id}:${change}`),
  });
  return { lines, buttons: [...buttons, button(phrase("own-machine-out"), press(`${id}:out`))] };
}

/** What is kept of a machine, and the buttons that change it. @param press for `fuel:diesel`, … */
export function profileMessage(
  machine: KnownMachine,
  {
    past,
    knowledge,
    press: pressFor,
  }: {
    readonly past: readonly string[];
    readonly knowledge: Knowledge;
    readonly press: (change: string) => Press;
  },
) {
  const { facts } = machine;
  const fuels = Object.keys(knowledge.machines.get(facts.kind)?.fuels ?? {});
  const otherFuels = fuels.filter((fuel) => fuels.length > 1 && fuel !== facts.fuel);
  return {
    lines: [line(nameOf(machine), "heading"), ...factLines(machine, past)],
    buttons: [
      button(phrase("own-machine-name"), pressFor("title")),
      button(phrase("own-machine-plate"), pressFor("serial")),
      ...otherFuels.map((fuel) =>
        button(
          phrase("own-machine-other-fuel", { fuel: { phrase: phrase(`fuel-${fuel}`) } }),
          pressFor(`fuel:${fuel}`),
        ),
      ),
      ...VOLTS.filter((one) => one !== facts.volts).map((one) =>
        button(phrase("own-machine-other-volts", { volts: volts(one) }), pressFor(`volts:${one}`)),
      ),
    ],
  };
}

/** What somebody changed by a button; null where it is nothing that can be. */
export function changedMachine(
  machine: KnownMachine,
  about: string,
  value: string,
): KnownMachine | null {
  const fuel = Fuel.safeParse(value);
  if (about === "fuel" && fuel.success) {
    return { ...machine, facts: { ...machine.facts, fuel: fuel.data } };
  }
  const voltage = VOLTS.find((one) => String(one) === value);
  return about === "volts" && voltage !== undefined
    ? { ...machine, facts: { ...machine.facts, volts: voltage } }
    : null;
}

/** What somebody wrote about a machine of theirs. */
export function writtenMachine(
  machine: KnownMachine,
  about: Noting["about"],
  text: string,
): KnownMachine {
  const written = text.replace(/\s+/g, " ").trim().slice(0, MOST_WRITTEN);
  if (about === "title") {
    return { ...machine, title: written, facts: { ...machine.facts, words: written } };
  }
  return { ...machine, facts: { ...machine.facts, serial: written } };
}

/** Asks for what has to be written. */
export const askToWrite = (about: Noting["about"]): Message => ({
  lines: [line(phrase(about === "title" ? "own-machine-write-name" : "own-machine-write-plate"))],
});
