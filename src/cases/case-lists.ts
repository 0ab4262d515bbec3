import type { CaseSummary } from "./case-summary.ts";
import type { Level } from "./urgency-now.ts";

const rank: Readonly<Record<Level, number>> = { high: 2, normal: 1, low: 0 };

/** How much a case presses: danger, then the wish for a person, then urgency. */
export function pressing(one: CaseSummary, level: Level): number {
  const isAskedFor = one.personWanted && one.shopSaw === null;
  return 8 * Number(one.alarm) + 4 * Number(isAskedFor) + rank[level];
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
