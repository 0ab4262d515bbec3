import type { CaseEvent, KnownMachine } from "./case-events.ts";
import type { OutboxEntry } from "./effects.ts";

/** The format number of every stored document; migrations lead up to it. */
export const FORMAT = 1;

/** A message that can be found again: in which chat it stands, and its id there. */
export interface SentMessage {
  readonly chat: string;
  readonly message: string;
}

/** What every document carries, so that one file is one commit. */
export interface Ledger {
  readonly format: number;
  readonly id: string;
  /** Counts the writes; a write names the version it was decided on. */
  readonly version: number;
  /** The updates applied to this document, oldest first, a bounded window. */
  readonly updates: readonly string[];
  readonly outbox: readonly OutboxEntry[];
  /** Messages by slot, newest only. */
  readonly sent: Readonly<Record<string, SentMessage>>;
}

/** One trouble on one machine, from first message to confirmed repair. */
export interface CaseDocument extends Ledger {
  readonly kind: "case";
  readonly events: readonly CaseEvent[];
}

/** A machine of a person, remembered for the next time. */
export type MachineProfile = KnownMachine;

/** What a person was asked to write about a machine of their own, and when, ms since 1970 UTC. */
export interface Noting {
  readonly machine: string;
  readonly about: "title" | "serial";
  readonly at: number;
}

export interface PersonDocument extends Ledger {
  readonly kind: "person";
  readonly name: string;
  readonly chat: string;
  readonly language: string;
  readonly machines: readonly MachineProfile[];
  /** What they have at hand, asked once; absent: not asked yet. */
  readonly has?: readonly string[];
  readonly reachable: boolean;
  /** When they last looked at the list of calls; absent: never. */
  readonly lookedAt?: number;
  /** Their next words are this; null or absent: nothing was asked. */
  readonly noting?: Noting | null;
}

export const roles = ["owner", "dispatcher", "technician"] as const;
export type Role = (typeof roles)[number];

export interface Member {
  readonly person: string;
  readonly name: string;
  readonly chat: string;
  readonly language: string;
  readonly role: Role;
  /** What they are good at, by the names in the shop's settings; absent: nothing was noted. */
  readonly skills?: readonly string[];
}

/** A single-use link. Only a digest of its token is kept. */
export interface Invite {
  readonly digest: string;
  readonly role: Role;
  readonly expires: number;
  readonly by: string;
}

/** Somebody has the call-outs for a stretch of time; ms since 1970 UTC, `until` is past it. */
export interface DutyShift {
  readonly person: string;
  readonly from: number;
  readonly until: number;
}

/** A machine with a printed code; whoever scans it reports trouble on that machine. */
export interface Sticker {
  /** What stands in the link; unguessable, so that nobody tries machines out. */
  readonly code: string;
  readonly machine: KnownMachine;
}

export interface ShopDocument extends Ledger {
  readonly kind: "shop";
  readonly members: readonly Member[];
  readonly invites: readonly Invite[];
  /** Where slips go; absent: to every dispatcher privately. */
  readonly counter?: { readonly chat: string; readonly topic?: number };
  /** Who has the call-outs when; of two for one moment the later entry counts. Absent: nobody. */
  readonly duty?: readonly DutyShift[];
  readonly stickers?: readonly Sticker[];
  /** Signs button data; made once. */
  readonly secret: string;
}

export type TurnrowDocument = CaseDocument | PersonDocument | ShopDocument;
