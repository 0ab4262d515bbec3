import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import { advance } from "./advance.ts";
import { button, type Decision, line, phrase, say, together } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import { matchTyped } from "./typed.ts";

/** Shorter messages do not tell the language: names and numbers are alike in all of them. */
const WORDS_TO_TELL = 4;
/** One message may be quoted, or somebody else's; two in a row are the person's own. */
const MESSAGES_TO_OFFER = 2;

const wordsIn = (text: string) => text.split(/\s+/).filter((word) => /\p{L}/u.test(word)).length;

/** The language of this message, where it is long enough to tell and not the one spoken already. */
function newLanguage(state: CaseState, { incoming, reading }: Heard, desk: Desk): string | null {
  if (reading === null || incoming.what.kind !== "text") return null;
  const { text } = incoming.what;
  if (wordsIn(text) < WORDS_TO_TELL) return null;
  // Whoever types the words of a button tells nothing of their own language.
  const open = state.open.operator;
  if (open !== null && matchTyped(open.asking, text, { state, desk }) !== null) return null;
  const { language } = reading;
  const isNews = language !== state.operator.language || state.wrote !== null;
  return isNews && desk.shop.languages.includes(language) ? language : null;
}

/** "Shall I go on in …?", said in that language, under the answer to what was written. */
function offer(state: CaseState, language: string): Decision {
  const to = { ...state.operator, language };
  const name = phrase(`language-${language}`);
  const press = (value: string) => ({ revision: 0, act: "language", value });
  const message = {
    lines: [line(phrase("language-offer", { language: { phrase: name } }))],
    buttons: [
      button(phrase("language-offer-yes", { language: { phrase: name } }), press(language)),
      button(
        phrase("language-offer-no", {
          language: { phrase: phrase(`language-${state.operator.language}`) },
        }),
        press(state.operator.language),
      ),
    ],
  };
  return {
    happenings: [{ type: "language.offered", language }],
    effects: [say(to, message, "language")],
  };
}

/**
 * Somebody who writes two messages in a row in another language of the shop is asked, once, whether
 * to go on in it. Nothing changes before they press.
 * @param decided what the message itself came to
 */
export function withLanguage(
  state: CaseState,
  decided: Decision,
  { heard, desk }: { readonly heard: Heard; readonly desk: Desk },
): Decision {
  const language = newLanguage(state, heard, desk);
  if (language === null) return decided;
  const noted: CaseHappening = { type: "language.heard", language };
  const both = together(decided, { happenings: [noted], effects: [] });
  const after = advance(state, both.happenings, heard);
  const isOffered = after.languagesOffered.includes(language);
  const isOwn = language === after.operator.language;
  const often = (after.wrote?.messages ?? 0) >= MESSAGES_TO_OFFER;
  return often && !isOwn && !isOffered ? together(both, offer(after, language)) : both;
}
