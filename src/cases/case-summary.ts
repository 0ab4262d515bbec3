import type { CaseState } from "../domain/case-state.ts";
import type { CaseDocument } from "../domain/documents.ts";
import { foldCase } from "../domain/fold-case.ts";
import { type CaseFigures, figuresOf } from "./case-figures.ts";

/** What lists and look-ups need of a case; kept in memory for every case. */
export interface CaseSummary
  extends Pick<
    CaseState,
    | "id"
    | "operator"
    | "technician"
    | "machine"
    | "interview"
    | "personWanted"
    | "shopTold"
    | "shopSaw"
    | "visit"
    | "urgency"
    | "revision"
    | "where"
    | "booked"
    | "prompt"
    | "link"
    | "askedBack"
    | "flags"
    | "aftermath"
    | "payment"
    | "profile"
  > {
  readonly openedAt: number;
  /** When something last happened in it, milliseconds since 1970 UTC. */
  readonly touchedAt: number;
  /** When its technician last did something in it; 0: never. */
  readonly workedAt: number;
  /** The words it began with. */
  readonly opening: string;
  /** A danger was raised that nobody of the shop has seen. */
  readonly alarm: boolean;
  readonly closed: { readonly end: string; readonly at: number } | null;
  /** For the report and the learning. */
  readonly figures: CaseFigures;
}

/** Sums a case up. */
export function summariseCase(document: CaseDocument): CaseSummary {
  const state = foldCase(document.id, document.events);
  const { id, operator, technician, machine, interview, personWanted } = state;
  const { shopTold, shopSaw, visit, urgency, revision } = state;
  const { where, booked, prompt, link, askedBack, flags, aftermath, payment, profile } = state;
  return {
    ...{ id, operator, technician, machine, interview, personWanted },
    ...{ shopTold, shopSaw, visit, urgency, revision },
    ...{ where, booked, prompt, link, askedBack, flags, aftermath, payment, profile },
    openedAt: state.opened.at,
    touchedAt: document.events.at(-1)?.at ?? state.opened.at,
    workedAt: document.events.findLast((event) => event.by === technician?.id)?.at ?? 0,
    opening: state.words[0] ?? "",
    alarm: state.flags.some((flag) => flag.seenBy === null),
    closed: state.closed && { end: state.closed.end, at: state.closed.at },
    figures: figuresOf(state),
  };
}
