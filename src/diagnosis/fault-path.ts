import type { ActDone } from "../domain/evidence.ts";
import { type Model, NOTHING_WRONG, type Passed } from "./model.ts";
import { logSum } from "./something-else.ts";

/** log P(reports of a stretch of time | hypothesis), fresh and for an untouched machine. */
export interface LayerLog {
  readonly epoch: number;
  /** The reports stand for themselves. */
  readonly fresh: Float64Array;
  /** Nothing was cured since, so the same thing may simply have happened again. */
  readonly untouched: Float64Array;
}

/** An act that changes a simulated circuit, with the other groups' reports of the time after it. */
export interface PassageLog {
  readonly epoch: number;
  readonly passed: Passed;
  readonly besides: Omit<LayerLog, "epoch">;
}

export interface ActEffect {
  readonly outcome: ActDone["outcome"];
  /** P(gone or hidden afterwards | fault), by fault index. */
  readonly gone: Float64Array;
  /** The outcome was already told through an observation's own rows. */
  readonly toldElsewhere: boolean;
}

export interface Through {
  readonly act: ActEffect;
  readonly passage: PassageLog;
  readonly layer: LayerLog | undefined;
}

/** What is left of one hypothesis: both faults, the first, the second, none. */
export class FaultPath {
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

  /** The machines whose fault is all there go through the act; what went before goes by the rules. */
  through({ act, passage, layer }: Through, usuallyStarts: number): void {
    const h = this.#rowAt[0];
    const { known, inside, kept, gone } = passage.passed;
    if (known[h] !== 1) {
      this.act(act, usuallyStarts);
      if (layer !== undefined) this.see(layer);
      return;
    }
    const [whole, a, b, none] = this.#weights;
    this.#weights = [0, a, b, none];
    this.#move(act.gone[this.#a] ?? 0, this.#pair ? (act.gone[this.#b] ?? 0) : 1);
    const rest = this.#weights;
    // What is left once the circuit is cured: nothing, or the one fault that lies beyond it.
    const left = !this.#pair || inside[h] === 3 ? 3 : inside[h] === 1 ? 2 : 1;
    const { fresh, untouched } = passage.besides;
    const logs = this.#weights.map((_, k) => {
      const row = this.#rowAt[k] ?? 0;
      const before = Math.log(rest[k] ?? 0) + (layer?.fresh[row] ?? 0);
      if (k === 0) return Math.log(whole * (kept[h] ?? 0)) + (untouched[h] ?? 0);
      if (k !== left) return before;
      return logSum([before, Math.log(whole * (gone[h] ?? 0)) + (fresh[row] ?? 0)]);
    });
    const highest = logSum(logs);
    if (highest === -Infinity) {
      this.#weights = [0, 0, 0, 0];
      return;
    }
    this.#scale += highest;
    this.#weights = [1, 1, 1, 1];
    this.#reweigh((k) => Math.exp((logs[k] ?? -Infinity) - highest));
    if (act.toldElsewhere) return;
    if (act.outcome === "cured") this.#reweigh((k) => Number(this.#quiet[k]));
    if (act.outcome === "no-change") this.#reweigh((k) => Number(!this.#quiet[k]));
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
