import type { KnownMachine } from "../domain/case-events.ts";
import type { Noting } from "../domain/documents.ts";
import type { Message } from "../domain/effects.ts";
import type { Incoming } from "../domain/incoming.ts";
import { line, phrase } from "../talk/decision.ts";
import type { Desk } from "../talk/desk.ts";
import {
  askToWrite,
  changedMachine,
  machineMessage,
  machinesMessage,
  writtenMachine,
} from "../talk/own-machines.ts";
import type { Directory } from "./directory.ts";
import type { Received } from "./ports.ts";

/** Somebody who was asked and went on to something else does not mean their next words for it. */
const ASKED_FOR_MS = 10 * 60 * 1000;

interface Change {
  readonly machines?: readonly KnownMachine[];
  readonly noting?: Noting | null;
}

export interface OwnMachinesParts {
  readonly directory: Directory;
  readonly desk: () => Desk;
  /** Says this to them and keeps what changed of them, in one commit. */
  readonly answer: (incoming: Incoming, message: Message, change: Change) => Promise<Received>;
}

/** The machines that are kept for a person: looked at, put right, taken off the list. */
export function createOwnMachines({ directory, desk, answer }: OwnMachinesParts) {
  const ownOf = (incoming: Incoming) => directory.person(incoming.from.id)?.machines ?? [];

  /** Numbers of the cases this machine had, the newest first. */
  function pastOf(incoming: Incoming, id: string): string[] {
    return directory
      .cases({ operator: incoming.from.id })
      .filter((one) => one.profile === id || one.id === id)
      .map((one) => one.id);
  }

  const look = (incoming: Incoming, machine: KnownMachine): Message =>
    machineMessage(machine, pastOf(incoming, machine.id), desk().knowledge);

  function keep(incoming: Incoming, changed: KnownMachine): Promise<Received> {
    const machines = ownOf(incoming).map((one) => (one.id === changed.id ? changed : one));
    return answer(incoming, look(incoming, changed), { machines, noting: null });
  }

  return {
    list: (incoming: Incoming) =>
      answer(incoming, machinesMessage(ownOf(incoming)), { noting: null }),

    /** @param value a machine's id, or that and what to change of it, parted by colons */
    pressed(value: string, incoming: Incoming): Promise<Received> {
      const [id = "", about = "", to = ""] = value.split(":");
      const machine = ownOf(incoming).find((one) => one.id === id);
      if (machine === undefined) {
        return answer(incoming, { lines: [line(phrase("own-machine-gone"))] }, {});
      }
      if (about === "title" || about === "serial") {
        const noting = { machine: id, about, at: incoming.sentAt } as const;
        return answer(incoming, askToWrite(about), { noting });
      }
      if (about === "out") {
        const machines = ownOf(incoming).filter((one) => one.id !== id);
        return answer(incoming, machinesMessage(machines), { machines, noting: null });
      }
      const changed = changedMachine(machine, about, to);
      return changed === null
        ? answer(incoming, look(incoming, machine), {})
        : keep(incoming, changed);
    },

    /** Takes words that were asked for a machine; null where none were. */
    written(text: string, incoming: Incoming): Promise<Received> | null {
      const noting = directory.person(incoming.from.id)?.noting ?? null;
      if (noting === null || incoming.sentAt - noting.at > ASKED_FOR_MS) return null;
      const machine = ownOf(incoming).find((one) => one.id === noting.machine);
      if (machine === undefined || text.trim() === "") return null;
      return keep(incoming, writtenMachine(machine, noting.about, text));
    },
  };
}
