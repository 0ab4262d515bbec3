import { hypothesesOf, NOTHING_WRONG } from "../circuit/bank.ts";
import { type CircuitCheck, checkCircuit, HEALTHY_SHARE } from "../circuit/check-circuit.ts";
import { chooseCircuits } from "../circuit/choose-circuit.ts";
import { type CircuitPrediction, predictCircuit } from "../circuit/predict-circuit.ts";
import type { CircuitNetwork } from "../domain/circuit.ts";
import { loadCircuits } from "../knowledge/circuit-files.ts";
import type { CommandIo } from "./io.ts";
import { commandLine, optionValue } from "./options.ts";

const USAGE =
  "Use: circuit KIND [--fault ID[,ID]] [--temp C] [--json]. KIND is a machine kind or a circuit.";
/** Any number: it only makes the same question give the same answer. */
const SEED = 1;
const COLDEST = -40;
const HOTTEST = 50;

/**
 * `circuit KIND`: what the model predicts for a machine kind, healthy or with a fault (two faults
 * together with a comma), and what is to be known about its circuit file.
 * @returns 0; 1 where a circuit file is wrong; 2 where the command line is
 */
export async function circuitCommand(args: readonly string[], io: CommandIo): Promise<number> {
  const line = commandLine(args, { flags: ["json"], valued: ["fault", "temp"] });
  const { circuits, problems } = loadCircuits(io.root);
  for (const { file, line: at, says } of problems) io.stderr(`${file}:${at}: ${says}\n`);
  if (problems.length > 0) return 1;
  const celsius = Number(optionValue(line, "temp", "20"));
  const hypothesis = optionValue(line, "fault", NOTHING_WRONG).split(",").join("+");
  const found = findCircuits(circuits, line.words[0] ?? "");
  const wrong =
    line.unknown.length > 0
      ? `There is no option ${line.unknown.join(", ")}.`
      : (whyNoCircuit(found, circuits, line.words[0]) ??
        whyNoTemperature(celsius) ??
        whyNoFault(found, hypothesis));
  if (wrong !== undefined) {
    io.stderr(`${wrong}\n${USAGE}\n`);
    return 2;
  }
  const answers = found.map((circuit) => ({
    circuit,
    prediction: predictCircuit(circuit, { hypothesis, celsius, seed: SEED }),
    check: checkCircuit(circuit, SEED),
  }));
  io.stdout(line.options["json"] === true ? jsonOf(answers) : answers.map(textOf).join("\n"));
  return 0;
}

interface Answer {
  readonly circuit: CircuitNetwork;
  readonly prediction: CircuitPrediction;
  readonly check: CircuitCheck;
}

function whyNoCircuit(
  found: readonly CircuitNetwork[],
  circuits: ReadonlyMap<string, CircuitNetwork>,
  kind: string | undefined,
): string | undefined {
  if (found.length > 0) return undefined;
  const asked = kind === undefined ? "Which machine?" : `There is no circuit for "${kind}".`;
  return `${asked} There are: ${[...circuits.keys()].join(", ")}.`;
}

function whyNoTemperature(celsius: number): string | undefined {
  if (celsius >= COLDEST && celsius <= HOTTEST) return undefined;
  return `The temperature must be a number from ${COLDEST} to ${HOTTEST} °C.`;
}

function whyNoFault(found: readonly CircuitNetwork[], hypothesis: string): string | undefined {
  for (const circuit of found) {
    const known = hypothesesOf(circuit);
    const unknown = hypothesis.split("+").find((id) => !known.includes(id));
    if (unknown === undefined) continue;
    return `The circuit of ${circuit.id} has no fault "${unknown}". It has: ${known.join(", ")}.`;
  }
  return undefined;
}

function jsonOf(answers: readonly Answer[]): string {
  const out = answers.map(({ circuit, prediction, check }) => {
    const { id, title, volts, earth } = circuit;
    return { circuit: id, title, volts, earth, ...prediction, check };
  });
  return `${JSON.stringify(out.length === 1 ? out[0] : out, undefined, 2)}\n`;
}

function findCircuits(
  circuits: ReadonlyMap<string, CircuitNetwork>,
  kind: string,
): readonly CircuitNetwork[] {
  const own = circuits.get(kind);
  if (own !== undefined) return [own];
  return chooseCircuits(circuits.values(), { kind }).map(({ circuit }) => circuit);
}

function textOf({ circuit, prediction, check }: Answer): string {
  const { hypothesis, celsius, complaints, readings } = prediction;
  const shares = Object.entries(complaints)
    .filter(([, share]) => share >= 0.005)
    .sort(([, a], [, b]) => b - a)
    .map(([symptom, share]) => `${symptom} ${percent(share)}`);
  const points = circuit.testPoints.map(({ id, label, key, quantity }) => {
    const range = readings[id] ?? { low: 0, median: 0, high: 0 };
    const unit = quantity === "amps" ? "A" : "V";
    const digits = quantity === "amps" ? 0 : 2;
    const [low, median, high] = [range.low, range.median, range.high].map((v) => v.toFixed(digits));
    const where = `${label} (key ${key.toUpperCase()})`;
    return `  ${id.padEnd(28)} ${`${median} ${unit}`.padStart(9)}  ${low} to ${high}   ${where}`;
  });
  return [
    `${circuit.title}: ${hypothesis} at ${celsius} °C`,
    `  ${shares.join(", ")}`,
    ...points,
    ...checkLines(circuit, check),
    "",
  ].join("\n");
}

function checkLines(circuit: CircuitNetwork, check: CircuitCheck): string[] {
  const { points, parts } = {
    points: new Set(circuit.parts.flatMap(({ from, to }) => [from, to])).size,
    parts: circuit.parts.filter(({ hidden }) => !hidden).length,
  };
  const healthy = check.healthy.map(({ celsius, normal, turns }) => {
    const mark = celsius === 20 && normal < HEALTHY_SHARE ? "LOOK " : "fine ";
    const what = `cranks normally in ${percent(normal)}, turns in ${percent(turns)}`;
    return `  ${mark} a healthy machine ${what} of draws at ${celsius} °C`;
  });
  return [
    `The file: ${points} points, ${parts} parts, ${circuit.faults.length} faults`,
    ...healthy,
    ...check.unnoticed.map(
      ({ fault, share }) => `  LOOK  ${fault}: noticed in ${percent(share)} of draws`,
    ),
    ...check.alike.map(({ faults: [one, other] }) => {
      return `  alike ${one} and ${other} cannot be told apart on the circuit at 20 °C`;
    }),
  ];
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}
