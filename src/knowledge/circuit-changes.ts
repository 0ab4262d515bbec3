import type { CircuitChange, FigureChange } from "../domain/circuit.ts";
import { type ComplainAt, figureDimension } from "./circuit-figures.ts";
import { readChange, type Scale } from "./circuit-quantity.ts";
import type { ChangesShape } from "./circuit-schema.ts";

/** Sort of each part, actuator and section of a circuit, by id. */
export type Sorts = ReadonlyMap<string, string>;

/**
 * Reads what a fault or an act changes.
 * @returns the changes, in the order written; those that cannot be read are complained about
 */
export function readChanges(
  written: ChangesShape,
  path: readonly PropertyKey[],
  context: { readonly sorts: Sorts; readonly scale: Scale; readonly complain: ComplainAt },
): CircuitChange[] {
  const { sorts, scale, complain } = context;
  return written.map(({ weight, ...settings }, i) => ({
    weight,
    settings: Object.entries(settings).flatMap(([target, text]): FigureChange[] => {
      const at = [...path, i, target];
      const [part = "", figure = ""] = target.split(".");
      const dimension = figureDimension(sorts.get(part) ?? "", figure);
      if (dimension === undefined) {
        const why = sorts.has(part) ? `"${part}" has no "${figure}"` : `there is no "${part}"`;
        complain(at, `"${target}": ${why}; write part.figure, for instance fuse.resistance`);
        return [];
      }
      const change = readChange(text, dimension, scale, (says) => complain(at, says));
      return change === undefined ? [] : [{ part, figure, ...change }];
    }),
  }));
}

/** Whether a circuit has every part that a fault changes. */
export function fits(written: ChangesShape, sorts: Sorts): boolean {
  return written.every(({ weight: _, ...settings }) =>
    Object.keys(settings).every((target) => sorts.has(target.split(".")[0] ?? "")),
  );
}
