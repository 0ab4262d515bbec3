import { describe, expect, it } from "vitest";
import { shippedKnowledge } from "../helpers/shipped.ts";

const knowledge = await shippedKnowledge();

/** How many times oftener something happened before this fault than before others. */
function oftener(fault: string, observation: string, member: string): number {
  const seen = knowledge.observations.get(observation);
  const at = seen?.states.findIndex(({ id }) => id === member) ?? -1;
  const usual = seen?.usual[at];
  if (usual === undefined) throw new Error(`no ${observation} ${member}`);
  const row = knowledge.faults.get(fault)?.rows.get(observation);
  return (row?.[at] ?? usual) / usual;
}

// Common practice: what a mechanic looks at first where somebody was at work before.
const LEFT_BEHIND: readonly (readonly [string, string])[] = [
  ["starter-work", "start-wire-broken solenoid-wire-broken drive-not-engaging starter-jammed"],
  ["starter-work", "earth-strap-corroded plus-cable-bad plus-cable-touches-metal"],
  ["battery-work", "battery-lead-off plus-clamp-corroded minus-clamp-corroded frame-earth-bad"],
  ["cable-work", "battery-lead-off earth-strap-broken frame-earth-bad wired-wrong"],
  ["switch-work", "seat-switch-failed interlock-wire-off start-wire-broken wired-wrong"],
  ["wiring-work", "wire-shorted fuse-blown parasitic-draw wired-wrong dash-feed-broken"],
  ["fuel-work", "diesel-air hoses-wrong fuel-tap-shut tank-leaks"],
  ["carburettor-work", "intake-air-leak carburettor-overflows choke-stuck hoses-wrong"],
  ["ignition-work", "leads-crossed plug-lead-off kill-wire-earthed"],
  ["engine-work", "timing-slipped valve-gap-wide earth-strap-broken diesel-air"],
  ["lever-work", "neutral-switch-failed seat-switch-failed interlock-wire-off"],
  ["oil-work", "hydrolock thick-oil oil-low-stop"],
  ["deck-work", "pto-switch-failed load-left-engaged pto-clutch-stuck"],
];

describe("work done lately", () => {
  it.each(LEFT_BEHIND)("%s makes more likely what it leaves behind: %s", (work, faults) => {
    for (const fault of faults.split(" ")) {
      expect(oftener(fault, "recent-work", work), fault).toBeGreaterThan(1.35);
    }
  });

  it("is listed here for every kind of work", () => {
    const kinds = knowledge.observations.get("recent-work")?.states.map(({ id }) => id);
    expect([...new Set(LEFT_BEHIND.map(([work]) => work))].sort()).toEqual(
      [...(kinds ?? [])].sort(),
    );
  });

  it.each([
    ["battery-work", "battery-sulphated"],
    ["ignition-work", "plug-fouled"],
    ["starter-work", "starter-brushes-worn"],
    ["fuel-work", "diesel-filter-blocked"],
  ])("%s speaks against %s, but a new part may be the wrong one", (work, fault) => {
    expect(oftener(fault, "recent-work", work)).toBeLessThan(0.8);
    expect(oftener(fault, "recent-work", work)).toBeGreaterThan(0.2);
  });
});

describe("what happened before", () => {
  it.each([
    ["welded", "battery-lead-off fuse-blown charging-failed controller-damaged"],
    ["battery-removed", "battery-lead-off frame-earth-bad dash-feed-broken"],
    ["rodents-seen", "start-wire-broken kill-wire-earthed bare-wire-draw"],
    ["ran-dry", "diesel-air diesel-filter-blocked"],
    ["tipped", "hydrolock flooded plug-fouled"],
  ])("%s points to what it does to a machine: %s", (event, faults) => {
    for (const fault of faults.split(" ")) {
      expect(oftener(fault, "recent-event", event), fault).toBeGreaterThan(1.5);
    }
  });
});

describe("a machine that is started by its cord alone", () => {
  it("is never told to be tried from a seat", () => {
    const possible = [...knowledge.acts.values()].filter(
      ({ needs, performers }) =>
        performers.includes("operator") &&
        !(needs.features ?? []).some((feature) => feature !== "choke" && feature !== "fuel-tap") &&
        needs.kinds?.includes("walk-behind") !== false,
    );
    expect(possible.map(({ id }) => id)).toContain("cold-start");
    for (const { id, ask } of possible) expect(ask, id).not.toMatch(/from the seat/);
  });
});
