import type { ReaderModel, ReaderObservation } from "../../src/domain/reading.ts";

const states: Readonly<Record<string, string>> = {
  "on-start":
    "nothing one-click fast-clicks slow turns-then-stops uneven kicks-back spins-alone grinds turns-no-fire fires-then-dies runs-only-while-held keeps-cranking starts",
  "engine-turns": "normal slow part-turn no",
  pattern: "every-time sometimes only-hot only-cold only-wet after-standing",
  "battery-goes-flat": "no overnight days weeks",
  "lights-on": "dead dim normal",
  "lights-at-start": "stay-bright dim go-out",
  "jump-start": "not-tried cured helped-but-slow ran-then-died no-change",
  "last-use": "hours days weeks months",
  "how-stopped": "switched-off-normally died-at-once faded under-load would-not-stop",
  "fuel-level": "seen-enough said-enough low empty",
  "fuel-age": "fresh months over-winter years",
  "fuel-reaches-engine": "yes weak no",
  "water-or-wax": "none water wax",
  spark: "good weak none",
  smoke: "none white black blue",
  "preheat-lamp": "normal never stays",
  "controls-moved": "no-change then-started",
  "joint-look": "clean corroded loose hot",
  outdoors: "hot mild frost hard-frost",
  "at-machine": "yes can-go no for-someone-else",
  "flooding-signs": "none smell drips",
  "plug-look": "dry wet sooty",
  "oil-look": "normal overfull milky smells-of-fuel low",
  "air-filter-look": "clean dirty blocked",
  "fuse-look": "good blown loose-or-burnt not-found",
  "turns-by-hand": "free stiff stuck",
  "fuel-valve-click": "clicks silent",
  "stop-valve-click": "clicks silent",
  "battery-age": "new middle old",
  "click-sound": "none faint loud repeated",
};

const events =
  "battery-removed jump-started charged pressure-washed welded hit-something tipped ran-dry refuelled flooded rodents-seen parts-replaced";

const work =
  "battery-work cable-work starter-work switch-work wiring-work fuel-work carburettor-work ignition-work engine-work oil-work deck-work";

/** Plausible readings on a 12 V machine; common practice. */
const volts: Readonly<Record<string, readonly [number, number]>> = {
  "battery-rest-volts": [0, 15],
  "battery-start-volts": [0, 14],
  "dash-volts-start": [0, 14],
  "stud-start-volts": [0, 14],
  "trigger-start-volts": [0, 14],
  "starter-start-volts": [0, 14],
  "key-feed-volts": [0, 15],
  "key-start-volts": [0, 14],
  "ground-drop-volts": [0, 13],
  "minus-clamp-drop-volts": [0, 13],
  "plus-clamp-drop-volts": [0, 13],
  "charging-volts": [10, 20],
};

/** The core observations, with titles as a shop might word them; enough to test the reader on. */
export function coreModel(): ReaderModel {
  const observations = new Map<string, ReaderObservation>();
  for (const [id, list] of Object.entries(states)) observations.set(id, stated(id, "states", list));
  observations.set("recent-event", stated("recent-event", "list", events));
  observations.set("recent-work", stated("recent-work", "list", work));
  for (const [id, plausible] of Object.entries(volts)) {
    const base = { id, title: id, kind: "number" as const, states: [] };
    observations.set(id, { ...base, unit: "V", scalesWithVolts: true, plausible });
  }
  for (const [id, most] of [
    ["starter-amps", 1500],
    ["resting-draw", 20],
  ] as const) {
    const base = { id, title: id, kind: "number" as const, states: [] };
    observations.set(id, { ...base, unit: "A", scalesWithVolts: false, plausible: [0, most] });
  }
  return {
    observations,
    machines: [
      machine("ride-on-mower", "ride-on mower, lawn tractor, riding mower"),
      machine("garden-tractor", "garden tractor"),
      machine("compact-tractor", "compact tractor, small tractor"),
      machine("utility-tractor", "utility tractor, tractor"),
      machine("row-crop-tractor", "row-crop tractor, big tractor"),
      machine("old-tractor", "old tractor, old farm tractor, vintage tractor"),
      machine("combine", "combine, combine harvester"),
      machine("skid-steer", "skid steer"),
      machine("backhoe-loader", "backhoe, backhoe loader"),
      machine("walk-behind", "walk-behind mower, push mower"),
    ],
  };
}

function stated(id: string, kind: ReaderObservation["kind"], list: string): ReaderObservation {
  const ids = list.split(" ").filter((state) => state !== "");
  const titled = ids.map((state) => ({ id: state, title: state.replaceAll("-", " ") }));
  return { id, title: id, kind, scalesWithVolts: false, states: titled };
}

function machine(
  id: ReaderModel["machines"][number]["id"],
  synonyms: string,
): ReaderModel["machines"][number] {
  return { id, synonyms: synonyms.split(", "), fuels: {}, volts: [] };
}
