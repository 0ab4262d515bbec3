import type { CaseHappening } from "../domain/case-events.ts";
import type {
  Address,
  Arg,
  CancelIf,
  Line,
  Message,
  Phrase,
  PlannedEffect,
  Press,
} from "../domain/effects.ts";
import type { Performer } from "../domain/vocabulary.ts";

/** What a turn decides: what happened, what shall happen, and a word for the pressed button. */
export interface Decision {
  readonly happenings: readonly CaseHappening[];
  readonly effects: readonly PlannedEffect[];
  readonly toast?: Phrase;
}

export const nothingToDo: Decision = { happenings: [], effects: [] };

/** Joins decisions in order; the first toast stands. */
export function together(...decisions: readonly Decision[]): Decision {
  const toast = decisions.find((decision) => decision.toast !== undefined)?.toast;
  return {
    happenings: decisions.flatMap((decision) => decision.happenings),
    effects: decisions.flatMap((decision) => decision.effects),
    ...(toast === undefined ? {} : { toast }),
  };
}

/** A message of the chat's own words. */
export function phrase(key: string, args?: Readonly<Record<string, Arg>>): Phrase {
  return args === undefined ? { key } : { key, args };
}

/** One line of a message. */
export function line(say: Phrase, style?: Line["style"], gap?: boolean): Line {
  return { say, ...(style === undefined ? {} : { style }), ...(gap === true ? { gap } : {}) };
}

/** A button on a row of its own: thumbs in gloves need the width. */
export function button(
  label: Phrase,
  press: Press,
): readonly [{ readonly label: Phrase; readonly press: Press }] {
  return [{ label, press }];
}

interface Recipient {
  readonly chat: string;
  readonly language: string;
  readonly topic?: number;
}

interface When {
  readonly notBefore?: number;
  readonly cancelIf?: CancelIf;
}

const address = (to: Recipient): Address => ({
  chat: to.chat,
  ...(to.topic === undefined ? {} : { topic: to.topic }),
});

/** A message to somebody; with a slot it can be changed later. */
export function say(
  to: Recipient,
  message: Message,
  slot?: string,
  when: When = {},
): PlannedEffect {
  return {
    ...when,
    effect: {
      do: "say",
      to: address(to),
      language: to.language,
      message,
      ...(slot === undefined ? {} : { slot }),
    },
  };
}

/** Changes the message that was last said in the slot. */
export function revise(to: Recipient, message: Message, slot: string): PlannedEffect {
  return { effect: { do: "revise", to: address(to), language: to.language, message, slot } };
}

/** Takes the buttons of the message last said in the slot away; its words stay as they are. */
export const takeButtons = (to: Recipient, slot: string): PlannedEffect =>
  revise(to, { lines: [] }, slot);

/** The same without a sound: for what can wait until somebody looks. */
export function quietly(planned: PlannedEffect): PlannedEffect {
  const { effect } = planned;
  return effect.do === "tell" ? planned : { ...planned, effect: { ...effect, quiet: true } };
}

/** Changed words are no new answer, but the shop shall have them, and the person shall know. */
export function keepEdited(
  to: Recipient,
  note: { readonly text: string; readonly from: Performer },
): Decision {
  return {
    happenings: [{ type: "note.added", ...note }],
    effects: [say(to, { lines: [line(phrase("edited-kept"))] })],
  };
}
