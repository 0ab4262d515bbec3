import type { CircuitAct } from "../domain/circuit.ts";
import type { ActDone } from "../domain/evidence.ts";
import type { Arranged } from "./arrange.ts";
import { doneAct } from "./done-act.ts";
import { type Measured, type Model, NOTHING_SEEN, type Passage, type Passed } from "./model.ts";

/** An act that changes a simulated circuit, and what its group says through it. */
export interface CircuitPassage {
  readonly epoch: number;
  readonly group: number;
  readonly passed: Passed;
}

/** Afterwards the circuit is again as it was: jump pack and extra lead come off. */
const PASSING: readonly CircuitAct[] = ["jump", "earth-lead", "bridge"];

/**
 * The acts through which a simulated circuit can be followed: the first that changes it for good,
 * and any that do for the moment. What comes after two lasting changes is weighed as before, by
 * what each act cures.
 */
export function passagesOf(model: Model, arranged: Arranged): readonly CircuitPassage[] {
  const lasting = arranged.acts.filter((done) => lasts(model, done)).map(({ epoch }) => epoch);
  const first = lasting[0] ?? Infinity;
  return model.groups.flatMap((group, index) => {
    if (group.passThrough === undefined) return [];
    return arranged.acts.flatMap((done): CircuitPassage[] => {
      const { inCircuit: act, ...rest } = doneAct(model.knowledge, done);
      if (act === undefined || done.epoch > first) return [];
      const found = asFound(model, arranged, { group: index, before: done.epoch });
      const layer = arranged.layers.find(({ epoch }) => epoch === done.epoch);
      const passed = group.passThrough?.({
        ...{ act, doneWell: doneWell(rest), ...found },
        after: layer?.groups.get(index) ?? NOTHING_SEEN,
        measuredAfter: layer?.measured ?? new Map(),
      });
      return passed === undefined ? [] : [{ epoch: done.epoch, group: index, passed }];
    });
  });
}

function lasts(model: Model, done: ActDone): boolean {
  const { inCircuit } = doneAct(model.knowledge, done);
  return inCircuit !== undefined && !PASSING.includes(inCircuit);
}

/** The fault that an act cures or hides best tells how well it is usually done. */
function doneWell({ cures, masks }: Pick<ReturnType<typeof doneAct>, "cures" | "masks">): number {
  const faults = new Set([...cures.keys(), ...masks.keys()]);
  const chances = [...faults].map((fault) => (cures.get(fault) ?? 0) + (masks.get(fault) ?? 0));
  return Math.min(1, Math.max(0, ...chances));
}

/** What was seen of the group while its circuit was as found. */
function asFound(
  model: Model,
  arranged: Arranged,
  of: { readonly group: number; readonly before: number },
): Pick<Passage, "before" | "measured"> {
  const changed = new Set(
    arranged.acts
      .filter((done) => doneAct(model.knowledge, done).inCircuit !== undefined)
      .map(({ epoch }) => epoch),
  );
  const layers = arranged.layers.filter(({ epoch }) => epoch < of.before && !changed.has(epoch));
  const before = new Map<string, Float64Array>();
  for (const { groups } of layers) {
    for (const [id, likelihood] of groups.get(of.group) ?? []) {
      const earlier = before.get(id);
      const told = earlier?.map((value, s) => value * (likelihood[s] ?? 1));
      before.set(id, told ?? likelihood);
    }
  }
  const measured = new Map<string, readonly Measured[]>();
  for (const [id, readings] of layers.flatMap((layer) => [...layer.measured])) {
    measured.set(id, [...(measured.get(id) ?? []), ...readings]);
  }
  return { before, measured };
}
