import type { Clauses } from "./clauses.ts";
import type { Aside, Language } from "./grammar.ts";
import { denials } from "./negation.ts";
import type { Match } from "./patterns.ts";
import { replacedParts } from "./replaced.ts";
import type { Scopes } from "./scopes.ts";
import type { Stretch } from "./span.ts";

/** What a message names beside the complaint. */
export interface Asides {
  readonly components: readonly Match<Aside>[];
  readonly replaced: readonly Match<Aside>[];
  readonly redFlags: readonly Match<Aside>[];
  readonly urgency: "high" | "low" | null;
  readonly fuel: string | null;
  /** Stretches that were made use of. */
  readonly covered: readonly Stretch[];
}

/** Under this id stand wordings that look like a danger and are none: "white smoke". */
const NO_DANGER = "none";

/** Parts, replacements, red flags, urgency and fuel, wherever they stand. */
export function findAsides(text: Clauses, language: Language, scopes: Scopes): Asides {
  const matches = language.asides.longest(text).filter((match) => match.owner.id !== NO_DANGER);
  const denied = denials(text, matches, language.words);
  const said = matches.filter((_, index) => denied[index] !== true);
  const list = (name: Aside["list"]): readonly Match<Aside>[] =>
    said.filter((match) => match.owner.list === name);
  const urgency = list("urgency").map((match) => match.owner.id);
  return {
    components: matches.filter((match) => match.owner.list === "component"),
    replaced: replacedParts(
      text,
      said.filter(({ from }) => !scopes.isUnreal(from)),
    ),
    redFlags: list("red-flag"),
    urgency: urgency.includes("high") ? "high" : urgency.includes("low") ? "low" : null,
    fuel: list("fuel")[0]?.owner.id ?? null,
    covered: matches,
  };
}
