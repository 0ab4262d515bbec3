import { partContacts } from "./electrics.ts";
import { type LoadedMachine, type Moment, momentOf } from "./moment.ts";
import { AT_ONCE, type Parting, partedBits, touchAgain } from "./parting.ts";

/** More switch changes than a chain of two actuators can make without repeating itself. */
const MOST_CHANGES = 12;
/** More than the states of all actuators of a circuit together. */
const ACTUATOR_STATES = 256;
/** Where the switches end. */
export interface Settled {
  readonly now: Moment;
  /** The state it goes back to again and again, where it chatters. */
  readonly before?: Moment;
  /** The actuators that ever held, by bit: heard, though a contact parts and lets them go. */
  readonly heard: number;
}

/** Lets the switches act until they rest, and bad contacts part under what then flows. */
export function settle(machine: LoadedMachine): Settled {
  const { electrics } = machine.simulator;
  touchAgain(electrics.partings);
  let end = settleSwitches(machine, { closed: 0, heard: 0 });
  // Each time round at least one more contact is open.
  while (parts(machine, end)) {
    end = settleSwitches(machine, { closed: end.now.closed, heard: end.heard });
  }
  return end;
}

/** Whether a contact parts in what the switches settled in, which is the state solved last again. */
function parts(machine: LoadedMachine, { now, before }: Settled): boolean {
  const { electrics } = machine.simulator;
  if (electrics.partings.length === 0) return false;
  return [before, now].some(
    (one) =>
      one !== undefined && partContacts(electrics, momentOf(machine, "start", one.closed), 1),
  );
}

/**
 * Lets the switches act until they rest, or until a state comes back: then the actuator chatters
 * between the two last states and a meter shows their mean by the time spent in each.
 */
function settleSwitches(
  machine: LoadedMachine,
  from: { readonly closed: number; readonly heard: number },
): Settled {
  const { partings } = machine.simulator.electrics;
  const seen: number[] = [];
  let now = startMoment(machine, from.closed);
  let heard = from.heard | now.closed;
  for (let i = 0; i < MOST_CHANGES && now.next !== now.closed; i++) {
    seen.push(stateCode(now, partings));
    const then = startMoment(machine, now.next);
    heard |= then.closed;
    if (seen.includes(stateCode(then, partings))) return { now: then, before: now, heard };
    now = then;
  }
  return { now, heard };
}

/** One number for what is shut: contacts that part make it another state. */
function stateCode({ closed }: Moment, partings: readonly Parting[]): number {
  return partedBits(partings) * ACTUATOR_STATES + closed;
}

/** A switch state with the key on START; a contact far too bad for it parts before any switch moves. */
function startMoment(machine: LoadedMachine, closed: number): Moment {
  const moment = momentOf(machine, "start", closed);
  const isParted = partContacts(machine.simulator.electrics, moment, AT_ONCE);
  return isParted ? startMoment(machine, closed) : moment;
}

/** Whether the starter's own contact is shut. */
export function isMainShut(
  { simulator }: LoadedMachine,
  { closed }: Pick<Moment, "closed">,
): boolean {
  return ((closed >> simulator.mainActuator) & 1) === 1;
}
