import type { CircuitNetwork, CircuitPart } from "../domain/circuit.ts";

/** A part as it lies in a row: `from` on the left. */
export interface PlacedPart {
  readonly part: CircuitPart;
  readonly from: string;
  readonly to: string;
}

export interface CircuitRow {
  readonly kind: "supply" | "control" | "power";
  readonly parts: readonly PlacedPart[];
}

/** Parts that carry the starter's current, cheap to follow; all others are a detour. */
const THICK: ReadonlySet<string> = new Set(["battery", "cable", "joint", "isolator", "contact"]);
const DETOUR = 50;
/** Nothing is fed through a coil: the last way of all. */
const THROUGH_COIL = 500;

function priceOf({ sort }: CircuitPart): number {
  if (sort === "coil") return THROUGH_COIL;
  return THICK.has(sort) ? 1 : DETOUR;
}

/**
 * Lays a circuit out as rows of parts in series: supply, control and power, each with its side
 * branches behind it. Every part that belongs to the machine stands in exactly one row.
 */
export function circuitRows(network: CircuitNetwork): readonly CircuitRow[] {
  const parts = network.parts.filter(({ hidden }) => !hidden);
  const left = new Set(parts);
  const met = new Set<string>();
  const rows: CircuitRow[] = [];
  const put = (kind: CircuitRow["kind"], chain: readonly PlacedPart[]) => {
    if (chain.length === 0) return;
    rows.push({ kind, parts: chain });
    for (const { part, from, to } of chain) {
      left.delete(part);
      met.add(from).add(to);
    }
  };
  put("power", powerLoop(network, left));
  const lamp = parts.find(({ sort }) => sort === "lamp");
  if (lamp !== undefined) put("supply", through(lamp, left, met));
  const start = parts.find(({ closed }) => closed?.length === 1 && closed[0] === "start");
  if (start !== undefined && left.has(start)) put("control", through(start, left, met));
  while (left.size > 0) {
    const chain = branch(left, met);
    put(kindOf(chain), chain);
  }
  const order = ["supply", "control", "power"];
  return rows.sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind));
}

/** From the earthed post through battery, cables and starter back to the earthed post. */
function powerLoop({ reference }: CircuitNetwork, left: ReadonlySet<CircuitPart>): PlacedPart[] {
  const motor = [...left].find(({ sort }) => sort === "motor");
  if (motor === undefined) return [];
  const rest = new Set([...left].filter((part) => part !== motor));
  const there = path(rest, reference, (point) => point === motor.from);
  for (const { part } of there) rest.delete(part);
  const back = path(rest, motor.to, (point) => point === reference);
  return [...there, { part: motor, from: motor.from, to: motor.to }, ...back];
}

/** The way from what is drawn already to a part, and from it on to what is drawn already. */
function through(
  part: CircuitPart,
  left: ReadonlySet<CircuitPart>,
  met: ReadonlySet<string>,
): PlacedPart[] {
  const rest = new Set([...left].filter((one) => one !== part));
  const before = path(rest, part.from, (point) => met.has(point))
    .map(({ part: one, from, to }) => ({ part: one, from: to, to: from }))
    .reverse();
  for (const { part: one } of before) rest.delete(one);
  const after = path(rest, part.to, (point) => met.has(point));
  return [...before, { part, from: part.from, to: part.to }, ...after];
}

/** A chain of parts not drawn yet, beginning at a point that is. */
function branch(left: ReadonlySet<CircuitPart>, met: ReadonlySet<string>): PlacedPart[] {
  const all = [...left];
  const first = all.find(({ from, to }) => met.has(from) || met.has(to)) ?? all[0];
  if (first === undefined) return [];
  const turned = !met.has(first.from) && met.has(first.to);
  const from = turned ? first.to : first.from;
  const to = turned ? first.from : first.to;
  const rest = new Set(all.filter((part) => part !== first));
  return [{ part: first, from, to }, ...path(rest, to, (point) => met.has(point))];
}

function kindOf(chain: readonly PlacedPart[]): CircuitRow["kind"] {
  const sorts = new Set(chain.map(({ part }) => part.sort));
  if (sorts.has("battery")) return "power";
  return sorts.has("coil") || sorts.has("contact") ? "control" : "power";
}

/**
 * The cheapest way from a point to one that is wanted; empty where the point itself is, or where
 * there is none (Dijkstra's method).
 */
function path(
  parts: ReadonlySet<CircuitPart>,
  from: string,
  wanted: (point: string) => boolean,
): PlacedPart[] {
  const cost = new Map([[from, 0]]);
  const arrived = new Map<string, PlacedPart>();
  const done = new Set<string>();
  for (let here = cheapest(cost, done); here !== undefined; here = cheapest(cost, done)) {
    if (wanted(here)) return walkBack(here, from, arrived);
    done.add(here);
    for (const step of stepsFrom(here, parts)) {
      const price = (cost.get(here) ?? 0) + priceOf(step.part);
      if (price >= (cost.get(step.to) ?? Number.POSITIVE_INFINITY)) continue;
      cost.set(step.to, price);
      arrived.set(step.to, step);
    }
  }
  return [];
}

function cheapest(
  cost: ReadonlyMap<string, number>,
  done: ReadonlySet<string>,
): string | undefined {
  const open = [...cost].filter(([point]) => !done.has(point));
  return open.sort((a, b) => a[1] - b[1])[0]?.[0];
}

function stepsFrom(point: string, parts: ReadonlySet<CircuitPart>): PlacedPart[] {
  return [...parts].flatMap((part): PlacedPart[] => {
    if (part.from === point) return [{ part, from: point, to: part.to }];
    return part.to === point ? [{ part, from: point, to: part.from }] : [];
  });
}

function walkBack(
  end: string,
  start: string,
  arrived: ReadonlyMap<string, PlacedPart>,
): PlacedPart[] {
  const way: PlacedPart[] = [];
  let point = end;
  while (point !== start) {
    const step = arrived.get(point);
    if (step === undefined) break;
    way.unshift(step);
    point = step.from;
  }
  return way;
}
