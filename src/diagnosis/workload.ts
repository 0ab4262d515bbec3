import type { Model } from "./model.ts";
import type { Shortlist } from "./shortlist.ts";

/** The work that the hypotheses of a shortlist may mean, as plain arrays for quick reckoning. */
export interface Workload {
  /** Faults of the shortlist, as indices in the model; the other arrays are by place in here. */
  readonly faults: Int32Array;
  /** Minutes to learn whether it is this fault, > 0. */
  readonly look: Float64Array;
  readonly fix: Float64Array;
  /** Parts of each fault, as indices into `parts`: from `partsFrom[f]` to `partsFrom[f + 1]`. */
  readonly partsOf: Int32Array;
  readonly partsFrom: Int32Array;
  readonly parts: readonly string[];
  readonly carryMinutes: Float64Array;
  /** First and second fault of each shortlisted hypothesis, by place in `faults`; -1: none. */
  readonly first: Int32Array;
  readonly second: Int32Array;
}

/** Looking takes at least this long; keeps probability per minute finite. */
const LEAST_LOOK_MINUTES = 1e-6;

export function workloadOf(model: Model, list: Shortlist): Workload {
  const placeOf = new Map<number, number>();
  const partAt = new Map<string, number>();
  const place = (fault: number): number => {
    if (fault < 0) return -1;
    const known = placeOf.get(fault);
    if (known !== undefined) return known;
    placeOf.set(fault, placeOf.size);
    return placeOf.size - 1;
  };
  const first = list.hypotheses.map((h) => place(model.hypotheses.first[h] ?? -1));
  const second = list.hypotheses.map((h) => place(model.hypotheses.second[h] ?? -1));
  const faults = Int32Array.from(placeOf.keys());
  const partsOf: number[] = [];
  const partsFrom = new Int32Array(faults.length + 1);
  for (const [f, fault] of faults.entries()) {
    for (const part of model.repairs[fault]?.parts ?? []) {
      const at = partAt.get(part) ?? partAt.size;
      partAt.set(part, at);
      partsOf.push(at);
    }
    partsFrom[f + 1] = partsOf.length;
  }
  const parts = [...partAt.keys()];
  return {
    faults,
    look: Float64Array.from(faults, (fault) =>
      Math.max(LEAST_LOOK_MINUTES, model.repairs[fault]?.lookMinutes ?? 0),
    ),
    fix: Float64Array.from(faults, (fault) => model.repairs[fault]?.fixMinutes ?? 0),
    partsOf: Int32Array.from(partsOf),
    partsFrom,
    parts,
    carryMinutes: Float64Array.from(
      parts,
      (part) => model.knowledge.parts.get(part)?.carryMinutes ?? 0,
    ),
    first,
    second,
  };
}
