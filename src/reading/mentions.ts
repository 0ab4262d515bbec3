import type { Meaning, SignMeaning, StateClaim } from "../domain/phrases.ts";
import type { Clauses } from "./clauses.ts";
import type { Language } from "./grammar.ts";
import { denials } from "./negation.ts";
import type { Match } from "./patterns.ts";
import type { Scope, Scopes } from "./scopes.ts";

/** One sign found in the text, with what the grammar around it says. */
export interface Mention {
  readonly sign: SignMeaning;
  readonly denied: boolean;
  /** Tokens, from inclusive, to exclusive. */
  readonly from: number;
  readonly to: number;
  readonly scope: Scope;
  /** P(the words are the sign's, spelling considered), in (0, 1]. */
  readonly spelt: number;
}

/** A misspelt word is a little less sure than one that is spelt as expected. */
const SURE_IF_MISSPELT = 0.9;
/** A single misspelt word may be another word altogether. */
const SURE_IF_ALL_MISSPELT = 0.75;

/**
 * The signs in a text, in its order, none overlapping.
 *
 * @param matches the longest matches of the language's signs
 */
export function findMentions(
  text: Clauses,
  matches: readonly Match<SignMeaning>[],
  { language, scopes }: { readonly language: Language; readonly scopes: Scopes },
): readonly Mention[] {
  const denied = denials(text, matches, language.words);
  return matches.map((match, index) => ({
    sign: match.owner,
    denied: denied[index] ?? false,
    from: match.from,
    to: match.to,
    scope: scopes.of(match.from),
    spelt: spellingOf(text, match),
  }));
}

/** What a mention means by itself. */
export function meaningOf(mention: Mention): Meaning {
  if (!mention.denied) return mention.sign;
  return mention.sign.denied ?? { means: [], maybe: [] };
}

/** The states that a mention says do not hold. */
export function deniedStates(mention: Mention): readonly StateClaim[] {
  if (!mention.denied) return mention.sign.rulesOut ?? [];
  const { means, maybe, denied } = mention.sign;
  // A denied word of several meanings denies all of them, unless its denial is ambiguous too.
  return denied === undefined ? [...means, ...maybe] : means;
}

function spellingOf(text: Clauses, match: Match<SignMeaning>): number {
  for (let at = match.from; at < match.to; at += 1) {
    if (text.tokens[at]?.corrected !== true) continue;
    return match.words === 1 ? SURE_IF_ALL_MISSPELT : SURE_IF_MISSPELT;
  }
  return 1;
}
