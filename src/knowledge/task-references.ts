import type { Gathered } from "./gather.ts";
import { features, type KnownIds, list, type Report, stateSet, states } from "./references.ts";
import type { CheckText } from "./schema-system.ts";
import type { Placed } from "./source-file.ts";

/** What checks, acts and remedies have in common, as far as they refer to something. */
interface TaskText {
  readonly tools?: readonly string[] | undefined;
  readonly cautions?: readonly string[] | undefined;
  readonly access?: string | undefined;
  readonly parts?: readonly string[] | undefined;
  readonly after?: readonly string[] | undefined;
  readonly "operator-needs"?: readonly string[] | undefined;
  readonly "ask-again"?: readonly string[] | undefined;
}

export function taskReferences(gathered: Gathered, known: KnownIds, report: Report): void {
  const tasks: Placed<TaskText>[] = [
    ...gathered.checks.values(),
    ...gathered.acts.values(),
    ...gathered.remedies.values(),
  ];
  for (const place of tasks) {
    const text = place.value;
    list(place, "tools", text.tools, known.tool, report);
    list(place, "cautions", text.cautions, known.hazard, report);
    list(place, "access", one(text.access), known.access, report);
    list(place, "operator-needs", text["operator-needs"], known.tool, report);
    list(place, "parts", text.parts, known.part, report);
    list(place, "after", text.after, known.check, report);
    list(place, "ask-again", text["ask-again"], known.observation, report);
  }
  for (const place of gathered.checks.values()) checkReferencesOf(place, gathered, known, report);
  for (const place of gathered.acts.values()) {
    const { reports, "cured-means": cured, needs } = place.value;
    list(place, "reports", one(reports), known.observation, report);
    list(place, "cured-means", one(cured), stateSet(reports ?? "", gathered), report);
    features(place, ["needs"], needs, known, report);
    states(place, place.value["only-if"], gathered, report, known);
    for (const [id, { when, told }] of Object.entries(place.value["left-to-shop"] ?? {})) {
      const inside = ["left-to-shop", id];
      features(place, [...inside, "when"], when, known, report);
      states(place, told, gathered, report, known, [...inside, "told"]);
    }
  }
  for (const place of gathered.observations.values()) {
    const { follows, needs, "tells-features": tells = {} } = place.value;
    features(place, ["needs"], needs, known, report);
    list(place, "tells-features", Object.keys(tells), stateSet(place.id, gathered), report);
    for (const [state, told] of Object.entries(tells)) {
      for (const id of Object.keys(told)) {
        report(place, ["tells-features", state, id], id, known.feature);
      }
    }
    states(place, place.value["only-if"], gathered, report, known);
    list(place, "follows", Object.keys(follows ?? {}), known.observation, report);
    list(place, "says-nothing", place.value["says-nothing"], stateSet(place.id, gathered), report);
  }
}

function checkReferencesOf(
  place: Placed<CheckText>,
  gathered: Gathered,
  known: KnownIds,
  report: Report,
): void {
  const { finds, needs, verdicts, menu } = place.value;
  list(place, "not-offered", place.value["not-offered"], stateSet(finds, gathered), report);
  list(place, "finds", one(finds), known.observation, report);
  features(place, ["needs"], needs, known, report);
  states(place, place.value["only-if"], gathered, report, known);
  for (const [key, entries] of [["verdicts", verdicts] as const, ["menu", menu] as const]) {
    for (const [id, entry] of Object.entries(entries ?? {})) {
      for (const state of entry.states) {
        report(place, [key, id, "states"], state, stateSet(finds, gathered));
      }
    }
  }
  for (const [id, verdict] of Object.entries(verdicts ?? {})) {
    const inside = ["verdicts", id, "only-if"];
    states(place, verdict["only-if"], gathered, report, known, inside);
  }
}

function one(id: string | undefined): string[] {
  return id === undefined ? [] : [id];
}
