/**
 * Solves a resistor network by the star-mesh transformation: a point is taken out by joining its
 * neighbours with equivalent conductances. Only positive numbers are ever added, so a floating wire
 * behind an open contact keeps its full precision, which ordinary elimination loses.
 */
export interface Elimination {
  /** Number of points, the reference not counted. */
  readonly points: number;
  /** Number of conductances: the given links first, then those the elimination makes. */
  readonly links: number;
  /** Flat program: point, neighbours m, m × (neighbour, link), then m(m-1)/2 target links. */
  readonly program: Int32Array;
  /** Where each point's step begins in the program. */
  readonly starts: Int32Array;
}

export interface Link {
  readonly from: number;
  readonly to: number;
}

/**
 * Plans the order of elimination (fewest neighbours first).
 * @param points number of points besides the reference
 * @param links pairs of points; -1 is the reference; several links between two points may stand
 * @returns the plan and, for each given link, its place: ≥ 0 a link, -1-p a conductance to the
 *   reference at point p
 */
export function planElimination(
  points: number,
  links: readonly Link[],
): { readonly plan: Elimination; readonly places: readonly number[] } {
  const names = new Map<string, number>();
  const around: Set<number>[] = Array.from({ length: points }, () => new Set());
  const join = (a: number, b: number): number => {
    const key = a < b ? `${a}-${b}` : `${b}-${a}`;
    const known = names.get(key);
    if (known !== undefined) return known;
    names.set(key, names.size);
    around[a]?.add(b);
    around[b]?.add(a);
    return names.size - 1;
  };
  const places = links.map(({ from, to }) => {
    if (from === to) throw new RangeError(`a link from point ${from} to itself`);
    if (from < 0) return -1 - to;
    return to < 0 ? -1 - from : join(from, to);
  });
  const program: number[] = [];
  const starts: number[] = [];
  const left = new Set(around.keys());
  while (left.size > 0) {
    const point = fewest(left, around);
    left.delete(point);
    const near = [...(around[point] ?? [])].filter((n) => left.has(n));
    starts.push(program.length);
    program.push(point, near.length);
    for (const n of near) program.push(n, join(point, n));
    near.forEach((n, i) => {
      for (const m of near.slice(i + 1)) program.push(join(n, m));
    });
    for (const n of near) around[n]?.delete(point);
  }
  const plan = {
    points,
    links: names.size,
    program: Int32Array.from(program),
    starts: Int32Array.from(starts),
  };
  return { plan, places };
}

function fewest(left: ReadonlySet<number>, around: readonly ReadonlySet<number>[]): number {
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (const point of left) {
    const size = around[point]?.size ?? 0;
    if (size < least) {
      least = size;
      best = point;
    }
  }
  return best;
}

/** Room for one solution: reused from solve to solve. */
export interface Workspace {
  /** Conductances of the links, in siemens; overwritten by a solve. */
  readonly link: Float64Array;
  /** Conductance of each point to the reference, in siemens, > 0; overwritten. */
  readonly ground: Float64Array;
  /** Three patterns of injected current in amps, one entry a point; become volts. */
  readonly first: Float64Array;
  readonly second: Float64Array;
  readonly third: Float64Array;
}

export function createWorkspace(plan: Elimination): Workspace {
  const perPoint = () => new Float64Array(plan.points);
  return {
    link: new Float64Array(plan.links),
    ground: perPoint(),
    first: perPoint(),
    second: perPoint(),
    third: perPoint(),
  };
}

/**
 * Solves for three patterns of injected current at once.
 * @param plan as planned for this network
 * @param room conductances and currents in; the patterns hold the volts against the reference after
 */
export function solveNetwork(plan: Elimination, room: Workspace): void {
  for (let step = 0; step < plan.points; step++) eliminate(plan, room, plan.starts[step] ?? 0);
  for (let step = plan.points - 1; step >= 0; step--) {
    substitute(plan, room, plan.starts[step] ?? 0);
  }
}

function eliminate(plan: Elimination, room: Workspace, at: number): void {
  const { program } = plan;
  const { link, ground } = room;
  const point = program[at] ?? 0;
  const near = program[at + 1] ?? 0;
  const own = ground[point] ?? 0;
  let sum = own;
  for (let i = 0; i < near; i++) sum += link[program[at + 2 * i + 3] ?? 0] ?? 0;
  let target = at + 2 + 2 * near;
  for (let i = 0; i < near; i++) {
    const other = program[at + 2 + 2 * i] ?? 0;
    const part = (link[program[at + 3 + 2 * i] ?? 0] ?? 0) / sum;
    ground[other] = (ground[other] ?? 0) + part * own;
    pass(room, point, other, part);
    for (let j = i + 1; j < near; j++) {
      const made = program[target++] ?? 0;
      link[made] = (link[made] ?? 0) + part * (link[program[at + 3 + 2 * j] ?? 0] ?? 0);
    }
  }
  ground[point] = sum;
}

/** A neighbour takes over its part of the current injected at the point that is taken out. */
function pass({ first, second, third }: Workspace, from: number, to: number, part: number): void {
  first[to] = (first[to] ?? 0) + part * (first[from] ?? 0);
  second[to] = (second[to] ?? 0) + part * (second[from] ?? 0);
  third[to] = (third[to] ?? 0) + part * (third[from] ?? 0);
}

/** After elimination `ground[p]` is the sum of all conductances that met at p. */
function substitute(plan: Elimination, room: Workspace, at: number): void {
  const { program } = plan;
  const { link, ground, first, second, third } = room;
  const point = program[at] ?? 0;
  const near = program[at + 1] ?? 0;
  let a = first[point] ?? 0;
  let b = second[point] ?? 0;
  let c = third[point] ?? 0;
  for (let i = 0; i < near; i++) {
    const other = program[at + 2 + 2 * i] ?? 0;
    const own = link[program[at + 3 + 2 * i] ?? 0] ?? 0;
    a += own * (first[other] ?? 0);
    b += own * (second[other] ?? 0);
    c += own * (third[other] ?? 0);
  }
  const sum = ground[point] ?? 1;
  first[point] = a / sum;
  second[point] = b / sum;
  third[point] = c / sum;
}
