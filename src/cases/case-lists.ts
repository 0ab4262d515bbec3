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

/** What a case can be found by besides its machine; worked out once, for they are many. */
const texts = new WeakMap<CaseSummary, string>();
function textOf(one: CaseSummary): string {
  const known = texts.get(one);
  if (known !== undefined) return known;
  const text = plain([one.id, one.operator.name, one.opening, one.where?.words ?? ""].join(" "));
  texts.set(one, text);
  return text;
}

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
  const machines = new Map<string, string>();
  const machineOf = (kind: string): string => {
    const known = machines.get(kind) ?? plain(`${kind} ${machineWords(kind)}`);
    machines.set(kind, known);
    return known;
  };
  return cases.filter((one) => {
    const machine = machineOf(one.machine.kind ?? "other");
    return words.every((word) => textOf(one).includes(word) || machine.includes(word));
  });
}
