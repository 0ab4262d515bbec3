import type { CircuitChange } from "../domain/circuit.ts";
import type { Assembly } from "./assembly.ts";
import type { Random } from "./random.ts";
import { choose, drawFigure, middleOf } from "./spread.ts";

/** One simulated machine: its figures in the order of the assembly's slots. */
export type MachineFigures = Float64Array;

/** Draws a machine without a fault. */
export function drawMachine(assembly: Assembly, random: Random): MachineFigures {
  const size = drawFigure(assembly.network.size, random);
  const { slots } = assembly;
  const figures = new Float64Array(slots.length);
  for (let i = 0; i < slots.length; i++) {
    const slot = slots[i];
    if (slot === undefined) continue;
    const value = drawFigure(slot.spread, random);
    figures[i] = slot.growth === 0 ? value : value * size ** slot.growth;
  }
  setThresholds(assembly, figures);
  return figures;
}

/** The ordinary machine: every figure in the middle of its spread. */
export function middleMachine(assembly: Assembly): MachineFigures {
  const figures = Float64Array.from(assembly.slots, ({ spread }) => middleOf(spread));
  setThresholds(assembly, figures);
  return figures;
}

/**
 * An actuator closes and lets go at the ampere turns that its healthy coils make at the stated
 * volts and 20 °C.
 */
function setThresholds(assembly: Assembly, figures: MachineFigures): void {
  const of = (part: string, figure: string) => figures[assembly.slot(part, figure)] ?? 0;
  for (const { id, coils, hold } of assembly.actuators) {
    const turnsPerOhm = (coil: string) => of(coil, "turns") / of(coil, "resistance");
    const all = coils.reduce((sum, coil) => sum + turnsPerOhm(coil), 0);
    figures[assembly.slot(id, "needed")] = of(id, "pull-in") * all;
    figures[assembly.slot(id, "kept")] = of(id, "drop-out") * turnsPerOhm(hold);
  }
}

/**
 * Applies a fault, or an act, to a machine.
 * @param figures the machine before; not changed
 * @param changes what may be different, one of them is drawn by weight
 * @returns the machine after
 */
export function changeMachine(
  assembly: Assembly,
  figures: MachineFigures,
  changes: readonly CircuitChange[],
  random: Random,
): MachineFigures {
  const after = figures.slice();
  if (changes.length === 0) return after;
  for (const setting of choose(changes, random).settings) {
    const value = drawFigure(setting.value, random);
    const slot = assembly.slot(setting.part, setting.figure);
    if (slot < 0) {
      const name = `${setting.part}.${setting.figure}`;
      throw new RangeError(`the circuit ${assembly.network.id} has no figure "${name}"`);
    }
    const before = after[slot] ?? 0;
    after[slot] =
      setting.how === "becomes" ? value : setting.how === "plus" ? before + value : before * value;
  }
  return after;
}
