import type { Oil } from "../domain/circuit.ts";
import type { Assembly } from "./assembly.ts";

/** Where the mechanical figures of a circuit's machines stand. */
export interface RotorSlots {
  readonly oils: readonly Oil[];
  readonly of: Readonly<Record<MechanicalFigure, number>>;
}

const MECHANICAL = {
  ratio: "drive.ratio",
  efficiency: "drive.efficiency",
  engages: "drive.engages",
  drag: "engine.drag",
  dragFactor: "engine.drag-factor",
  referenceSpeed: "engine.reference-speed",
  oil: "engine.oil",
  usualOil: "engine.usual-oil",
  stiction: "engine.stiction",
  compression: "engine.compression",
  inertiaAssist: "engine.inertia-assist",
  locked: "engine.locked",
  waterLock: "engine.water-lock",
  position: "engine.position",
  slowBelow: "person.slow-below",
  ohms: "motor.resistance",
  flux: "motor.flux",
  saturation: "motor.saturation",
  brushVolts: "motor.brush-drop",
  friction: "motor.friction",
} as const;
type MechanicalFigure = keyof typeof MECHANICAL;

/** Finds the mechanical figures of a circuit once, for all its machines. */
export function rotorSlots(assembly: Assembly): RotorSlots {
  const slot = (name: MechanicalFigure): number => {
    const [part = "", figure = ""] = MECHANICAL[name].split(".");
    return assembly.slot(part === "motor" ? assembly.motor.part.id : part, figure);
  };
  return {
    oils: assembly.network.oils,
    of: {
      ratio: slot("ratio"),
      efficiency: slot("efficiency"),
      engages: slot("engages"),
      drag: slot("drag"),
      dragFactor: slot("dragFactor"),
      referenceSpeed: slot("referenceSpeed"),
      oil: slot("oil"),
      usualOil: slot("usualOil"),
      stiction: slot("stiction"),
      compression: slot("compression"),
      inertiaAssist: slot("inertiaAssist"),
      locked: slot("locked"),
      waterLock: slot("waterLock"),
      position: slot("position"),
      slowBelow: slot("slowBelow"),
      ohms: slot("ohms"),
      flux: slot("flux"),
      saturation: slot("saturation"),
      brushVolts: slot("brushVolts"),
      friction: slot("friction"),
    },
  };
}
