import type { SignRef } from "../domain/phrases.ts";
import type { ActTold } from "../domain/reading.ts";
import type { Clauses } from "./clauses.ts";
import type { Aside, Language } from "./grammar.ts";
import type { Mention } from "./mentions.ts";
import { denials } from "./negation.ts";
import type { Match } from "./patterns.ts";
import { overlaps, type Stretch, spanOf } from "./span.ts";

/** Acts with their outcomes, and the signs that tell of them and not of the machine as it stands. */
export interface ActsTold {
  readonly acts: readonly ActTold[];
  readonly spoken: ReadonlySet<Mention>;
  readonly covered: readonly Stretch[];
}

export interface ActWords {
  readonly language: Language;
  readonly mentions: readonly Mention[];
  /** Parts that were replaced. */
  readonly replaced: readonly Match<Aside>[];
  /** True for words of a plan, a question or another machine. */
  readonly isUnreal: (token: number) => boolean;
  /** True where the text tells what put the machine right: then what was done cured it. */
  readonly remedy: boolean;
}

interface Done extends Stretch {
  readonly act: string;
  readonly isRepair: boolean;
}

/** Words from an act to what came of it: "put the charger on it overnight, no better". */
const REACH = 10;

/**
 * What was done about the trouble and what came of it: "charged it, no better", "new coil and it
 * started", "started after the clamps were cleaned". Without an outcome it is no act but a thing
 * that happened. What was done is then no event before the trouble, and how things were after it,
 * cleaned or running, is no state of the machine as found.
 */
export function actsTold(text: Clauses, words: ActWords): ActsTold {
  const acts: ActTold[] = [];
  const spoken = new Set<Mention>();
  const covered: Stretch[] = [];
  const beginning = new Map(words.mentions.map((mention) => [mention.from, mention] as const));
  for (const done of thingsDone(text, words)) {
    const near = mentionsNear(text, beginning, done);
    const found = outcomeOf(text, done, { near, language: words.language });
    const outcome = found?.outcome ?? (words.remedy ? remedyOutcome(words) : null);
    if (outcome === null) continue;
    acts.push({ act: done.act, outcome, span: spanOf(text, done) });
    covered.push(done);
    if (outcome === "cured" && found !== null) spoken.add(found.mention);
    for (const one of near) if (overlaps(one, done)) spoken.add(one);
  }
  return { acts, spoken, covered };
}

/** What put it right cured it, unless the trouble itself is told: "new battery: would not fire". */
function remedyOutcome({ language, mentions }: ActWords): ActTold["outcome"] {
  const { noChange, still } = language.phrases.outcomes;
  const isStill = mentions.some((one) => isOneOf(noChange, one) || isOneOf(still, one));
  return isStill ? "no-change" : "cured";
}

/** In the order of the text; looked up word by word, so that the work stays linear. */
function mentionsNear(
  text: Clauses,
  beginning: ReadonlyMap<number, Mention>,
  done: Stretch,
): readonly Mention[] {
  const near: Mention[] = [];
  const end = Math.min(text.tokens.length, done.to + REACH);
  for (let at = Math.max(0, done.from - REACH); at < end; at += 1) {
    const mention = beginning.get(at);
    const apart = (text.sentences[at] ?? 0) - (text.sentences[done.from] ?? 0);
    if (mention !== undefined && (apart === 0 || apart === 1)) near.push(mention);
  }
  return near;
}

function thingsDone(text: Clauses, { language, replaced, isUnreal }: ActWords): readonly Done[] {
  const matches = language.acts.longest(text);
  const denied = denials(text, matches, language.words);
  const acts = matches
    .filter(({ from }, index) => denied[index] !== true && !isUnreal(from))
    .map(({ owner, from, to }): Done => ({ act: owner, isRepair: false, from, to }));
  const repairs = replaced.flatMap(({ owner, from, to }): Done[] => {
    const act = language.phrases.repairs.get(owner.id);
    return act === undefined ? [] : [{ act, isRepair: true, from, to }];
  });
  const isTold = (repair: Done): boolean =>
    acts.some((one) => one.act === repair.act && overlaps(one, repair));
  return [...acts, ...repairs.filter((one) => !isTold(one))].sort((a, b) => a.from - b.from);
}

interface Found {
  readonly outcome: ActTold["outcome"];
  readonly mention: Mention;
}

/**
 * The nearest word on it behind the act; before it only that it ran ("started after …"), or that
 * parts were "already replaced".
 */
function outcomeOf(
  text: Clauses,
  done: Done,
  { near, language }: { readonly near: readonly Mention[]; readonly language: Language },
): Found | null {
  const { cured, noChange, still } = language.phrases.outcomes;
  const same = (one: Stretch): boolean => text.sentences[one.from] === text.sentences[done.from];
  for (const mention of near.filter((one) => one.from >= done.to)) {
    if (isOneOf(noChange, mention)) return { outcome: "no-change", mention };
    if (same(mention) && isOneOf(cured, mention)) return { outcome: "cured", mention };
    if (!done.isRepair && isOneOf(still, mention)) return { outcome: "no-change", mention };
  }
  const before = near.filter((one) => one.to <= done.from && same(one));
  const vain = before.findLast((one) => done.isRepair && isOneOf(noChange, one));
  if (vain !== undefined) return { outcome: "no-change", mention: vain };
  const ran = before.findLast((one) => isOneOf(cured, one));
  return ran === undefined ? null : { outcome: "cured", mention: ran };
}

/** Sentences that say that what was done did not help. */
export function vainSentences(
  text: Clauses,
  mentions: readonly Mention[],
  language: Language,
): ReadonlySet<number> {
  const { noChange } = language.phrases.outcomes;
  const vain = mentions.filter((mention) => isOneOf(noChange, mention));
  return new Set(vain.map(({ from }) => text.sentences[from] ?? 0));
}

function isOneOf(refs: readonly SignRef[], { sign, denied }: Mention): boolean {
  return refs.some((ref) => ref.sign === sign.id && ref.denied === denied);
}
