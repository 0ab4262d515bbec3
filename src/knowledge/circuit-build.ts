import type { CircuitFault, CircuitNetwork, Oil } from "../domain/circuit.ts";
import type { Problem } from "../domain/result.ts";
import { fits, readChanges, type Sorts } from "./circuit-changes.ts";
import { type ComplainAt, readFigures } from "./circuit-figures.ts";
import { type Layers, problemAtPath } from "./circuit-layers.ts";
import { readActuators, readParts, readTestPoints } from "./circuit-parts.ts";
import { readSpread, type Scale } from "./circuit-quantity.ts";
import {
  CircuitShape,
  type FaultShape,
  type InterlockShape,
  type OilShape,
} from "./circuit-schema.ts";
import { checkSense } from "./circuit-sense.ts";
import type { SourceFile } from "./source-file.ts";

/** What all circuits share. */
export interface SharedCircuitWords {
  readonly oils: OilShape;
  readonly interlocks: InterlockShape;
  readonly faults: Readonly<Record<string, FaultShape>>;
  readonly faultFile: SourceFile;
}

/**
 * Turns the layers of a circuit file into a network.
 * @returns the network, or nothing where something is wrong; all of it is then in `problems`
 */
export function buildCircuit(
  layers: Layers,
  shared: SharedCircuitWords,
  problems: Problem[],
): CircuitNetwork | undefined {
  const found: Problem[] = [];
  const complain: ComplainAt = (path, says) => {
    found.push(problemAtPath(layers.files, path, says));
    return undefined;
  };
  const parsed = CircuitShape.safeParse(layers.data);
  if (!parsed.success) {
    for (const issue of parsed.error.issues) complain(issue.path, issue.message);
    problems.push(...found);
    return undefined;
  }
  const network = networkOf(parsed.data, shared, complain);
  if (network !== undefined) checkSense(network, complain);
  problems.push(...found);
  return found.length === 0 ? network : undefined;
}

function networkOf(
  shape: CircuitShape,
  shared: SharedCircuitWords,
  complain: ComplainAt,
): CircuitNetwork | undefined {
  const scale = scaleOf(shape, Object.keys(shared.oils), complain);
  if (scale === undefined) return undefined;
  const context = { scale, interlocks: shared.interlocks, complain };
  const parts = readParts(shape, context);
  const actuators = readActuators(shape, context);
  const section = (name: "drive" | "engine" | "person" | "running") =>
    readFigures(name, shape[name], [name], scale, complain);
  const sorts: Sorts = new Map([
    ...parts.map(({ id, sort }): [string, string] => [id, sort]),
    ...actuators.map(({ id }): [string, string] => [id, "actuator"]),
    ...["drive", "engine", "person", "running"].map((s): [string, string] => [s, s]),
  ]);
  const size = readSpread(shape.size, "plain", scale, (says) => complain(["size"], says));
  const changing = { sorts, scale, complain };
  const acts = Object.entries(shape.acts ?? {}).map(([act, changes]) => [
    act,
    readChanges(changes, ["acts", act], changing),
  ]);
  return {
    id: shape.id,
    title: shape.title,
    uses: Object.entries(shape.for ?? {}).map(([kind, fuels]) => ({ kind, fuels })),
    weighedUnstated: shape["weighed-unstated"] ?? false,
    volts: shape.volts,
    earth: shape.earth,
    reference: shape.reference,
    parts,
    actuators,
    drive: section("drive"),
    engine: section("engine"),
    person: section("person"),
    running: section("running"),
    size: size ?? { kind: "exact", value: 1 },
    oils: Object.entries(shared.oils).map(([id, oil]): Oil => ({ id, ...oil })),
    faults: readFaults(shape, shared, changing),
    acts: Object.fromEntries(acts),
    testPoints: readTestPoints(shape, context),
  };
}

function scaleOf(
  shape: CircuitShape,
  oils: readonly string[],
  complain: ComplainAt,
): Scale | undefined {
  const bare = { nominalVolts: shape.volts, loopOhms: 1, oils };
  const amps = readSpread(shape["stall-amps"], "amps", bare, (says) =>
    complain(["stall-amps"], says),
  );
  if (amps?.kind !== "exact" || amps.value <= 0) {
    return complain(["stall-amps"], "stall-amps must be one current above zero, as in 600 A");
  }
  return { nominalVolts: shape.volts, loopOhms: shape.volts / amps.value, oils };
}

/** The shared faults that fit this circuit, then its own, which replace shared ones of that id. */
function readFaults(
  shape: CircuitShape,
  shared: SharedCircuitWords,
  context: { readonly sorts: Sorts; readonly scale: Scale; readonly complain: ComplainAt },
): CircuitFault[] {
  const own = shape.faults ?? {};
  const inShared: ComplainAt = (path, says) =>
    context.complain([...path], `in ${shared.faultFile.file}: ${says}`);
  const all = { ...shared.faults, ...own };
  return Object.entries(all).flatMap(([id, fault]): CircuitFault[] => {
    const isOwn = own[id] !== undefined;
    if (!isOwn && !fits(fault.as, context.sorts)) return [];
    const complain = isOwn ? context.complain : inShared;
    const path = isOwn ? ["faults", id] : [id];
    const read = (changes: FaultShape["as"]) =>
      readChanges(changes, path, { ...context, complain });
    return [{ id, changes: read(fault.as), mild: fault.mild ? read(fault.mild) : [] }];
  });
}
