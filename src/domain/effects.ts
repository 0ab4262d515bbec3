import type { Paper } from "./paper.ts";
import type { Drawing, MachineKindId } from "./vocabulary.ts";

/** Where a message goes: a chat and, in a group with topics, one topic of it. */
export interface Address {
  readonly chat: string;
  readonly topic?: number;
}

/** A value put into a message; how it looks is decided by language, last of all. */
export type Arg =
  | string
  | number
  /** A word of the knowledge, by its key (`wordKey`). */
  | { readonly know: string }
  | { readonly phrase: Phrase }
  | { readonly quantity: number; readonly unit: Unit; readonly digits?: number }
  /** A moment, shown in the shop's time zone. */
  | { readonly time: number; readonly style: "day" | "hour" | "day-hour" }
  /** Joined as a list of that language; `parted`: only set apart, as the words are no sentence. */
  | { readonly list: readonly Arg[]; readonly parted?: true };

export type Unit =
  | "V"
  | "A"
  | "°C"
  | "h"
  | "bar"
  | "SG"
  | "Ω"
  | "rpm"
  | "min"
  | "percent"
  | "km"
  | "dB";

/** Something to say: a message of the chat, a word of the knowledge, or a person's own words. */
export type Phrase =
  | { readonly key: string; readonly args?: Readonly<Record<string, Arg>> }
  | { readonly know: string }
  | { readonly raw: string };

export interface Line {
  readonly say: Phrase;
  readonly style?: "heading" | "bullet" | "quote" | "caution" | "step";
  /** Leave an empty line before this one. */
  readonly gap?: boolean;
}

/** What pressing a button means. It comes back as data from outside: believed only after checks. */
export interface Press {
  /** The case it belongs to; absent on the counter's and the person's own buttons. */
  readonly case?: string;
  /** The revision of the case's dialog for which it was made. */
  readonly revision: number;
  readonly act: string;
  readonly value?: string;
}

export interface Button {
  readonly label: Phrase;
  readonly press: Press;
}

export interface FileRef {
  /** Telegram's id by which the file can be sent again or fetched. */
  readonly id: string;
  readonly kind:
    | "photo"
    | "voice"
    | "audio"
    | "video"
    | "video-note"
    | "animation"
    | "document"
    | "sticker";
  readonly mime?: string;
  readonly bytes?: number;
}

export interface Message {
  readonly lines: readonly Line[];
  readonly buttons?: readonly (readonly Button[])[];
  /** Offers a one-tap way to share the place or the phone number (private chats only). */
  readonly offer?: {
    readonly share: "location" | "contact";
    readonly label: Phrase;
    /** A second button beside it, for what is asked next. */
    readonly also?: { readonly share: "location" | "contact"; readonly label: Phrase };
  };
  /** Takes an offer of that kind away again. */
  readonly endOffer?: boolean;
  readonly file?: FileRef;
  readonly place?: { readonly latitude: number; readonly longitude: number };
  /** A drawing of our own, by its name; it is drawn when it is sent. */
  readonly picture?: { readonly drawing: Drawing; readonly machine: MachineKindId };
  /** A number to ring, as a card that the phone can dial. */
  readonly card?: { readonly name: string; readonly phone: string };
  /** A text that is sent as a file. */
  readonly attachment?: { readonly name: string; readonly text: string };
  /** A calendar entry or a job sheet; it is drawn up when it is sent. */
  readonly paper?: Paper<Phrase>;
}

/** What shall happen outside, as data. Nothing here has happened yet. */
export type Effect =
  | {
      readonly do: "say";
      readonly to: Address;
      readonly language: string;
      readonly message: Message;
      /** A name by which a later `revise` finds the message again. */
      readonly slot?: string;
      readonly quiet?: boolean;
    }
  | {
      /**
       * Changes the message last said in that slot; says it anew where there is none. One without
       * lines only takes the buttons away.
       */
      readonly do: "revise";
      readonly to: Address;
      readonly language: string;
      readonly message: Message;
      readonly slot: string;
      readonly quiet?: boolean;
    }
  | {
      /** A follow-up for another document; applying it twice does nothing. */
      readonly do: "tell";
      readonly document: { readonly kind: "case" | "person" | "shop"; readonly id: string };
      readonly event: unknown;
    };

/** A condition under which a waiting effect is dropped, checked against its document when due. */
export type CancelIf =
  | { readonly revisionAbove: number }
  | { readonly closed: true }
  | { readonly flagSeen: string };

/** A decided effect that is not yet carried out. Lives in the document that decided it. */
export interface OutboxEntry {
  /** Unique over all documents. */
  readonly id: string;
  readonly effect: Effect;
  /** Position in its chat's order; effects of one chat are carried out in this order. */
  readonly sequence: number;
  /** Not before this moment, milliseconds since 1970 UTC. */
  readonly notBefore: number;
  readonly cancelIf?: CancelIf;
  /** How often the other side failed on it; a bounded number, so that it cannot block its chat. */
  readonly attempts: number;
  /** Messages of it that have been sent, where it takes several; absent: none. */
  readonly part?: number;
}

/** An effect together with when it may happen; what the pure parts return. */
export interface PlannedEffect {
  readonly effect: Effect;
  readonly notBefore?: number;
  readonly cancelIf?: CancelIf;
}
