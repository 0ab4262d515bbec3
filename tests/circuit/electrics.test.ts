import { describe, expect, it } from "vitest";
import { assemble } from "../../src/circuit/assembly.ts";
import { keyStart, keyStill } from "../../src/circuit/attempt.ts";
import { batteryOhms, restVolts } from "../../src/circuit/battery.ts";
import { changeMachine, drawMachine, middleMachine } from "../../src/circuit/machine.ts";
import { createSimulator, loadMachine } from "../../src/circuit/moment.ts";
import { createRandom } from "../../src/circuit/random.ts";
import type { CircuitNetwork } from "../../src/domain/circuit.ts";
import { circuitNamed, machineWith, shippedCircuits, voltsOf } from "../helpers/circuits.ts";

/** Covers assembly, drawing of machines, resistances and network against circuits by hand. */
describe("the circuit as a network", () => {
  it("feeds lamps through a divider worked by hand", () => {
    const circuit = circuitNamed("garden-tractor");
    const machine = machineWith(circuit, { "fuse.resistance": 2 });
    const { volts } = keyStill(machine, "on");
    const figure = (part: string, name: string) =>
      machine.figures[machine.simulator.assembly.slot(part, name)] ?? 0;
    const lamp = 144 / figure("lamps", "power");
    // Everything between post and lamp by its figures; wires at 17.241 nanoohm metres.
    const wire = (part: string) =>
      (0.017241 * figure(part, "length")) / figure(part, "size") + figure(part, "resistance");
    const path =
      batteryOhms({
        ...{ nominalVolts: 12, celsius: 20, cca: figure("battery", "cca") },
        ...{ charge: figure("battery", "charge"), age: figure("battery", "age") },
      }) +
      figure("plus-clamp", "resistance") +
      wire("plus-cable") +
      wire("feed-wire") +
      2 +
      wire("key-wire") +
      figure("key-supply", "resistance") +
      figure("key-run", "resistance") +
      figure("frame-earth", "resistance") +
      wire("earth-strap") +
      figure("minus-clamp", "resistance");
    const emf = restVolts({ ...{ nominalVolts: 12, celsius: 20, cca: 1, age: 1 }, charge: 0.875 });
    const across = voltsOf(machine, volts, "dash") - voltsOf(machine, volts, "frame");
    // The standing leak and the meters take less than a milliamp.
    expect(across).toBeCloseTo((emf * lamp) / (lamp + path), 3);
  });

  it("lets two batteries side by side share: the fuller one carries the flat one", () => {
    const circuit = circuitNamed("row-crop-tractor");
    const both = machineWith(circuit, { "battery-2.charge": 0.2 });
    const off = keyStill(both, "off");
    const full = restVolts({ ...{ nominalVolts: 12, celsius: 20, cca: 1, age: 1 }, charge: 0.875 });
    const flat = restVolts({ ...{ nominalVolts: 12, celsius: 20, cca: 1, age: 1 }, charge: 0.2 });
    const posts = voltsOf(both, off.volts, "live-post");
    expect(posts).toBeLessThan(full);
    expect(posts).toBeGreaterThan(flat);
    expect(off.batteryAmps).toBeGreaterThan(1);
  });

  it("stacks two batteries in series to 24 V", () => {
    const machine = machineWith(circuitNamed("combine-24v"), {});
    const rest = keyStill(machine, "off").volts;
    expect(voltsOf(machine, rest, "live-post")).toBeGreaterThan(24.9);
    expect(voltsOf(machine, rest, "live-2")).toBeCloseTo(
      voltsOf(machine, rest, "live-post") / 2,
      1,
    );
  });

  it("cuts everything off in either lead by the isolator", () => {
    for (const id of ["telehandler", "sprayer"]) {
      const machine = machineWith(circuitNamed(id), { "isolator.resistance": 1e9 });
      expect(keyStart(machine).symptom, id).toBe("dead");
      expect(keyStart(machine).batteryAmps, id).toBeLessThan(0.01);
    }
  });

  it("measures a positive-earth machine between the same named clamps", () => {
    const circuit = circuitNamed("old-tractor-6v");
    expect(circuit.earth).toBe("positive");
    const drop = circuit.testPoints.find(({ id }) => id === "plus-clamp-drop-volts");
    const bad = machineWith(circuit, { "plus-clamp.resistance": 0.01 });
    const { volts } = keyStart(bad);
    const read = Math.abs(
      voltsOf(bad, volts, drop?.at ?? "") - voltsOf(bad, volts, drop?.against ?? ""),
    );
    expect(read).toBeGreaterThan(1);
    // It lies in the earth lead: the block is off by it too.
    expect(Math.abs(voltsOf(bad, volts, "block"))).toBeGreaterThan(read);
  });

  it("keeps currents in balance at every point of every circuit", () => {
    for (const circuit of shippedCircuits.values()) checkBalance(circuit);
  });

  it("applies becomes, plus and times, and leaves the machine before alone", () => {
    const assembly = assemble(circuitNamed("garden-tractor"));
    const before = middleMachine(assembly);
    const copy = before.slice();
    const slot = assembly.slot("fuse", "resistance");
    const change = (how: "becomes" | "plus" | "times") => {
      const value = { kind: "exact", value: 3 } as const;
      const settings = [{ part: "fuse", figure: "resistance", how, value }];
      return changeMachine(assembly, before, [{ weight: 1, settings }], createRandom(1, "x"))[slot];
    };
    const own = before[slot] ?? 0;
    expect(change("becomes")).toBe(3);
    expect(change("plus")).toBeCloseTo(own + 3, 12);
    expect(change("times")).toBeCloseTo(own * 3, 12);
    expect(before).toEqual(copy);
  });

  it("refuses a change of a figure that is not there", () => {
    const assembly = assemble(circuitNamed("garden-tractor"));
    const settings = [
      { part: "fuse", figure: "colour", how: "plus", value: { kind: "exact", value: 1 } } as const,
    ];
    const changes = [{ weight: 1, settings }];
    expect(() =>
      changeMachine(assembly, middleMachine(assembly), changes, createRandom(1, "x")),
    ).toThrow(/fuse\.colour/);
  });
});

