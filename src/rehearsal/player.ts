import type { Person } from "./people/person.ts";
import type { SeenMessage } from "./view/seen-message.ts";

/** One thing a played person does, where it fits the newest message. */
export interface ScriptLine {
  /** A piece of the message's text, in any case; absent: any message. */
  readonly when?: string;
  readonly press?: string;
  readonly say?: string;
  readonly photo?: boolean;
}

/** Answers that are pressed where the script has none. */
export interface Fallback {
  readonly labels: readonly string[];
}

const labelsOf = (message: SeenMessage) => message.buttons.flat().map((button) => button.label);

/** True where a line fits the message: its words stand in it, and its button is there. */
export function fits(line: ScriptLine, message: SeenMessage): boolean {
  const named =
    line.when === undefined || message.text.toLowerCase().includes(line.when.toLowerCase());
  return named && (line.press === undefined || labelsOf(message).includes(line.press));
}

/** The message a person would answer: the newest of the bot's that has buttons. */
export function openMessage(transcript: readonly SeenMessage[]): SeenMessage | undefined {
  return transcript.findLast((message) => message.from.isBot && message.buttons.length > 0);
}

/** A message counts as new again once its words or its buttons change. */
export function newsKey(message: SeenMessage): string {
  return JSON.stringify([message.id, message.text, labelsOf(message)]);
}

/**
 * Answers the newest message by the script, or with a fallback button.
 * @returns what was done, or null where nothing fits
 */
export function playOnce(
  person: Person,
  transcript: readonly SeenMessage[],
  script: {
    readonly lines: readonly ScriptLine[];
    readonly fallback: Fallback;
    readonly picture: Buffer;
  },
): string | null {
  const message = openMessage(transcript);
  if (message === undefined) return null;
  const line = script.lines.find((candidate) => fits(candidate, message));
  const label =
    line?.press ?? (line === undefined ? fallbackLabel(message, script.fallback) : null);
  if (line?.say !== undefined) {
    person.say(line.say);
    return line.say;
  }
  if (line?.photo === true) {
    person.sendPhoto(script.picture);
    return "photo";
  }
  if (label === null || label === undefined) return null;
  person.press(label, { messageId: message.id });
  return label;
}

function fallbackLabel(message: SeenMessage, fallback: Fallback): string | null {
  const labels = labelsOf(message);
  return fallback.labels.find((label) => labels.includes(label)) ?? null;
}
