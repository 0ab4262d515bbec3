import type { FileRef, Message, Phrase, Press } from "./effects.ts";

/** A stretch of text with a look; offsets and lengths count UTF-16 units. */
export interface TextMark {
  readonly type:
    | "bold"
    | "italic"
    | "underline"
    | "strikethrough"
    | "code"
    | "pre"
    | "blockquote"
    | "expandable_blockquote";
  readonly offset: number;
  readonly length: number;
}

export interface RenderedButton {
  readonly label: string;
  readonly press: Press;
}

/** A message in one language, ready for a chat; not yet cut to a chat's limits. */
export interface Rendered {
  readonly text: string;
  readonly entities: readonly TextMark[];
  readonly buttons: readonly (readonly RenderedButton[])[];
  /** Offers a one-tap way to share the place or the phone number. */
  readonly share?: { readonly kind: "location" | "contact"; readonly label: string };
  /** Takes such an offer away again. */
  readonly endShare?: boolean;
  readonly file?: FileRef;
  readonly place?: { readonly latitude: number; readonly longitude: number };
}

/**
 * Turns what is to be said into words. Never throws: a missing word is shown as well as it can be
 * and reported by whoever implements this.
 */
export interface Wording {
  render(message: Message, language: string): Rendered;
  phrase(phrase: Phrase, language: string): string;
}
