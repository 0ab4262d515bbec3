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

/** So long after the end a technician's photos still go to the case they closed, ms. */
const PHOTOS_AFTER = 12 * 60 * 60 * 1000;

/** The case that a technician closed last, while its photos may still come. */
function closedLately(directory: Directory, person: string, now: number): Standpoint | null {
  const closed = directory
    .cases({ technician: person, open: false })
    .filter((one) => one.closed !== null && now - one.closed.at < PHOTOS_AFTER)
    .sort((a, b) => (b.closed?.at ?? 0) - (a.closed?.at ?? 0))[0];
  return closed === undefined ? null : { id: closed.id, side: "visit" };
}

/**
 * The case that a file belongs to: as words would, but a technician who is at no machine sends what
 * was photographed at the last one.
 * @param now when it was sent, ms since 1970 UTC
 */
export function caseOfFile(
  directory: Directory,
  sent: { readonly person: string; readonly now: number },
  member: Member | null,
): Standpoint | null {
  const about = caseOf(directory, sent.person, member);
  if (member === null || about?.side === "counter") return about;
  const isThere = about?.side === "visit" && directory.case(about.id)?.visit === "started";
  return isThere ? about : (closedLately(directory, sent.person, sent.now) ?? about);
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
