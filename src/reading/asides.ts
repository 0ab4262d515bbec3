import type { Found } from "../domain/reading.ts";
import type { Clauses } from "./clauses.ts";
import type { Aside, Language } from "./grammar.ts";
import { spanOf } from "./measures.ts";
import { denials } from "./negation.ts";
import type { Match } from "./patterns.ts";

/** What a message names beside the complaint. */
export interface Asides {
  readonly components: readonly Found[];
  readonly replaced: readonly Found[];
  readonly redFlags: readonly Found[];
  readonly urgency: "high" | "low" | null;
  readonly fuel: string | null;
  /** Stretches of tokens that were made use of. */
  readonly covered: readonly { readonly from: number; readonly to: number }[];
}

/** "changed the plug, the oil and the fuel filter": words between one part and the next. */
const WORDS_BETWEEN = 4;

/** Parts, replacements, red flags, urgency and fuel, wherever they stand. */
export function findAsides(text: Clauses, language: Language): Asides {
  const matches = language.asides.longest(text);
  const denied = denials(text, matches, language.words);
  const said = matches.filter((_, index) => denied[index] !== true);
  const list = (name: Aside["list"]): readonly Match<Aside>[] =>
    said.filter((match) => match.owner.list === name);
  const found = (match: Match<Aside>): Found => ({
    id: match.owner.id,
    span: spanOf(text, match),
  });
  const parts = matches.filter((match) => match.owner.list === "component");
  const urgency = list("urgency").map((match) => match.owner.id);
  return {
    components: parts.map(found),
    replaced: replacedParts(text, said).map(found),
    redFlags: list("red-flag").map(found),
    urgency: urgency.includes("high") ? "high" : urgency.includes("low") ? "low" : null,
    fuel: list("fuel")[0]?.owner.id ?? null,
    covered: matches.filter((match) => match.owner.list !== "not-replaced"),
  };
}

/** Parts within reach of a word of replacing, or of another replaced part in a list. */
function replacedParts(text: Clauses, matches: readonly Match<Aside>[]): readonly Match<Aside>[] {
  const parts: Match<Aside>[] = [];
  let running: Match<Aside> | null = null;
  let waiting: Match<Aside> | null = null;
  for (const match of matches) {
    const { list } = match.owner;
    if (list === "not-replaced") [running, waiting] = [null, null];
    if (list === "replaced") {
      running = match;
      if (waiting !== null && near(text, waiting, match)) parts.push(waiting);
    }
    if (list !== "component") continue;
    waiting = match;
    if (running === null || !near(text, running, match)) continue;
    parts.push(match);
    running = match;
  }
  return [...new Set(parts)];
}

function near(text: Clauses, one: Match<Aside>, next: Match<Aside>): boolean {
  const sameSentence = text.sentences[one.from] === text.sentences[next.from];
  return sameSentence && next.from - one.to <= WORDS_BETWEEN;
}
