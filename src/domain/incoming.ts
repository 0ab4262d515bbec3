import type { FileRef, Press } from "./effects.ts";

/** Who wrote, as the chat service tells it. */
export interface Sender {
  readonly id: string;
  readonly name: string;
  /** Two-letter code set in the person's app; a hint, no more. */
  readonly language?: string;
}

/** One thing that came in from a chat, stripped of everything the rest need not know. */
export interface Incoming {
  /** Unique per update; the same update may arrive twice. */
  readonly update: string;
  /** Milliseconds since 1970 UTC: when it was sent. */
  readonly sentAt: number;
  readonly chat: string;
  readonly topic?: number;
  /** True in a one-to-one chat. */
  readonly direct: boolean;
  readonly from: Sender;
  readonly what: IncomingContent;
}

export type IncomingContent =
  | {
      readonly kind: "text";
      readonly text: string;
      readonly replyTo?: string;
      /** Somebody else's words, passed on. */
      readonly forwarded?: true;
    }
  | { readonly kind: "command"; readonly name: string; readonly argument: string }
  /** `press` is null where the data was forged or from another installation. */
  | { readonly kind: "press"; readonly press: Press | null; readonly message?: string }
  | {
      readonly kind: "file";
      readonly file: FileRef;
      readonly caption?: string;
      readonly album?: string;
    }
  | {
      readonly kind: "location";
      readonly latitude: number;
      readonly longitude: number;
      readonly title?: string;
    }
  | {
      readonly kind: "contact";
      readonly phone: string;
      readonly own: boolean;
      readonly name: string;
    }
  | { readonly kind: "edited"; readonly text: string }
  | { readonly kind: "reachable"; readonly reachable: boolean }
  /** The group became a bigger one with another id. */
  | { readonly kind: "moved"; readonly to: string }
  | { readonly kind: "other"; readonly name: string };
