import type { Actuator, CircuitPart, TestPoint } from "../domain/circuit.ts";
import { type ComplainAt, readFigures } from "./circuit-figures.ts";
import type { Scale } from "./circuit-quantity.ts";
import type { CircuitShape, InterlockShape } from "./circuit-schema.ts";

/** What reading the parts of one circuit needs. */
export interface PartContext {
  readonly scale: Scale;
  readonly interlocks: InterlockShape;
  readonly complain: ComplainAt;
}

/** The parts as written, then the chain of interlocks. */
export function readParts(shape: CircuitShape, context: PartContext): CircuitPart[] {
  const written = Object.entries(shape.parts).map(([id, part]): CircuitPart => {
    const { is, from, to, label, closed, hidden, ...figures } = part;
    const path = ["parts", id];
    const read = readFigures(is, figures, path, context.scale, context.complain);
    return {
      id,
      sort: is,
      from,
      to,
      figures: read,
      label,
      hidden: hidden ?? false,
      ...(closed === undefined ? {} : { closed }),
    };
  });
  return [...written, ...chainParts(shape, context)];
}

/**
 * The interlocks in series from the key's START terminal to the coil: a wire before each switch and
 * `start-wire` after the last.
 */
function chainParts(shape: CircuitShape, context: PartContext): CircuitPart[] {
  const { chain, interlocks = [] } = shape;
  if (chain === undefined) return [];
  const { interlocks: kinds, scale, complain } = context;
  const wire = readFigures("cable", kinds.wire, ["interlocks"], scale, complain);
  const contact = readFigures("interlock", kinds.switch, ["interlocks"], scale, complain);
  const parts: CircuitPart[] = [];
  const add = (id: string, sort: "cable" | "interlock", ends: [string, string], label: string) =>
    parts.push({
      ...{ id, sort, from: ends[0], to: ends[1], label, hidden: false },
      figures: { ...(sort === "cable" ? wire : contact), ...overrides(shape, id, context) },
    });
  let here = chain.from;
  interlocks.forEach((name, i) => {
    const kind = interlockLabel(kinds, name);
    if (kind === undefined) {
      complain(["interlocks", i], `there is no interlock "${name}"`);
      return;
    }
    add(`wire-to-${name}`, "cable", [here, `${name}-in`], "wire");
    add(`${name}-switch`, "interlock", [`${name}-in`, `${name}-out`], kind);
    here = `${name}-out`;
  });
  add("start-wire", "cable", [here, chain.to], "start wire");
  return parts;
}

/** Figures a machine file gives for a part of the chain under `chain-figures`. */
function overrides(shape: CircuitShape, id: string, context: PartContext) {
  const written = shape["chain-figures"]?.[id];
  if (written === undefined) return {};
  const sort = id.endsWith("-switch") ? "interlock" : "cable";
  const read: ComplainAt = (path, says) => {
    if (!says.includes("lacks")) context.complain(path, says);
    return undefined;
  };
  return readFigures(sort, written, ["chain-figures", id], context.scale, read);
}

function interlockLabel(kinds: InterlockShape, name: string): string | undefined {
  const kind: unknown = kinds[name];
  if (name === "wire" || name === "switch" || typeof kind !== "object" || kind === null) {
    return undefined;
  }
  return "label" in kind && typeof kind.label === "string" ? kind.label : undefined;
}

export function readActuators(shape: CircuitShape, context: PartContext): Actuator[] {
  return Object.entries(shape.actuators ?? {}).map(([id, written]) => {
    const { coils, hold, contact, sound, label, ...figures } = written;
    const path = ["actuators", id];
    const read = readFigures("actuator", figures, path, context.scale, context.complain);
    for (const part of [...coils, hold, contact]) {
      if (shape.parts[part] === undefined) {
        context.complain(path, `the ${label} names "${part}", which is no part of the circuit`);
      }
    }
    return { id, coils, hold, contact, sound, label, figures: read };
  });
}

/** The test points as written, then one behind each interlock. */
export function readTestPoints(shape: CircuitShape, context: PartContext): TestPoint[] {
  const { reference } = shape;
  const written = Object.entries(shape["test-points"]).map(([id, point]): TestPoint => {
    const through = point["amps-through"];
    if (point.at === undefined && point.measures === undefined && through === undefined) {
      context.complain(["test-points", id], "say at which point the red probe rests (at)");
    }
    const taken = through === undefined ? point.measures : "amps";
    return {
      id,
      label: point.label,
      key: point.key,
      quantity: taken ?? (point.drop === true ? "drop" : "volts"),
      at: through ?? point.at ?? reference,
      against: point.against ?? reference,
      otherPlaces: point.or ?? {},
    };
  });
  const behind = (shape.interlocks ?? []).map(
    (name): TestPoint => ({
      id: `${name}-switch-out-volts`,
      label: `behind the ${interlockLabel(context.interlocks, name) ?? name}`,
      key: "start",
      quantity: "volts",
      at: `${name}-out`,
      against: reference,
      otherPlaces: {},
    }),
  );
  return [...written, ...behind];
}
