import type { Spread } from "../domain/circuit.ts";
import { type Dimension, readSpread, type Scale } from "./circuit-quantity.ts";

/** The figures of each sort of part and section, what they measure and whether they must stand. */
interface FigureRule {
  readonly dimension: Dimension;
  readonly optional?: true;
  /** Offsets and the like may be below zero; everything else may not. */
  readonly signed?: true;
}

const ohms: FigureRule = { dimension: "ohms" };
const maybePlain: FigureRule = { dimension: "plain", optional: true };
const torque: FigureRule = { dimension: "torque" };
const volts: FigureRule = { dimension: "volts" };
/** What a joint, or the ends of a cable, may have: a contact that opens under load. */
const joint: Readonly<Record<string, FigureRule>> = {
  resistance: ohms,
  "parts-at": { dimension: "volts", optional: true },
  "stays-parted": maybePlain,
};

export const FIGURES: Readonly<Record<string, Readonly<Record<string, FigureRule>>>> = {
  battery: {
    nominal: volts,
    cca: { dimension: "amps" },
    charge: { dimension: "share" },
    age: maybePlain,
    offset: { dimension: "volts", optional: true, signed: true },
    polarisation: { dimension: "volts", optional: true },
    "added-resistance": { dimension: "ohms", optional: true },
    dead: { dimension: "share", optional: true },
  },
  cable: { size: { dimension: "square-mm" }, length: { dimension: "metres" }, ...joint },
  joint,
  fuse: joint,
  isolator: joint,
  interlock: { resistance: ohms },
  contact: { resistance: ohms },
  resistor: { resistance: ohms },
  coil: { resistance: ohms, turns: maybePlain },
  lamp: { power: { dimension: "watts" } },
  motor: {
    resistance: ohms,
    flux: { dimension: "flux" },
    saturation: { dimension: "amps", optional: true },
    "brush-drop": volts,
    friction: torque,
  },
  actuator: { "pull-in": volts, "drop-out": volts, stick: maybePlain },
  drive: { ratio: { dimension: "plain" }, efficiency: { dimension: "share" }, engages: maybePlain },
  engine: {
    drag: torque,
    "drag-factor": maybePlain,
    "reference-speed": { dimension: "speed" },
    oil: { dimension: "oil" },
    "usual-oil": { dimension: "oil" },
    stiction: { dimension: "plain" },
    compression: torque,
    "inertia-assist": { dimension: "plain" },
    locked: maybePlain,
    "water-lock": maybePlain,
    position: { dimension: "share" },
  },
  person: {
    "bright-from": { dimension: "share" },
    "slow-below": { dimension: "speed" },
    "meter-duty": { dimension: "share" },
    twitch: { dimension: "share" },
    "hears-faint": { dimension: "share" },
  },
  running: { charging: volts },
};

export type ComplainAt = (path: readonly PropertyKey[], says: string) => undefined;

/**
 * Reads all figures of one part or section.
 * @param sort key of `FIGURES` · @param written figure name → text · @param path of the part
 */
export function readFigures(
  sort: string,
  written: Readonly<Record<string, string>>,
  path: readonly PropertyKey[],
  scale: Scale,
  complain: ComplainAt,
): Record<string, Spread> {
  const rules = FIGURES[sort] ?? {};
  const read: Record<string, Spread> = {};
  for (const [figure, text] of Object.entries(written)) {
    const rule = rules[figure];
    const at = [...path, figure];
    if (rule === undefined) {
      complain(at, `a ${sort} has no "${figure}"; it has ${Object.keys(rules).join(", ")}`);
      continue;
    }
    const spread = readSpread(text, rule.dimension, scale, (says) => complain(at, says));
    if (spread === undefined) continue;
    if (rule.signed === undefined && lowest(spread) < 0) {
      complain(at, `"${text}": the ${figure} of a ${sort} cannot be below zero`);
    } else read[figure] = spread;
  }
  for (const [figure, rule] of Object.entries(rules)) {
    if (rule.optional === undefined && written[figure] === undefined) {
      complain(path, `this ${sort} lacks its ${figure}`);
    }
  }
  return read;
}

/** The least value that is written, which must already be possible. */
function lowest(spread: Spread): number {
  switch (spread.kind) {
    case "exact":
      return spread.value;
    case "even":
      return spread.low;
    case "choice":
      return Math.min(...spread.choices.map((choice) => lowest(choice.spread)));
    default:
      return Math.min(spread.middle, spread.low ?? spread.middle);
  }
}

/** The rule of a figure for a change; sections are named by themselves. */
export function figureDimension(sort: string, figure: string): Dimension | undefined {
  return FIGURES[sort]?.[figure]?.dimension;
}
