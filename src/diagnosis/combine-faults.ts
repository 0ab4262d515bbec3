import type { Observation, Row } from "../domain/knowledge.ts";

/** Which of two faults acts first between the key and a running engine. */
export type Order = "first-earlier" | "second-earlier" | "same-stage";

/** How one fault, or two together, show in an observation. */
export interface Combining {
  /** The row of a fault alone; what it declares itself in most cases. */
  alone(row: Row): Row;
  /** The row of two faults that both touch the observation. */
  both(a: Row, b: Row, order: Order): Row;
}

/** Rows that say the same however the two faults are named: a tie of stages is an even mixture. */
export function earlierDecides(a: Row, b: Row, order: Order): Row {
  if (order === "first-earlier") return a;
  if (order === "second-earlier") return b;
  return a.map((value, index) => (value + (b[index] ?? 0)) / 2);
}

/** Circumstances multiply the odds of each fault: P(s | a, b) ∝ P(s | a)·P(s | b) / P(s). */
export function factorsMultiply(usual: Row): Combining["both"] {
  return (a, b) => {
    const product = a.map((value, s) => {
      const base = usual[s] ?? 0;
      return base > 0 ? (value * (b[s] ?? 0)) / base : 0;
    });
    const total = product.reduce((sum, value) => sum + value, 0);
    return total > 0 ? product.map((value) => value / total) : earlierDecides(a, b, "same-stage");
  };
}

/**
 * Noisy-MAX over states ordered from none to worst (noisy-OR for two states): each cause and the
 * leak produce a state on their own, the worst is seen. A row holds what its fault alone produces.
 * Source: Pearl 1988 (noisy-OR), Henrion 1989 (leak), Díez 1993 (noisy-MAX).
 */
export function noisyMax(rows: readonly Row[]): Row {
  const width = rows[0]?.length ?? 0;
  const result: number[] = [];
  const reached = rows.map(() => 0);
  let before = 0;
  for (let s = 0; s < width; s++) {
    let upTo = 1;
    for (const [index, row] of rows.entries()) {
      reached[index] = (reached[index] ?? 0) + (row[s] ?? 0);
      upTo *= Math.min(1, reached[index] ?? 0);
    }
    result.push(upTo - before);
    before = upTo;
  }
  return result;
}

/** Members of a list are present or absent each for itself; the rule of `pick` member by member. */
function memberByMember(pick: (a: number, b: number, m: number) => number): Combining["both"] {
  return (a, b) => a.map((value, m) => pick(value, b[m] ?? 0, m));
}

/** The combining rule that an observation declares. */
export function combiningOf(observation: Observation, usual: Row, isList: boolean): Combining {
  const alone = (row: Row): Row => row;
  if (isList) return { alone: listAlone(observation), both: listBoth(observation, usual) };
  if (observation.context) return { alone, both: factorsMultiply(usual) };
  if (observation.combine === "precedence") return { alone, both: earlierDecides };
  const leak = observation.leak === undefined ? [] : [observation.leak];
  return {
    alone: (row) => noisyMax([...leak, row]),
    both: (a, b) => noisyMax([...leak, a, b]),
  };
}

function listAlone(observation: Observation): (row: Row) => Row {
  const { leak, combine } = observation;
  if (combine === "precedence" || leak === undefined) return (row) => row;
  return (row) => row.map((value, m) => 1 - (1 - value) * (1 - (leak[m] ?? 0)));
}

function listBoth(observation: Observation, usual: Row): Combining["both"] {
  if (observation.context) return memberByMember((a, b, m) => oddsMultiply(a, b, usual[m] ?? 0));
  if (observation.combine !== "precedence") {
    const leak = observation.leak ?? [];
    return memberByMember((a, b, m) => 1 - (1 - a) * (1 - b) * (1 - (leak[m] ?? 0)));
  }
  return (a, b, order) =>
    a.map((value, m) => {
      const other = b[m] ?? 0;
      if (value === usual[m]) return other;
      if (other === usual[m]) return value;
      return earlierDecides([value], [other], order)[0] ?? value;
    });
}

function oddsMultiply(a: number, b: number, usual: number): number {
  if (usual <= 0 || usual >= 1) return (a + b) / 2;
  const present = (a * b) / usual;
  const absent = ((1 - a) * (1 - b)) / (1 - usual);
  return present + absent > 0 ? present / (present + absent) : (a + b) / 2;
}
