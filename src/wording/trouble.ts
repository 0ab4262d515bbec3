import { plainWords } from "./text-direction.ts";

/** Something that could not be worded as meant. The person still gets a text. */
export interface WordingTrouble {
  readonly language: string;
  /** Key of the message or of the piece of knowledge. */
  readonly key: string;
  /** A plain sentence for the log; never holds words of a person. */
  readonly says: string;
}

export type ReportTrouble = (trouble: WordingTrouble) => void;

/** A key as words, the last resort when there is no text: `ask-meter-ready` → `ask meter ready`. */
export function plainKey(key: string): string {
  const words = plainWords(key)
    .replaceAll(/[-_.]+/g, " ")
    .trim();
  return words === "" ? "…" : words;
}
