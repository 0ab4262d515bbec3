import type { CircuitAct } from "../domain/circuit.ts";

/** Acts whose effect on an attempt is simulated; bridging only weighs what somebody reports. */
export const SIMULATED_ACTS = ["jump", "charge", "clean", "earth-lead", "bridge"] as const;

/** The machines of one hypothesis at one temperature band. */
export interface Block {
  readonly hypothesis: string;
  readonly machines: number;
  /** 1 where the owner would notice the fault, else 0: such machines count a tenth. */
  readonly noticed: Uint8Array;
  /** Code of what can be told without a meter, by observation; `key~act` for after an act. */
  readonly codes: Readonly<Record<string, Uint8Array>>;
  /** Readings in steps, by test point; `point@place` for another place, `point~act` after an act. */
  readonly readings: Readonly<Record<string, Int16Array>>;
}

/** What a block calls the symptom of an attempt. */
export const SYMPTOM = "symptom";

/** Name of a code or a reading, as found or after an act. */
export function afterKey(key: string, act?: CircuitAct): string {
  return act === undefined ? key : `${key}~${act}`;
}
