import type { Role } from "../domain/documents.ts";

/** What somebody may do with a case. `operator` is whoever opened it. */
export const acts = [
  "answer",
  "see",
  "seen",
  "noticed",
  "hand-over",
  "assign",
  "take-back",
  "files",
  "note",
  "visit",
  "invite",
  "remove-member",
  "ask",
  "book",
  "decide",
  "report",
  "roster",
  "set-duty",
] as const;
export type CaseAct = (typeof acts)[number];

/** `on-duty`: a technician who has the call-outs now. */
export type Standing = Role | "operator" | "handed-technician" | "on-duty" | "stranger";

const shopActs: readonly CaseAct[] = [
  "see",
  "seen",
  "noticed",
  "hand-over",
  "assign",
  "take-back",
  "files",
  "note",
  "invite",
  "ask",
  "book",
  "decide",
  "report",
  "roster",
  "set-duty",
];

/**
 * The whole authorisation: who may do what. Checked when an act is used, never when a button is
 * shown. A technician who has not been handed the case is a stranger to it.
 */
const table: Readonly<Record<Standing, readonly CaseAct[]>> = {
  owner: [...shopActs, "remove-member"],
  dispatcher: shopActs,
  technician: ["roster"],
  // Whoever is called out at night reads of the danger, answers for it, and may take the case.
  "on-duty": ["see", "seen", "noticed", "files", "note", "hand-over", "assign", "roster"],
  "handed-technician": ["see", "files", "note", "visit"],
  operator: ["answer"],
  stranger: [],
};

export function may(standing: Standing, act: CaseAct): boolean {
  return table[standing].includes(act);
}
