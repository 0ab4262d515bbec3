/** A starter motor: permanent magnet (`saturationAmps` 0) or series-wound. */
export interface Motor {
  readonly ohms: number;
  /** Newton metres per amp, which is volts per radian per second, with the field full. */
  readonly flux: number;
  /** Current at which a series field has reached half of its full strength, ≥ 0. */
  readonly saturationAmps: number;
  readonly brushVolts: number;
  /** Its own drag, in newton metres at the shaft. */
  readonly frictionNm: number;
}

/** What feeds the motor: a voltage behind a resistance. */
export interface Feed {
  readonly volts: number;
  readonly ohms: number;
}

/** A load as a straight line over shaft speed, in newton metres: fixed + perRadian × speed. */
export interface ShaftLoad {
  readonly fixedNm: number;
  readonly perRadianNm: number;
}

export interface RunningPoint {
  readonly amps: number;
  /** Radians per second at the motor's shaft. */
  readonly speed: number;
}

/** Halvings of the current's range: beyond 52 a double cannot tell the ends apart. */
const HALVINGS = 52;

/** Torque per amp at a current. */
export function fluxAt(motor: Motor, amps: number): number {
  if (motor.saturationAmps === 0) return motor.flux;
  return (motor.flux * amps) / (amps + motor.saturationAmps);
}

/** Current with the rotor held still, in amps, ≥ 0. */
export function stalledAmps(motor: Motor, feed: Feed): number {
  return Math.max(0, (feed.volts - motor.brushVolts) / (feed.ohms + motor.ohms));
}

/** Torque at the shaft with the rotor held still, less the motor's own drag. */
export function stalledTorque(motor: Motor, feed: Feed): number {
  const amps = stalledAmps(motor, feed);
  return fluxAt(motor, amps) * amps - motor.frictionNm;
}

/**
 * The steady speed at which the motor's torque equals its load.
 * @returns current and speed; speed 0 where the load holds it. Torque falls and load rises with
 *   speed, so there is exactly one such point, found by halving the range of currents.
 */
export function runningPoint(motor: Motor, feed: Feed, load: ShaftLoad): RunningPoint {
  const stalled = stalledAmps(motor, feed);
  if (fluxAt(motor, stalled) * stalled <= motor.frictionNm + load.fixedNm) {
    return { amps: stalled, speed: 0 };
  }
  const push = feed.volts - motor.brushVolts;
  const ohms = feed.ohms + motor.ohms;
  let low = 0;
  let high = stalled;
  for (let i = 0; i < HALVINGS; i++) {
    const amps = (low + high) / 2;
    const flux = fluxAt(motor, amps);
    const speed = (push - ohms * amps) / flux;
    if (flux * amps - motor.frictionNm < load.fixedNm + load.perRadianNm * speed) low = amps;
    else high = amps;
  }
  return { amps: high, speed: Math.max(0, (push - ohms * high) / fluxAt(motor, high)) };
}
