import type { SignMeaning } from "../domain/phrases.ts";
import type { Clauses } from "./clauses.ts";
import type { Language, Marker } from "./grammar.ts";
import type { Match } from "./patterns.ts";

/** When a clause's facts held: now, before now, or not said. */
export type When = "now" | "before" | "unsaid";

/** What the small words make of everything said in a clause. */
export interface Scope {
  readonly when: When;
  /** 0 = plainly stated, 1 = worth nothing. */
  readonly hedge: number;
  readonly source: "self" | "other";
}

/** Markers found in the text, and the scope of each clause, by clause number. */
export interface Scopes {
  of(token: number): Scope;
  /** True after "as if" in its clause, and where another machine, a question or a plan is told. */
  isUnreal(token: number): boolean;
  /** Tokens that belong to a marker. */
  readonly marked: ReadonlySet<number>;
}

/**
 * Time words hold from their clause to the end of the sentence or to the next time word; hedges
 * hold in their clause, "as if" for the rest of it;
 * another machine, a question or a plan to the next comma or to "this one", "but";
 * "my son says" holds in its sentence, "I'm asking for …" everywhere.
 */
export function findScopes(
  text: Clauses,
  language: Language,
  signs: readonly Match<SignMeaning>[],
): Scopes {
  const found = language.markers
    .longest(text)
    .filter((marker) => !isTime(marker) || !signs.some((sign) => isInside(marker, sign)));
  const when = new Map<number, When>();
  const hedge = new Map<number, number>();
  const others = new Set<number>();
  const marked = new Set<number>();
  let everywhere = false;
  for (const { owner, from, to } of found) {
    const clause = text.clauses[from] ?? 0;
    for (let at = from; at < to; at += 1) marked.add(at);
    if (owner.kind === "hedge") {
      doubt(hedge, text.clauses[to - 1] ?? clause, owner.strength);
    } else if (owner.kind === "now") when.set(clause, "now");
    else if (owner.kind === "before") when.set(clause, when.get(clause) ?? "before");
    else if (owner.kind === "second-hand") others.add(text.sentences[from] ?? 0);
    else if (owner.kind === "second-hand-all") everywhere = true;
  }
  const spread = spreadTimes(text, when);
  const of = (token: number): Scope => {
    const clause = text.clauses[token] ?? 0;
    const told = everywhere || others.has(text.sentences[token] ?? 0);
    return {
      when: spread.get(clause) ?? "unsaid",
      hedge: hedge.get(clause) ?? 0,
      source: told ? "other" : "self",
    };
  };
  const unreal = unrealTokens(text, found);
  return { of, isUnreal: (token) => unreal[token] === true, marked };
}

/** Tokens from a marker on that tell nothing of the machine as it stands. */
function unrealTokens(text: Clauses, found: readonly Match<Marker>[]): readonly boolean[] {
  const beginning = new Map(found.map((marker) => [marker.from, marker] as const));
  let inClause = -1;
  let elsewhere = false;
  return text.tokens.map((token, at) => {
    const marker = beginning.get(at);
    if (marker?.owner.kind === "unreal") inClause = text.clauses[marker.to - 1] ?? 0;
    if (token.gap !== "none" || marker?.owner.kind === "here") elsewhere = false;
    if (marker?.owner.kind === "elsewhere") elsewhere = true;
    // A marker may begin in the clause before the one it opens.
    return elsewhere || (text.clauses[at] ?? 0) <= inClause;
  });
}

/** "not sure if" ends in the word that opens the clause it doubts. */
function doubt(hedge: Map<number, number>, clause: number, strength: number): void {
  hedge.set(clause, Math.max(hedge.get(clause) ?? 0, strength));
}

function isTime({ owner }: Match<Marker>): boolean {
  return owner.kind === "now" || owner.kind === "before";
}

/** "now" is no time word within "now and then"; "used to" within "the lamp used to come on" is. */
function isInside(marker: Match<Marker>, sign: Match<SignMeaning>): boolean {
  if (marker.owner.kind === "before" && !sign.owner.past) return false;
  const within = marker.from >= sign.from && marker.to <= sign.to;
  return within && sign.to - sign.from > marker.to - marker.from;
}

function spreadTimes(text: Clauses, stated: ReadonlyMap<number, When>): ReadonlyMap<number, When> {
  const spread = new Map<number, When>();
  let running: When = "unsaid";
  let sentence = -1;
  let clause = -1;
  for (let at = 0; at < text.tokens.length; at += 1) {
    if (text.sentences[at] !== sentence) running = "unsaid";
    sentence = text.sentences[at] ?? 0;
    if (text.clauses[at] === clause) continue;
    clause = text.clauses[at] ?? 0;
    running = stated.get(clause) ?? running;
    spread.set(clause, running);
  }
  return spread;
}
