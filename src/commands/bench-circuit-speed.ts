import type { Block } from "../circuit/block.ts";
import { KEPT_BYTES } from "../circuit/weighing.ts";
import { updateBelief } from "../diagnosis/belief.ts";
import { compileModel } from "../diagnosis/compile.ts";
import type { Model } from "../diagnosis/model.ts";
import { chooseNext } from "../diagnosis/next-check.ts";
import type { Evidence, MachineFacts, Report, Situation } from "../domain/evidence.ts";
import type { JointLikelihood } from "../domain/joint-likelihood.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import { bankBytes } from "../knowledge/bank-file.ts";

/** Processor time in milliseconds, medians over many; every measurement is of a number not seen yet. */
export interface CircuitSpeed {
  /** One more answer, all simulated machines weighed anew. */
  readonly updateMs: number;
  /** The engine with simulated machines, by rows alone, and the one divided by the other. */
  readonly belief: Compared;
  readonly nextCheck: Compared;
  /** The bank, and with it all that is kept weighed, at the most. */
  readonly bankMegabytes: number;
  readonly mostMegabytes: number;
}

interface Compared {
  readonly circuitMs: number;
  readonly rowsMs: number;
  readonly ratio: number;
}

const REPEATS = 40;
const MEGABYTE = 1024 * 1024;

const somebody: Situation = {
  ...{ performer: "operator", place: "at-machine", has: ["meter"] },
  ...{ asked: [], refused: [], urgency: "normal" },
};

/** Chatter, lamps that dim, and a voltage that differs every time. */
function evidenceAt(volts: number): Evidence {
  const report = (observation: string, said: Report["said"]): Report => {
    return { observation, said, epoch: 0, reporter: "operator", hedge: 0 };
  };
  const state = (name: string): Report["said"] => ({ kind: "states", weights: { [name]: 1 } });
  return {
    reports: [
      report("on-start", state("fast-clicks")),
      report("lights-on", state("normal")),
      report("lights-at-start", state("dim")),
      report("battery-rest-volts", { kind: "value", value: volts }),
    ],
    acts: [],
  };
}

export function benchCircuitSpeed(
  joint: JointLikelihood,
  blocks: readonly Block[],
  { knowledge, kind }: { readonly knowledge: Knowledge; readonly kind: MachineFacts["kind"] },
): CircuitSpeed {
  const machine = { kind, volts: 12 };
  const models = {
    circuit: compileModel(knowledge, machine, { joint: [joint] }),
    rows: compileModel(knowledge, machine),
  };
  const compare = (work: (model: Model, evidence: Evidence) => unknown): Compared => {
    const spent = (model: Model) => medianOf((volts) => void work(model, evidenceAt(volts)));
    const [circuitMs, rowsMs] = [spent(models.circuit), spent(models.rows)];
    return { circuitMs, rowsMs, ratio: circuitMs / rowsMs };
  };
  const machines = blocks.reduce((sum, block) => sum + block.machines, 0);
  const bankMegabytes = bankBytes(blocks) / MEGABYTE;
  return {
    updateMs: medianOf((volts) => {
      const band = { low: volts - 0.05, high: volts + 0.05, meterError: 0.1 };
      joint.logLikelihood([{ kind: "reading", observation: "battery-rest-volts", ...band }]);
    }),
    belief: compare(updateBelief),
    nextCheck: compare((model, evidence) => chooseNext(model, evidence, somebody)),
    bankMegabytes,
    mostMegabytes: bankMegabytes + (machines * KEPT_BYTES) / MEGABYTE,
  };
}

function medianOf(work: (volts: number) => void): number {
  const times = Array.from({ length: REPEATS }, (_, n) => {
    const before = process.cpuUsage();
    work(12 + n / REPEATS / 2);
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  });
  return times.sort((a, b) => a - b)[REPEATS / 2] ?? 0;
}
