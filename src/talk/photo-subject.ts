import type { CaseState } from "../domain/case-state.ts";
import type { CauseGroup } from "../domain/vocabulary.ts";
import type { Desk } from "./desk.ts";

/** What one photo can show, and the kinds of causes that can be seen on it. */
const subjects: Readonly<Record<string, readonly CauseGroup[]>> = {
  battery: ["battery", "terminals", "ground", "power-cable", "charging", "parasitic"],
  fuse: ["fuse-breaker"],
  starter: ["relay-solenoid", "starter-motor", "starter-drive"],
  fuel: ["fuel"],
  plug: ["ignition"],
  controls: ["interlock", "operator-setting", "key-switch", "wiring-controller"],
};

/** Most is seen on it, and everybody knows where it is. */
const USUAL = "battery";

/**
 * What the one photo should show: that on which most of the belief could be seen.
 */
export function photoSubject(state: CaseState, desk: Desk): string {
  const { causes } = desk.triage(state, "operator").ranking;
  const seen = (groups: readonly CauseGroup[]) =>
    causes
      .filter(({ group }) => groups.includes(group))
      .reduce((sum, { probability }) => sum + probability, 0);
  const ranked = Object.entries(subjects)
    .map(([subject, groups]) => ({ subject, share: seen(groups) }))
    .sort((a, b) => b.share - a.share);
  return ranked[0]?.subject ?? USUAL;
}
