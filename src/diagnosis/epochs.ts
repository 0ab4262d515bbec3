import type { ActDone } from "../domain/evidence.ts";
import { OutOfRange } from "../domain/result.ts";
import { firingStates, ON_START } from "../domain/vocabulary.ts";
import type { Arranged } from "./arrange.ts";
import { type Done, doneAct } from "./done-act.ts";
import {
  type ActEffect,
  FaultPath,
  type LayerLog,
  type PassageLog,
  type Through,
} from "./fault-path.ts";
import type { Model } from "./model.ts";

type Event =
  | { readonly layer: LayerLog }
  | { readonly act: ActEffect }
  | { readonly through: Through };

/**
 * log P(all reports and outcomes | hypothesis) when something was done to the machine in between.
 * After each act every fault of the hypothesis is still there, cured or hidden; what remains is
 * itself a hypothesis, and the later reports are about that one. Curing one of a pair exposes the
 * other. Where the circuit is simulated through an act, its machines tell what became of the fault.
 */
export function logThroughActs(
  model: Model,
  arranged: Arranged,
  told: { readonly layers: readonly LayerLog[]; readonly passages: readonly PassageLog[] },
): Float64Array {
  const events = timeline(model, arranged, told);
  const blocking = model.hypotheses.faults.map(
    (id) => model.knowledge.faults.get(id)?.blocks !== "none",
  );
  const usuallyStarts = startsUsually(model);
  const logs = new Float64Array(model.hypotheses.count - 1);
  for (let h = 0; h < logs.length; h++) {
    const path = new FaultPath(model, h, blocking);
    for (const event of events) {
      if ("layer" in event) path.see(event.layer);
      else if ("through" in event) path.through(event.through, usuallyStarts);
      else path.act(event.act, usuallyStarts);
    }
    logs[h] = path.log();
  }
  return logs;
}

/** P(outcome | something else): half what the known faults say, half even. */
export function actSomethingElse(model: Model, done: ActDone): number {
  if (done.outcome !== "cured" && done.outcome !== "no-change") return 1;
  const gone = goneBy(model, doneAct(model.knowledge, done));
  const { prior, first } = model.hypotheses;
  let sum = 0;
  let mass = 0;
  for (let h = 1; h <= model.hypotheses.faults.length; h++) {
    sum += (prior[h] ?? 0) * (gone[first[h] ?? 0] ?? 0);
    mass += prior[h] ?? 0;
  }
  const cured = 0.5 * (mass > 0 ? sum / mass : 0) + 0.25;
  return done.outcome === "cured" ? cured : 1 - cured;
}

/** P(gone or hidden after the act | fault), by fault index. */
export function goneBy(model: Model, act: Done): Float64Array {
  return Float64Array.from(model.hypotheses.faults, (id) => {
    const chance = (act.cures.get(id) ?? 0) + (act.masks.get(id) ?? 0);
    if (!(chance >= 0 && chance <= 1 + 1e-9))
      throw new OutOfRange(`${act.id} ${id}`, chance, "in [0, 1]");
    return Math.min(1, chance);
  });
}

function timeline(
  model: Model,
  arranged: Arranged,
  { layers, passages }: Parameters<typeof logThroughActs>[2],
): Event[] {
  const reported = new Set(
    arranged.layers.flatMap((layer) => [...layer.groups.values()].flatMap((s) => [...s.keys()])),
  );
  const acts = arranged.acts.map((done) => {
    const act = doneAct(model.knowledge, done);
    const toldElsewhere = act.yields !== undefined && reported.has(act.yields);
    const { curedByTheWay } = model.knowledge.rates;
    const gone = goneBy(model, act).map((chance) => Math.max(chance, curedByTheWay));
    const effect = { outcome: done.outcome, gone, toldElsewhere };
    const { epoch } = done;
    const passage = passages.find((one) => one.epoch === epoch);
    if (passage === undefined) return { epoch, event: { act: effect }, rank: 0 };
    const layer = layers.find((one) => one.epoch === epoch);
    return { epoch, event: { through: { act: effect, passage, layer } }, rank: 0 };
  });
  const seen = layers
    .filter(({ epoch }) => !passages.some((one) => one.epoch === epoch))
    .map((layer) => ({ epoch: layer.epoch, event: { layer }, rank: 1 }));
  return [...acts, ...seen]
    .sort((a, b) => a.epoch - b.epoch || a.rank - b.rank)
    .map((entry) => entry.event);
}

/** P(it starts | nothing wrong); 1 where the knowledge has no such observation. */
function startsUsually(model: Model): number {
  const start = model.observations.get(ON_START);
  const runs = start?.stateIndex.get(firingStates[firingStates.length - 1] ?? "");
  return runs === undefined ? 1 : (start?.source.usual[runs] ?? 1);
}

/**
 * P(nothing is left | hypothesis, an act or remedy) given its chance to cure each fault. Both of a
 * pair must go: curing only the consequence is a comeback.
 */
export function goneForGood(
  { first, second }: Model["hypotheses"],
  h: number,
  byFault: Float64Array,
): number {
  const a = first[h] ?? -1;
  const b = second[h] ?? -1;
  if (a < 0) return 0;
  return (byFault[a] ?? 0) * (b < 0 ? 1 : (byFault[b] ?? 0));
}
