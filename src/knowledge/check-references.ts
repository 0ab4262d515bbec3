import type { Problem } from "../domain/result.ts";
import { machineKinds } from "../domain/vocabulary.ts";
import type { Gathered } from "./gather.ts";
import { suggestion } from "./nearest-word.ts";
import { features, type Known, type KnownIds, list, type Report, states } from "./references.ts";
import { problemAt } from "./source-file.ts";
import { taskReferences } from "./task-references.ts";

/** Every id that is mentioned must exist. */
export function checkReferences(gathered: Gathered): Problem[] {
  const problems: Problem[] = [];
  const report: Report = (place, inside, id, known) => {
    if (known.ids.has(id) || known.open || gathered.broken.has(id)) return;
    problems.push(
      problemAt(place, `There is no ${known.name} "${id}".${suggestion(id, known.ids)}`, inside),
    );
  };
  const known = {
    fault: set("fault", gathered.faults),
    observation: set("observation", gathered.observations),
    check: set("check", gathered.checks),
    act: set("act", gathered.acts),
    remedy: set("remedy", gathered.remedies),
    part: set("part", gathered.parts),
    tool: set("tool", gathered.tools),
    access: set("way of access", gathered.access),
    hazard: set("hazard", gathered.hazards),
    feature: set("feature", gathered.features),
    system: set("system", gathered.systems),
  };
  faultReferences(gathered, known, report);
  taskReferences(gathered, known, report);
  sharedReferences(gathered, known, report);
  return [...problems, ...missingMachines(gathered)];
}

function set(name: string, section: ReadonlyMap<string, unknown>): Known {
  return { name, ids: new Set(section.keys()) };
}

function faultReferences(gathered: Gathered, known: KnownIds, report: Report): void {
  for (const place of gathered.faults.values()) {
    const text = place.value;
    const keys = (key: string, values: object | undefined, what: Known) =>
      Object.keys(values ?? {}).forEach((id) => void report(place, [key, id], id, what));
    keys("brings", text.brings, known.fault);
    keys("cured-by", text["cured-by"], known.act);
    keys("hidden-by", text["hidden-by"], known.act);
    keys("not-yet", text["not-yet"], known.part);
    for (const [part, check] of Object.entries(text["not-yet"] ?? {})) {
      report(place, ["not-yet", part], check, known.check);
    }
    list(place, "remedies", text.remedies, known.remedy, report);
    list(place, "cannot-be-told-from", text["cannot-be-told-from"], known.fault, report);
    features(place, ["needs"], text.needs, known, report);
    text["more-likely"]?.forEach(
      (factor, index) =>
        void features(place, ["more-likely", index, "when"], factor.when, known, report),
    );
  }
}

function sharedReferences(gathered: Gathered, known: KnownIds, report: Report): void {
  for (const place of gathered.parts.values()) {
    list(place, "alternates", place.value.alternates, known.part, report);
  }
  for (const place of [...gathered.tools.values(), ...gathered.access.values()]) {
    list(place, "cautions", place.value.cautions, known.hazard, report);
  }
  for (const place of gathered.redFlags.values()) {
    states(place, place.value["seen-as"], gathered, report, known, ["seen-as"]);
  }
  for (const place of gathered.hazards.values()) {
    list(place, "finds", place.value["needed-for"]?.finds, known.observation, report);
  }
  for (const place of gathered.forbidden.values()) {
    list(place, "finds", place.value.finds, known.observation, report);
    list(place, "access", place.value.access, known.access, report);
    list(place, "readings", place.value.readings?.allowed, known.observation, report);
  }
  for (const place of gathered.machines.values()) {
    const { systems, without } = place.value;
    list(place, "systems", systems === "all" ? [] : systems, known.system, report);
    list(place, "without", without, known.system, report);
    for (const id of Object.keys(place.value.features))
      report(place, ["features", id], id, known.feature);
  }
}

function missingMachines(gathered: Gathered): Problem[] {
  return machineKinds
    .filter((kind) => !gathered.machines.has(kind) && !gathered.broken.has(kind))
    .map((kind) => ({
      file: `flows/machines/${kind}.yaml`,
      says: "This machine kind has no file yet.",
    }));
}
