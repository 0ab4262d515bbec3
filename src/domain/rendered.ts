import type { FileRef, Message, Phrase, Press } from "./effects.ts";
import type { Paper } from "./paper.ts";

/** A stretch of the text that is shown differently; counted in UTF-16 units. */
export interface TextEntity {
  readonly type: "bold" | "italic" | "blockquote";
  readonly offset: number;
  readonly length: number;
}

export interface RenderedButton {
  readonly label: string;
  readonly press: Press;
}

/** A paper whose words are chosen. */
export interface WordedPaper {
  readonly paper: Paper<string>;
  /** The language they are in. */
  readonly language: string;
  readonly rightToLeft: boolean;
}

/** A message in one language, ready to be carried: plain text and what lies over it. */
export interface Rendered {
  readonly text: string;
  /** Sorted by offset; inside the text, never empty, never cutting a character in two. */
  readonly entities: readonly TextEntity[];
  readonly buttons: readonly (readonly RenderedButton[])[];
  readonly share?: {
    readonly kind: "location" | "contact";
    readonly label: string;
    readonly also?: { readonly kind: "location" | "contact"; readonly label: string };
  };
  readonly endShare?: boolean;
  readonly file?: FileRef;
  readonly place?: { readonly latitude: number; readonly longitude: number };
  readonly picture?: Message["picture"];
  readonly card?: Message["card"];
  readonly attachment?: Message["attachment"];
  readonly paper?: WordedPaper;
}

/**
 * Turns what is to be said into words. Never throws: a missing word is shown as well as it can be
 * and reported by whoever implements this.
 */
export interface Wording {
  render(message: Message, language: string): Rendered;
  phrase(phrase: Phrase, language: string): string;
}
