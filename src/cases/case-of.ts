import type { Member } from "../domain/documents.ts";
import type { Directory } from "./directory.ts";

export type Side = "operator" | "counter" | "visit";

/** A case and the side on which somebody stands to it. */
export interface Standpoint {
  readonly id: string;
  readonly side: Side;
}

/** The case about which this member of the shop was asked to write. */
export function promptedCase(
  directory: Directory,
  person: string,
  member: Member | null,
): string | null {
  if (member === null) return null;
  return directory.cases({ open: true, promptedBy: person })[0]?.id ?? null;
}

/**
 * The case that somebody writes about: the one they were asked to write about, else the visit they
 * are on, else their own trouble.
 * @param member their place in the shop; null for everybody else
 * @returns null where they have none
 */
export function caseOf(
  directory: Directory,
  person: string,
  member: Member | null,
): Standpoint | null {
  const prompted = promptedCase(directory, person, member);
  if (prompted !== null) return { id: prompted, side: "counter" };
  // Of several, the one they are on: others are touched by their operators all the time.
  const handed = [...directory.cases({ technician: person, open: true })].sort(
    (a, b) => b.workedAt - a.workedAt,
  );
  const [visit] = handed;
  if (visit !== undefined && member !== null) return { id: visit.id, side: "visit" };
  const own = directory.cases({ operator: person, open: true })[0];
  if (own !== undefined) return { id: own.id, side: "operator" };
  // Whoever was taken out of the shop still writes about the case they had, and is told so.
  return visit === undefined ? null : { id: visit.id, side: "visit" };
}
