import type { Evidence, Report } from "../domain/evidence.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import { impliedStart } from "../talk/implied-start.ts";
import { joinLists } from "../talk/reports.ts";
import { type CaseAct, type ReadCase, type Teller, tellers } from "./case-file.ts";

/** What is known of a case once this teller has spoken. */
export function evidenceOf(read: ReadCase, upTo: Teller, knowledge: Knowledge): Evidence {
  const spoken = tellers.slice(0, tellers.indexOf(upTo) + 1);
  const reports = spoken.flatMap((teller) => read[teller]);
  const acts = read.acts.filter(({ toldIn }) => spoken.includes(toldIn));
  return evidenceFrom(reports, acts, knowledge);
}

/**
 * Evidence of the chosen reports; acts follow in order, each opening an epoch, and the one after
 * which it ran is the last. What one person told of twice was done once, and the later telling
 * stands.
 */
export function evidenceFrom(
  reports: readonly Report[],
  acts: readonly CaseAct[],
  knowledge: Knowledge,
): Evidence {
  const once = lastCures(
    acts.filter(
      (act, at) =>
        !acts.some((one, other) => other > at && one.act === act.act && one.by === act.by),
    ),
  );
  const done = once.map(({ act, outcome, by }, index) => ({ act, epoch: index + 1, by, outcome }));
  const told = once.flatMap(({ report }, index) =>
    report === null ? [] : [{ ...report, epoch: index + 1 }],
  );
  const implied = impliedStart(reports, knowledge) ?? [];
  return { reports: joinLists([...reports, ...told].concat(implied)), acts: done };
}

/** Where more was done after it ran, it did not stay so; only the last cure stands as one. */
function lastCures(acts: readonly CaseAct[]): readonly CaseAct[] {
  const cured = acts.filter((act) => act.outcome === "cured");
  const last = cured.at(-1);
  const others = acts.filter((act) => act !== last);
  const fleeting = others.map((act): CaseAct => {
    return act.outcome === "cured" ? { ...act, outcome: "unknown" } : act;
  });
  return last === undefined ? acts : [...fleeting, last];
}