/** Kirchhoff: what flows into a point besides the meter's own current flows out again. */
function checkBalance(circuit: CircuitNetwork): void {
  const assembly = assemble(circuit);
  const simulator = createSimulator(assembly);
  const machine = loadMachine(simulator, drawMachine(assembly, createRandom(2, circuit.id)), 20);
  const { volts, closed, motorAmps, heavy, symptom } = keyStart(machine);
  if (symptom === "chatter") return;
  const { conductances, sources } = simulator.electrics;
  const at = (point: number) => (point < 0 ? 0 : (volts[point] ?? 0));
  const sums = new Float64Array(assembly.plan.points).map((_, p) => -at(p) / 10e6);
  const flow = (from: number, to: number, amps: number) => {
    if (from >= 0) sums[from] = (sums[from] ?? 0) - amps;
    if (to >= 0) sums[to] = (sums[to] ?? 0) + amps;
  };
  assembly.branches.forEach((branch, i) => {
    const shut =
      branch.part.sort !== "contact" ||
      (branch.actuator >= 0
        ? ((closed >> branch.actuator) & 1) === 1
        : branch.part.closed?.includes("start") === true);
    const siemens = shut ? (conductances[i] ?? 0) : 1e-9;
    flow(branch.from, branch.to, (at(branch.from) - at(branch.to)) * siemens);
  });
  assembly.batteries.forEach(({ from, to }, i) => {
    const source = sources[i];
    if (source === undefined) return;
    const emf = source.emf - (heavy ? source.polarisation : 0);
    flow(from, to, (emf - (at(to) - at(from))) * source.siemens);
  });
  flow(assembly.motor.from, assembly.motor.to, motorAmps);
  for (const sum of sums) expect(Math.abs(sum), circuit.id).toBeLessThan(1e-6);
}
