import { middleOf } from "../circuit/spread.ts";
import type { CircuitNetwork, CircuitPart } from "../domain/circuit.ts";
import type { ComplainAt } from "./circuit-figures.ts";

/** Checks that no schema can make: would the network stand as a circuit at all? */
export function checkSense(network: CircuitNetwork, complain: ComplainAt): void {
  findFloating(network, complain);
  findShorts(network, complain);
  findDeadContacts(network, complain);
  findStrangeTestPoints(network, complain);
  for (const sort of ["battery", "motor", "lamp"]) {
    if (!network.parts.some((part) => part.sort === sort)) {
      complain(["parts"], `the circuit has no ${sort}`);
    }
  }
}

/** A point with one end on it hangs in the air: most often a misspelt name. */
function findFloating(network: CircuitNetwork, complain: ComplainAt): void {
  const ends = new Map<string, CircuitPart[]>();
  for (const part of network.parts) {
    for (const point of [part.from, part.to]) {
      ends.set(point, [...(ends.get(point) ?? []), part]);
    }
    if (part.from === part.to) {
      complain(["parts", part.id], `the ${part.label} begins and ends at "${part.from}"`);
    }
  }
  for (const [point, parts] of ends) {
    const [only] = parts;
    if (parts.length === 1 && only !== undefined) {
      const says = `the point "${point}" floats: only the ${only.label} is joined to it`;
      complain(["parts", only.id, only.from === point ? "from" : "to"], says);
    }
  }
  if (!ends.has(network.reference)) {
    complain(["reference"], `the reference "${network.reference}" is no point of the circuit`);
  }
}

/** Parts of exactly zero ohms that close a loop leave the current round it undefined. */
function findShorts(network: CircuitNetwork, complain: ComplainAt): void {
  const leader = new Map<string, string>();
  const find = (point: string): string => {
    const above = leader.get(point) ?? point;
    return above === point ? point : find(above);
  };
  for (const part of network.parts) {
    if (!isZero(part)) continue;
    const [a, b] = [find(part.from), find(part.to)];
    if (a === b) {
      const says = `the ${part.label} closes a loop of zero ohms; give its parts a resistance`;
      complain(["parts", part.id], says);
    } else leader.set(a, b);
  }
}

function isZero({ sort, figures }: CircuitPart): boolean {
  const zero = (figure: string) => {
    const spread = figures[figure];
    return spread?.kind === "exact" && middleOf(spread) === 0;
  };
  if (sort === "cable") return zero("length") && zero("resistance");
  return sort !== "battery" && sort !== "motor" && zero("resistance");
}

function findDeadContacts(network: CircuitNetwork, complain: ComplainAt): void {
  const moved = new Set(network.actuators.map(({ contact }) => contact));
  for (const { id, sort, label, closed } of network.parts) {
    if (sort !== "contact" || moved.has(id)) continue;
    if (closed === undefined || closed.length === 0) {
      complain(["parts", id], `nothing ever closes the contact "${label}": no key position does`);
    }
  }
}

function findStrangeTestPoints(network: CircuitNetwork, complain: ComplainAt): void {
  const points = new Set(network.parts.flatMap(({ from, to }) => [from, to]));
  const parts = new Set(network.parts.map(({ id }) => id));
  for (const { id, at, against, otherPlaces, quantity } of network.testPoints) {
    if (quantity === "amps" && !parts.has(at)) {
      complain(["test-points", id], `there is no part "${at}" to take the current of`);
    }
    const probes = quantity === "amps" ? [] : [at, against, ...Object.values(otherPlaces)];
    for (const point of probes) {
      if (!points.has(point)) {
        complain(["test-points", id], `there is no point "${point}" in the circuit`);
      }
    }
  }
}
