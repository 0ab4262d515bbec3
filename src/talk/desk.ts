import type { ExpectedReading } from "../diagnosis/expected-readings.ts";
import { withToldFeatures } from "../diagnosis/told-features.ts";
import type { KnownMachine } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { DutyShift, Member } from "../domain/documents.ts";
import type { Address, Phrase } from "../domain/effects.ts";
import type { MachineFacts } from "../domain/evidence.ts";
import type { Incoming } from "../domain/incoming.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import type { ReadingResult } from "../domain/reading.ts";
import type { ShopSettings } from "../domain/settings.ts";
import type { StockedPart } from "../domain/stock.ts";
import type { Next, Triage } from "../domain/triage.ts";
import type { Performer } from "../domain/vocabulary.ts";
import type { EarlierCase } from "./earlier-cases.ts";
import type { ReckonUrgency } from "./urgency.ts";

/** What is kept of an operator from earlier cases. */
export interface Remembered {
  readonly machines: readonly KnownMachine[];
  /** Equipment they told of; absent: never asked. */
  readonly has?: readonly string[];
}

/** Another case as the counter sees it: whose it is, where, when. */
export interface OtherCase
  extends Pick<CaseState, "id" | "machine" | "where" | "booked" | "visit"> {
  readonly operator: { readonly id: string; readonly name: string };
  readonly technician: { readonly id: string } | null;
  readonly openedAt: number;
}

/** Everything a turn may look at besides the case itself. It is data and pure functions. */
export interface Desk {
  readonly knowledge: Knowledge;
  readonly shop: ShopSettings;
  readonly members: readonly Member[];
  /** The dispatch group, where there is one; else every dispatcher is written to privately. */
  readonly counter?: Address;
  /** Who has the call-outs when; absent: nobody. */
  readonly duty?: readonly DutyShift[];
  /** What is kept of the operator who writes; absent: nothing. */
  readonly remembered?: Remembered;
  /** What the shop keeps of each part; absent: not known. */
  readonly stock?: readonly StockedPart[];
  /** The other open cases; absent: none are known of. */
  readonly others?: () => readonly OtherCase[];
  /** Closed cases of the same machine, the newest first; absent: none are known of. */
  readonly earlier?: (state: CaseState) => readonly EarlierCase[];
  /** Milliseconds since 1970 UTC. */
  readonly now: number;
  /** The next question for this person; pure. */
  readonly next: (state: CaseState, performer: Performer) => Next;
  /** What a test point would read on this machine; absent or null: not known. */
  readonly expected?: (state: CaseState, observation: string) => ExpectedReading | null;
  /** A phrase as people read it, so that a typed answer can be matched with the button's words. */
  readonly words: (phrase: Phrase, language: string) => string;
  /** What typed words say, as an answer to this observation's question; pure. */
  readonly read?: (text: string, expecting: string | undefined) => ReadingResult;
  /** How urgent a call is by the rules of the shop; absent: as the caller says. */
  readonly urgency?: ReckonUrgency;
  /** Ranking, plan and kit as they stand; pure. */
  readonly triage: (state: CaseState, performer: Performer) => Triage;
}

/** Something a person sent, together with what the reader made of its words. */
export interface Heard {
  readonly incoming: Incoming;
  /** For text and captions; null where there are no words. */
  readonly reading: ReadingResult | null;
  /** The sender's place in the shop; null for operators. */
  readonly member: Member | null;
}

/** The facts the engine needs; a machine that is not known yet is the catch-all kind. */
export function machineOf(state: CaseState): MachineFacts {
  return { ...state.machine, kind: state.machine.kind ?? "other" };
}

/** The machine with what was told of its own make on the way: how it is started. */
export function toldMachine(state: CaseState, knowledge: Knowledge): MachineFacts {
  const reports = state.answers.map(({ report }) => report);
  return withToldFeatures(machineOf(state), reports, knowledge);
}

export const DAY = 24 * 60 * 60 * 1000;
export const MINUTE = 60 * 1000;
