import type { CaseSummary } from "./case-summary.ts";

const rank = { high: 2, normal: 1, low: 0 } as const;

export type Level = keyof typeof rank;
const asSaid = (one: CaseSummary): Level => one.urgency ?? "normal";

/** Danger first, then the wish for a person, then urgency, then whoever has waited longest. */
export function byUrgency(
  cases: readonly CaseSummary[],
  levelOf: (one: CaseSummary) => Level = asSaid,
): readonly CaseSummary[] {
  const pressing = (one: CaseSummary) =>
    8 * Number(one.alarm) +
    4 * Number(one.personWanted && one.shopSaw === null) +
    rank[levelOf(one)];
  return cases
    .map((one) => ({ one, score: pressing(one) }))
    .sort(
      (a, b) =>
        b.score - a.score || a.one.openedAt - b.one.openedAt || (a.one.id < b.one.id ? -1 : 1),
    )
    .map(({ one }) => one);
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
