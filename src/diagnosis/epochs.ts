import type { ActDone } from "../domain/evidence.ts";
import { OutOfRange } from "../domain/result.ts";
import { firingStates, ON_START } from "../domain/vocabulary.ts";
import type { Arranged } from "./arrange.ts";
import { type Done, doneAct } from "./done-act.ts";
import { type Model, NOTHING_WRONG } from "./model.ts";

/** log P(reports of a stretch of time | hypothesis), fresh and for an untouched machine. */
export interface LayerLog {
  readonly epoch: number;
  /** The reports stand for themselves. */
  readonly fresh: Float64Array;
  /** Nothing was cured since, so the same thing may simply have happened again. */
  readonly untouched: Float64Array;
}

interface ActEffect {
  readonly outcome: ActDone["outcome"];
  /** P(gone or hidden afterwards | fault), by fault index. */
  readonly gone: Float64Array;
  /** The outcome was already told through an observation's own rows. */
  readonly toldElsewhere: boolean;
}

type Event = { readonly layer: LayerLog } | { readonly act: ActEffect };

/**
 * log P(all reports and outcomes | hypothesis) when something was done to the machine in between.
 * After each act every fault of the hypothesis is still there, cured or hidden; what remains is
 * itself a hypothesis, and the later reports are about that one. Curing one of a pair exposes the
 * other.
 */
export function logThroughActs(
  model: Model,
  arranged: Arranged,
  layers: readonly LayerLog[],
): Float64Array {
  const events = timeline(model, arranged, layers);
  const blocking = model.hypotheses.faults.map(
    (id) => model.knowledge.faults.get(id)?.blocks !== "none",
  );
  const usuallyStarts = startsUsually(model);
  const logs = new Float64Array(model.hypotheses.count - 1);
  for (let h = 0; h < logs.length; h++) {
    const path = new Path(model, h, blocking);
    for (const event of events) {
      if ("layer" in event) path.see(event.layer);
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

function timeline(model: Model, arranged: Arranged, layers: readonly LayerLog[]): Event[] {
  const reported = new Set(
    arranged.layers.flatMap((layer) => [...layer.groups.values()].flatMap((s) => [...s.keys()])),
  );
  const acts = arranged.acts.map((done) => {
    const act = doneAct(model.knowledge, done);
    const toldElsewhere = act.yields !== undefined && reported.has(act.yields);
    const effect = { outcome: done.outcome, gone: goneBy(model, act), toldElsewhere };
    return { epoch: done.epoch, event: { act: effect }, rank: 0 };
  });
  const seen = layers.map((layer) => ({ epoch: layer.epoch, event: { layer }, rank: 1 }));
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

/** What is left of one hypothesis: both faults, the first, the second, none. */
class Path {
  readonly #pair: boolean;
  readonly #a: number;
  readonly #b: number;
  readonly #rowAt: readonly [number, number, number, number];
  /** Whether the complaint is gone in each of the four. */
  readonly #quiet: readonly [boolean, boolean, boolean, boolean];
  #weights: [number, number, number, number] = [1, 0, 0, 0];
  #scale = 0;

  constructor(model: Model, h: number, blocking: readonly boolean[]) {
    this.#a = model.hypotheses.first[h] ?? -1;
    this.#b = model.hypotheses.second[h] ?? -1;
    this.#pair = this.#b >= 0;
    this.#rowAt = [h, this.#a + 1, this.#b + 1, NOTHING_WRONG];
    const left = [blocking[this.#a] !== true, blocking[this.#b] !== true] as const;
    this.#quiet = [false, this.#pair && left[0], this.#pair && left[1], true];
  }

  see(layer: LayerLog): void {
    const logs = this.#weights.map((weight, k) => {
      if (weight === 0) return -Infinity;
      const row = this.#rowAt[k] ?? 0;
      return (k === 0 ? layer.untouched[row] : layer.fresh[row]) ?? -Infinity;
    });
    const highest = Math.max(...logs);
    if (highest === -Infinity) {
      this.#weights = [0, 0, 0, 0];
      return;
    }
    this.#scale += highest;
    this.#reweigh((k) => Math.exp((logs[k] ?? -Infinity) - highest));
  }

  act(act: ActEffect, usuallyStarts: number): void {
    if (this.#a < 0) {
      if (act.toldElsewhere) return;
      if (act.outcome === "cured") this.#reweigh(() => usuallyStarts);
      if (act.outcome === "no-change") this.#reweigh(() => 1 - usuallyStarts);
      return;
    }
    const before = this.#total();
    this.#move(act.gone[this.#a] ?? 0, this.#pair ? (act.gone[this.#b] ?? 0) : 1);
    const kept = this.#weights;
    if (act.outcome === "cured") this.#reweigh((k) => Number(this.#quiet[k]));
    if (act.outcome === "no-change") this.#reweigh((k) => Number(!this.#quiet[k]));
    if (!act.toldElsewhere) return;
    const after = this.#total();
    if (after > 0) this.#reweigh(() => before / after);
    else this.#weights = kept;
  }

  #move(goneA: number, goneB: number): void {
    const [both, onlyA, onlyB, none] = this.#weights;
    if (!this.#pair) {
      this.#weights = [both * (1 - goneA), 0, 0, none + both * goneA];
      return;
    }
    this.#weights = [
      both * (1 - goneA) * (1 - goneB),
      both * (1 - goneA) * goneB + onlyA * (1 - goneA),
      both * goneA * (1 - goneB) + onlyB * (1 - goneB),
      both * goneA * goneB + onlyA * goneA + onlyB * goneB + none,
    ];
  }

  #reweigh(factor: (k: number) => number): void {
    const [both, onlyA, onlyB, none] = this.#weights;
    this.#weights = [both * factor(0), onlyA * factor(1), onlyB * factor(2), none * factor(3)];
  }

  #total(): number {
    const [both, onlyA, onlyB, none] = this.#weights;
    return both + onlyA + onlyB + none;
  }

  log(): number {
    return this.#scale + Math.log(this.#total());
  }
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
