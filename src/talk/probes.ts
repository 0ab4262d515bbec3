import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Button, PlannedEffect } from "../domain/effects.ts";
import type { Report } from "../domain/evidence.ts";
import { wordKey } from "../domain/knowledge.ts";
import { button, line, phrase, say } from "./decision.ts";
import type { Desk } from "./desk.ts";

/** Whoever took the readings. */
interface Reader {
  readonly chat: string;
  readonly language: string;
}

const PLACES = ["post", "clamp", "unknown"] as const;

/**
 * Asks where the probes were when a new reading goes with no machine that shows the other ones:
 * nobody is told that they are wrong, and the reading stays.
 * @param reports what was just told · @param after the case with them
 */
export function probesAsked(
  reports: readonly Report[],
  after: CaseState,
  given: { readonly reader: Reader; readonly desk: Desk },
): PlannedEffect[] {
  const { reader, desk } = given;
  const measured = reports.filter(({ said }) => said.kind === "value");
  if (measured.length === 0) return [];
  const { unexplained } = desk.triage(after, "technician").ranking;
  const odd = unexplained.find((one) => measured.some((r) => r.observation === one.observation));
  if (odd === undefined) return [];
  const { observation, value, places } = odd;
  const unit = desk.knowledge.observations.get(observation)?.unit ?? "";
  const reading = phrase("reading-unexplained", {
    what: { know: wordKey("observation", observation) },
    value: `${value} ${unit}`.trim(),
  });
  const ask = places.length === 0 ? [] : [line(phrase("reading-probes"))];
  const buttons = places.length === 0 ? [] : placeButtons(after, observation);
  return [say(reader, { lines: [line(reading), ...ask], buttons }, `probes-${observation}`)];
}

function placeButtons(state: CaseState, observation: string): (readonly Button[])[] {
  return PLACES.map((place) =>
    button(phrase(`press-probes-${place}`), {
      ...{ case: state.id, revision: 0, act: "probes" },
      value: `${observation}:${place}`,
    }),
  );
}

/** The newest such reading once more, with the place it was taken at; null: there is none. */
export function probesTold(state: CaseState, value: string): CaseHappening | null {
  const colon = value.lastIndexOf(":");
  const observation = value.slice(0, colon);
  const probes = PLACES.find((place) => place === value.slice(colon + 1));
  const taken = state.answers.findLast(
    ({ report }) => report.observation === observation && report.said.kind === "value",
  );
  if (probes === undefined || taken === undefined) return null;
  return { type: "answer.given", report: { ...taken.report, probes } };
}
