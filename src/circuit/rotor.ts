import type { Oil } from "../domain/circuit.ts";
import { copperFactor } from "./copper.ts";
import { coldFactor, crankshaftDrag } from "./engine-drag.ts";
import type { MachineFigures } from "./machine.ts";
import {
  type Feed,
  type Motor,
  runningPoint,
  type ShaftLoad,
  stalledAmps,
  stalledTorque,
} from "./motor.ts";
import type { RotorSlots } from "./rotor-slots.ts";

/** What the starter's rotor does once its contact is shut. */
export interface Cranking {
  readonly how: "held" | "part-turn" | "slow" | "normal" | "spins-free" | "grinds";
  /** Mean motor current over a turn, in amps. */
  readonly amps: number;
  /** Mean speed of the crankshaft in rad/s; 0 when the engine does not keep turning. */
  readonly speed: number;
}

/** Share of a turn that is spent against the compression peak. */
const PEAK_SHARE = 0.2;
/** Share of water-locked engines that happen to stand right at the locked cylinder. */
const LOCKED_AT_ONCE = 0.4;
/** `engages` of a drive whose pinion meets the ring gear but finds no teeth to hold. */
const GRINDING = 0.5;
/** Drag against that of a healthy warm engine from which a hand calls it stiff. */
const STIFF_FACTOR = 1.9;

/** The mechanical side of one machine at one temperature. */
export interface Rotor {
  readonly motor: Motor;
  readonly ratio: number;
  /** Torque at the crankshaft for each newton metre at the motor's shaft. */
  readonly gain: number;
  /** Load at the motor's shaft between the compression peaks, and against one. */
  readonly easy: ShaftLoad;
  readonly hard: ShaftLoad;
  /** Torque at the crankshaft that sets the engine moving. */
  readonly breakAwayNm: number;
  /** Below this crankshaft speed people call it slow, in rad/s. */
  readonly slowBelow: number;
  readonly engages: number;
  readonly block: "none" | "locked" | "water" | "water-at-once";
  /** What a hand on the flywheel or fan feels. */
  readonly byHand: "free" | "stiff" | "stuck";
}

/** Reads the mechanical figures of a machine. */
export function createRotor(slots: RotorSlots, figures: MachineFigures, celsius: number): Rotor {
  const { of, oils } = slots;
  const at = (slot: number) => figures[slot] ?? 0;
  const cold = coldFactor(oilAt(oils, at(of.oil)), oilAt(oils, at(of.usualOil)), celsius);
  const factor = cold * at(of.dragFactor);
  const drag = crankshaftDrag(at(of.drag), factor, at(of.referenceSpeed));
  const ratio = at(of.ratio);
  const gain = ratio * at(of.efficiency);
  const peak = at(of.compression) / at(of.inertiaAssist);
  const perRadianNm = drag.perRadianNm / (gain * ratio);
  const water = at(of.waterLock) > 0;
  const atOnce = at(of.position) < LOCKED_AT_ONCE;
  const stuck = at(of.locked) === 1 || water;
  return {
    motor: {
      ohms: at(of.ohms) * copperFactor(celsius),
      flux: at(of.flux),
      saturationAmps: at(of.saturation),
      brushVolts: at(of.brushVolts),
      frictionNm: at(of.friction),
    },
    ratio,
    gain,
    easy: { fixedNm: drag.fixedNm / gain, perRadianNm },
    hard: { fixedNm: (drag.fixedNm + peak) / gain, perRadianNm },
    breakAwayNm: at(of.drag) * factor * at(of.stiction),
    slowBelow: at(of.slowBelow),
    engages: at(of.engages),
    block: at(of.locked) > 0 ? "locked" : !water ? "none" : atOnce ? "water-at-once" : "water",
    byHand: stuck ? "stuck" : factor > STIFF_FACTOR ? "stiff" : "free",
  };
}

/** What the rotor does with this supply. */
export function crank(rotor: Rotor, feed: Feed): Cranking {
  const held = { how: "held", amps: stalledAmps(rotor.motor, feed), speed: 0 } as const;
  const torque = stalledTorque(rotor.motor, feed);
  if (torque <= 0) return held;
  if (rotor.engages < 1) {
    const free = runningPoint(rotor.motor, feed, { fixedNm: 0, perRadianNm: 0 });
    return { how: rotor.engages === GRINDING ? "grinds" : "spins-free", amps: free.amps, speed: 0 };
  }
  const weak = torque * rotor.gain < rotor.breakAwayNm;
  if (weak || rotor.block === "locked" || rotor.block === "water-at-once") return held;
  if (rotor.block === "water") return { ...held, how: "part-turn" };
  return turnOver(rotor, feed);
}

/**
 * Current and speed over a turn with one compression peak in it. The speed is the mean over time;
 * the current the mean over the angle, because the turning masses even the speed out and the work
 * of a turn is what it is: slow for want of volts means no more current, slow from drag does.
 */
function turnOver(rotor: Rotor, feed: Feed): Cranking {
  const hard = runningPoint(rotor.motor, feed, rotor.hard);
  if (hard.speed === 0) return { how: "part-turn", amps: hard.amps, speed: 0 };
  const easy = runningPoint(rotor.motor, feed, rotor.easy);
  const peakTime = PEAK_SHARE / hard.speed;
  const easyTime = (1 - PEAK_SHARE) / easy.speed;
  const whole = peakTime + easyTime;
  const speed = 1 / whole / rotor.ratio;
  return {
    how: speed < rotor.slowBelow ? "slow" : "normal",
    amps: PEAK_SHARE * hard.amps + (1 - PEAK_SHARE) * easy.amps,
    speed,
  };
}

function oilAt(oils: readonly Oil[], number: number): Oil {
  const oil = oils[number];
  if (oil === undefined) throw new RangeError(`there is no oil number ${number}`);
  return oil;
}
