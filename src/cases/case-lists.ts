import type { CaseSummary } from "./case-summary.ts";

const rank = { high: 2, normal: 1, low: 0 } as const;

/** How soon somebody should look at a call: danger, then the wish for a person, then urgency. */
function pressing(one: CaseSummary): number {
  return (
    8 * Number(one.alarm) +
    4 * Number(one.personWanted && one.shopSaw === null) +
    rank[one.urgency ?? "normal"]
  );
}

/** The most pressing first, of equal ones the one that has waited longest. */
export function byUrgency(cases: readonly CaseSummary[]): readonly CaseSummary[] {
  return [...cases].sort(
    (a, b) => pressing(b) - pressing(a) || a.openedAt - b.openedAt || (a.id < b.id ? -1 : 1),
  );
}

const plain = (text: string) => text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();

/**
 * Cases that hold every word asked for: in their number, the person's name, the machine, what was
 * said first, or the place. Accents and case do not matter.
 * @param machineWords what a machine kind is called in the reader's language
 */
export function search(
  cases: readonly CaseSummary[],
  asked: string,
  machineWords: (kind: string) => string,
): readonly CaseSummary[] {
  const words = plain(asked).split(/\s+/).filter(Boolean);
  if (words.length === 0) return [];
  return cases.filter((one) => {
    const kind = one.machine.kind ?? "other";
    const about = [one.id, one.operator.name, kind, machineWords(kind), one.opening];
    const text = plain([...about, one.where?.words ?? ""].join(" "));
    return words.every((word) => text.includes(word));
  });
}
