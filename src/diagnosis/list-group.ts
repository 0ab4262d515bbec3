import type { EvidenceGroup, SharedRows } from "./model.ts";

/**
 * An observation whose members are each present or absent for themselves. Members nobody spoke of
 * carry no information.
 * @param rows P(member present | hypothesis)
 */
export function createListGroup(id: string, rows: SharedRows): EvidenceGroup {
  return {
    id,
    observations: [id],
    weigh: (seen) => ({ rowOf: rows.rowOf, like: weighMembers(rows, seen.get(id)) }),
    predict: (seen) => ({ ...rows, rows: present(rows, seen.get(id)) }),
  };
}

function weighMembers(rows: SharedRows, reported: Float64Array | undefined): Float64Array {
  const { width } = rows;
  const like = new Float64Array(rows.rows.length / width).fill(1);
  if (reported === undefined) return like;
  for (let r = 0; r < like.length; r++) {
    let product = 1;
    for (let m = 0; m < width; m++) {
      const chance = rows.rows[r * width + m] ?? 0;
      product *= (1 - chance) * (reported[2 * m] ?? 1) + chance * (reported[2 * m + 1] ?? 1);
    }
    like[r] = product;
  }
  return like;
}

function present(rows: SharedRows, reported: Float64Array | undefined): Float64Array {
  if (reported === undefined) return rows.rows;
  return rows.rows.map((chance, index) => {
    const m = index % rows.width;
    const yes = chance * (reported[2 * m + 1] ?? 1);
    const no = (1 - chance) * (reported[2 * m] ?? 1);
    return yes + no > 0 ? yes / (yes + no) : chance;
  });
}

/** Likelihood entries of a list nobody spoke of yet: two a member, all 1. */
export function silentList(members: number): Float64Array {
  return new Float64Array(2 * members).fill(1);
}
