import { METER_OHMS } from "../../src/circuit/electrics.ts";
import type { LoadedMachine } from "../../src/circuit/moment.ts";
import type { ShaftLoad } from "../../src/circuit/motor.ts";
import { OPEN_OHMS } from "../../src/circuit/resistance.ts";
import type { KeyPosition } from "../../src/domain/circuit.ts";

/** One operating point of a loaded machine, to be solved by a circuit simulator on its own. */
export interface OperatingPoint {
  readonly key: KeyPosition;
  readonly closed: number;
  readonly heavy: boolean;
  /** The rotor turns against this; absent: it is held. */
  readonly load?: ShaftLoad;
}

/**
 * Writes the machine as a SPICE netlist. The motor is a behavioural source and its torque balance
 * another: the simulator finds current and speed itself.
 */
export function netlistOf(machine: LoadedMachine, point: OperatingPoint): string {
  const { assembly, electrics } = machine.simulator;
  const node = (number: number) => (number < 0 ? "0" : `n${number}`);
  const lines = [`* ${assembly.network.id}`];
  assembly.branches.forEach(({ part, from, to, actuator }, i) => {
    const shut =
      part.sort !== "contact" ||
      (actuator >= 0
        ? ((point.closed >> actuator) & 1) === 1
        : part.closed?.includes(point.key) === true);
    const ohms = shut ? 1 / (electrics.conductances[i] ?? 0) : OPEN_OHMS;
    lines.push(`R${i} ${node(from)} ${node(to)} ${ohms}`);
  });
  assembly.batteries.forEach(({ from, to }, i) => {
    const source = electrics.sources[i];
    if (source === undefined) return;
    const volts = source.emf - (point.heavy ? source.polarisation : 0);
    lines.push(
      `V${i} e${i} ${node(from)} ${volts}`,
      `RB${i} e${i} ${node(to)} ${1 / source.siemens}`,
    );
  });
  for (let p = 0; p < assembly.plan.points; p++) lines.push(`RM${p} n${p} 0 ${METER_OHMS}`);
  return [...lines, ...motorLines(machine, point), ...END].join("\n");
}

const END = [".options reltol=1e-12 abstol=1e-15 vntol=1e-13 gmin=1e-20 itl1=2000", ".op", ".end"];

function motorLines(machine: LoadedMachine, { load }: OperatingPoint): string[] {
  const { from, to } = machine.simulator.assembly.motor;
  const { ohms, flux, saturationAmps, brushVolts, frictionNm } = machine.rotor.motor;
  const node = (number: number) => (number < 0 ? "0" : `n${number}`);
  const sense = `VS ${node(from)} ms 0`;
  const across = to < 0 ? "v(ms)" : `(v(ms)-v(${node(to)}))`;
  // With the contact open nothing reaches the brushes and the motor takes no current.
  if (load === undefined) {
    return [sense, `BM ms ${node(to)} I=max(0,(${across}-${brushVolts})/${ohms})`];
  }
  const k = saturationAmps === 0 ? `${flux}` : `(${flux}*i(VS)/(i(VS)+${saturationAmps}))`;
  return [
    sense,
    `BM ms ${node(to)} V=${brushVolts}+${ohms}*i(VS)+${k}*v(w)`,
    `BW 0 w I=${k}*i(VS)-${frictionNm + load.fixedNm}`,
    `RW w 0 ${1 / load.perRadianNm}`,
    ".nodeset v(w)=150",
  ];
}
