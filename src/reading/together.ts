import type { SignRef, Together } from "../domain/phrases.ts";
import type { Clauses } from "./clauses.ts";
import type { Mention } from "./mentions.ts";

/** A rule that holds: its meaning, the mentions it rests on, and those it settles. */
export interface Joint {
  readonly rule: Together;
  readonly mentions: readonly Mention[];
  readonly settled: ReadonlySet<Mention>;
}

/** Signs further apart than this many clauses are about different things. */
const CLAUSES_APART = 4;

/** How many mentions on either side are looked at; keeps the work linear in the text. */
const MENTIONS_APART = 8;

/** Applies each rule around each mention of its first sign. */
export function joinMentions(
  text: Clauses,
  mentions: readonly Mention[],
  rules: readonly Together[],
): readonly Joint[] {
  const joints: Joint[] = [];
  for (const rule of rules) {
    const [wanted] = rule.signs;
    mentions.forEach((first, index) => {
      if (wanted === undefined || !isAs(first, wanted)) return;
      const joint = jointAt(text, rule, {
        first,
        near: mentions.slice(Math.max(0, index - MENTIONS_APART), index + MENTIONS_APART + 1),
      });
      if (joint !== null) joints.push(joint);
    });
  }
  return joints;
}

function jointAt(
  text: Clauses,
  rule: Together,
  { first, near }: { readonly first: Mention; readonly near: readonly Mention[] },
): Joint | null {
  const chosen: Mention[] = [];
  for (const [place, wanted] of rule.signs.entries()) {
    const fits = (mention: Mention): boolean =>
      isAs(mention, wanted) &&
      !chosen.includes(mention) &&
      belongTogether(text, { one: first, other: mention, apart: rule.oneSentence ? 0 : 1 });
    const found = place === 0 ? [first].find(fits) : near.find(fits);
    if (found === undefined) return null;
    chosen.push(found);
  }
  const settled = chosen.filter((mention) => rule.settles.includes(mention.sign.id));
  return { rule, mentions: chosen, settled: new Set(settled) };
}

function isAs({ sign, denied }: Mention, wanted: SignRef): boolean {
  return sign.id === wanted.sign && denied === wanted.denied;
}

interface Pair {
  readonly one: Mention;
  readonly other: Mention;
  /** Sentences they may be apart. */
  readonly apart: number;
}

function belongTogether(text: Clauses, { one, other, apart }: Pair): boolean {
  const clauses = Math.abs((text.clauses[one.from] ?? 0) - (text.clauses[other.from] ?? 0));
  const sentences = Math.abs((text.sentences[one.from] ?? 0) - (text.sentences[other.from] ?? 0));
  const before = one.scope.when === "before" || other.scope.when === "before";
  const together = !before || one.scope.when === other.scope.when;
  return together && clauses <= CLAUSES_APART && sentences <= apart;
}
