import type {
  Actuator,
  CircuitNetwork,
  CircuitPart,
  KeyPosition,
  Spread,
} from "../domain/circuit.ts";
import { type Elimination, type Link, planElimination } from "./star-mesh.ts";

const HOLDS = { "parts-at": 0, "stays-parted": 0 };

/** Figures that a file may leave out, by part sort or section, and what they then are. */
const DEFAULTS: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  battery: { age: 1, offset: 0, polarisation: 0, "added-resistance": 0, dead: 0 },
  // A joint holds whatever the current, unless the file or a fault says at which volts it parts.
  ...{ cable: HOLDS, joint: HOLDS, fuse: HOLDS, isolator: HOLDS },
  coil: { turns: 1 },
  motor: { saturation: 0 },
  // What the coils must make to close and to hold is worked out from the healthy coils when a
  // machine is drawn, so that a faulty coil does not also shift what is needed.
  actuator: { stick: 1, needed: 0, kept: 0 },
  drive: { engages: 1 },
  engine: { "drag-factor": 1, locked: 0, "water-lock": 0 },
};

/** What a machine of twice the size has of each figure: 2 to this power. */
const GROWTH: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  battery: { cca: 1 },
  cable: { size: 1 },
  joint: { resistance: -1 },
  motor: { resistance: -1, saturation: 1, friction: 1 },
  engine: { drag: 1, compression: 1 },
};

/** One drawn figure of a machine and where it stands in the machine's list of figures. */
export interface Slot {
  readonly part: string;
  readonly figure: string;
  readonly spread: Spread;
  readonly growth: number;
}

/** A branch of the network: where its conductance goes and what moves it. */
export interface Branch {
  readonly part: CircuitPart;
  readonly from: number;
  readonly to: number;
  /** ≥ 0: a link; −1−p: from point p to the reference. */
  readonly place: number;
  /** Number of the actuator that closes it, or −1. */
  readonly actuator: number;
}

/** A branch that the key or an actuator opens and closes. */
export interface SwitchedBranch {
  /** Its number among the branches. */
  readonly number: number;
  readonly place: number;
  readonly actuator: number;
  readonly keys: readonly KeyPosition[];
}

/** A circuit made ready to be simulated. */
export interface Assembly {
  readonly network: CircuitNetwork;
  readonly slots: readonly Slot[];
  /** Place of a part's figure in a machine; −1 if there is none. */
  slot(part: string, figure: string): number;
  /** Number of a named point; −1 is the reference. */
  point(name: string): number;
  readonly branches: readonly Branch[];
  readonly switched: readonly SwitchedBranch[];
  readonly batteries: readonly Branch[];
  readonly motor: Branch;
  readonly lamp: Branch;
  readonly actuators: readonly Actuator[];
  readonly plan: Elimination;
}

/**
 * Numbers the points and figures of a circuit and plans its elimination.
 * @param network a checked circuit: exactly one motor, at least one battery and one lamp
 * @returns what the simulator needs; equal networks give equal assemblies
 * @throws RangeError where the network lacks a motor, battery or lamp
 */
export function assemble(network: CircuitNetwork): Assembly {
  const points = new Map<string, number>([[network.reference, -1]]);
  const point = (name: string): number => {
    const known = points.get(name);
    if (known !== undefined) return known;
    points.set(name, points.size - 1);
    return points.size - 2;
  };
  const ends: Link[] = network.parts.map((p) => ({ from: point(p.from), to: point(p.to) }));
  const planned = ends.filter((_, i) => network.parts[i]?.sort !== "motor");
  const { plan, places } = planElimination(points.size - 1, planned);
  const moved = new Map(network.actuators.map((a, i) => [a.contact, i]));
  let next = 0;
  const branches = network.parts.map((part, i): Branch => {
    const { from, to } = ends[i] ?? { from: -1, to: -1 };
    const place = part.sort === "motor" ? 0 : (places[next++] ?? 0);
    return { part, from, to, place, actuator: moved.get(part.id) ?? -1 };
  });
  const slots = listSlots(network);
  const numbers = numberSlots(slots);
  const resistors = branches.filter(({ part }) => part.sort !== "motor" && part.sort !== "battery");
  return {
    network,
    slots,
    slot: (part, figure) => numbers.get(part)?.get(figure) ?? -1,
    point: (name) => {
      const known = points.get(name);
      if (known === undefined) throw new RangeError(`${network.id} has no point "${name}"`);
      return known;
    },
    branches: resistors,
    switched: resistors.flatMap(({ part, place, actuator }, number) =>
      part.sort === "contact" ? [{ number, place, actuator, keys: part.closed ?? [] }] : [],
    ),
    batteries: branches.filter(({ part }) => part.sort === "battery"),
    motor: only(branches, "motor", network.id),
    lamp: only(branches, "lamp", network.id),
    actuators: network.actuators,
    plan,
  };
}

function numberSlots(slots: readonly Slot[]): ReadonlyMap<string, ReadonlyMap<string, number>> {
  const numbers = new Map<string, Map<string, number>>();
  slots.forEach(({ part, figure }, i) => {
    const figures = numbers.get(part) ?? new Map<string, number>();
    numbers.set(part, figures.set(figure, i));
  });
  return numbers;
}

function only(branches: readonly Branch[], sort: string, circuit: string): Branch {
  const found = branches.find(({ part }) => part.sort === sort);
  if (found === undefined) throw new RangeError(`the circuit ${circuit} has no ${sort}`);
  return found;
}

function listSlots(network: CircuitNetwork): Slot[] {
  const owners: [string, string, Readonly<Record<string, Spread>>][] = [
    ...network.parts.map((p): [string, string, typeof p.figures] => [p.id, p.sort, p.figures]),
    ...network.actuators.map((a): [string, string, typeof a.figures] => [
      a.id,
      "actuator",
      a.figures,
    ]),
    ["drive", "drive", network.drive],
    ["engine", "engine", network.engine],
    ["person", "person", network.person],
    ["running", "running", network.running],
  ];
  return owners.flatMap(([part, sort, figures]) => {
    const all = new Map<string, Spread>();
    for (const [figure, value] of Object.entries(DEFAULTS[sort] ?? {})) {
      all.set(figure, { kind: "exact", value });
    }
    for (const [figure, spread] of Object.entries(figures)) all.set(figure, spread);
    return [...all].map(([figure, spread]) => {
      return { part, figure, spread, growth: GROWTH[sort]?.[figure] ?? 0 };
    });
  });
}
