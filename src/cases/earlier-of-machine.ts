import type { CaseState } from "../domain/case-state.ts";
import { type EarlierCase, earlierOf } from "../talk/earlier-cases.ts";
import type { CaseFigures } from "./case-figures.ts";
import type { Directory } from "./directory.ts";

/** Closed cases of the case's machine. */
export function earlierCases(state: CaseState, directory: Directory) {
  if (state.profile === null) return [];
  const closed = directory.cases({ operator: state.operator.id, open: false });
  return earlierOf(state, closed.map(({ figures }) => figures).flatMap(asEarlier));
}

function asEarlier({ id, operator, profile, closed }: CaseFigures): EarlierCase[] {
  if (closed === null) return [];
  const cause = closed.cause === "" ? null : closed.cause;
  return [{ id, operator, profile, cause, closedAt: closed.at }];
}
