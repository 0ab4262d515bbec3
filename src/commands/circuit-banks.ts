import { join } from "node:path";
import { hypothesesOf, TEMPERATURE_BANDS, type TemperatureBand } from "../circuit/bank.ts";
import { type BankRequest, bandsAt, STANDING_MACHINES, weighBanks } from "../circuit/bank-build.ts";
import { chooseCircuits } from "../circuit/choose-circuit.ts";
import { createJoint } from "../circuit/joint.ts";
import type { CircuitNetwork } from "../domain/circuit.ts";
import type { MachineFacts, Report } from "../domain/evidence.ts";
import type { JointLikelihood } from "../domain/joint-likelihood.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import { type BankBuilder, createWorkerBuilder } from "../knowledge/bank-builder.ts";
import { type BankStore, openBankStore } from "../knowledge/bank-store.ts";
import type { Workshop } from "./workshop.ts";

/** The same file, model and seed always give the same bank. */
const SEED = 20_251;

/** Joint likelihoods kept; each holds on to its banks. */
const JOINTS_KEPT = 8;

/** What is known of the temperature: as told, in the words of the bands, or what is usual now. */
export interface Weather {
  readonly told?: string;
  readonly usualCelsius: number;
}

/** Simulated machines of the starting circuits, for the engine. */
export interface CircuitBanks {
  /** What can be weighed now. Empty: rows must do; what is missing is being built meanwhile. */
  now(machine: MachineFacts, weather: Weather): readonly JointLikelihood[];
  /** The same, waiting for what has to be built. */
  ready(machine: MachineFacts, weather: Weather): Promise<readonly JointLikelihood[]>;
  /** Changes whenever `now` may answer differently. */
  readonly generation: () => number;
}

export interface CircuitBanksOptions {
  readonly circuits: ReadonlyMap<string, CircuitNetwork>;
  readonly knowledge: Knowledge;
  readonly root: string;
  readonly build: BankBuilder;
  /** Machines per fault; fewer for quick tests. */
  readonly machines?: number;
  readonly report?: (error: unknown) => void;
}

interface Wanted {
  readonly circuit: CircuitNetwork;
  readonly request: BankRequest;
  readonly weight: number;
}

/** Declared pairs of cause and consequence that lie in one circuit. */
function pairsIn(circuit: CircuitNetwork, knowledge: Knowledge): string[] {
  const known = new Set(hypothesesOf(circuit));
  return [...knowledge.faults.values()].flatMap((fault) =>
    [...fault.brings.keys()]
      .filter((consequence) => known.has(fault.id) && known.has(consequence))
      .map((consequence) => `${fault.id}+${consequence}`),
  );
}

const isBand = (name: string | undefined): name is TemperatureBand =>
  name !== undefined && Object.hasOwn(TEMPERATURE_BANDS, name);

function bandsOf({ told, usualCelsius }: Weather) {
  return isBand(told) ? [{ band: told, weight: 1 }] : bandsAt(usualCelsius);
}

/** Opens the banks of all circuits; nothing is built before it is asked for. */
export function openCircuitBanks(options: CircuitBanksOptions): CircuitBanks {
  const { circuits, knowledge, machines = STANDING_MACHINES, report = () => undefined } = options;
  const store: BankStore = openBankStore({
    folder: join(options.root, ".cache", "circuits"),
    build: options.build,
  });
  const joints = new Map<string, JointLikelihood>();
  let generation = 0;

  function wanted(machine: MachineFacts, weather: Weather): readonly Wanted[] {
    const { kind, fuel, volts } = machine;
    const wish = {
      kind,
      ...(fuel === undefined ? {} : { fuel }),
      ...(volts === undefined ? {} : { volts }),
    };
    return chooseCircuits([...circuits.values()], wish).flatMap(({ circuit, weight }) =>
      bandsOf(weather).map((band) => ({
        circuit,
        request: { band: band.band, seed: SEED, machines, pairs: pairsIn(circuit, knowledge) },
        weight: weight * band.weight,
      })),
    );
  }

  function joined(all: readonly Wanted[]): readonly JointLikelihood[] {
    const banks = all.flatMap(({ circuit, request, weight }) => {
      const bank = store.now(circuit, request);
      return bank === undefined ? [] : [{ bank, weight }];
    });
    if (banks.length === 0 || banks.length < all.length) return [];
    const key = all.map((one) => `${one.circuit.id} ${one.request.band} ${one.weight}`).join();
    const known = joints.get(key);
    if (known !== undefined) return [known];
    const joint = createJoint(weighBanks(banks));
    joints.set(key, joint);
    const oldest = joints.keys().next();
    if (joints.size > JOINTS_KEPT && !oldest.done) joints.delete(oldest.value);
    return [joint];
  }

  async function stand(all: readonly Wanted[]): Promise<void> {
    for (const { circuit, request } of all) {
      if (store.now(circuit, request) !== undefined) continue;
      await store.ready(circuit, request);
      generation += 1;
    }
  }

  return {
    now(machine, weather) {
      const all = wanted(machine, weather);
      const found = joined(all);
      if (found.length === 0 && all.length > 0) void stand(all).catch(report);
      return found;
    },
    async ready(machine, weather) {
      const all = wanted(machine, weather);
      await stand(all);
      return joined(all);
    },
    generation: () => generation,
  };
}

/** No simulated circuits: everything is weighed by rows. */
export const noBanks: CircuitBanks = {
  now: () => [],
  ready: async () => [],
  generation: () => 0,
};

/** Banks of all the workshop's circuits, built in workers where they are not on disk yet. */
export function openBanks(
  root: string,
  { circuits, knowledge }: Workshop,
  report: (error: unknown) => void = () => undefined,
): CircuitBanks {
  return openCircuitBanks({ circuits, knowledge, root, build: createWorkerBuilder(), report });
}

/** Banks that are on disk already; nothing is built, so that a command answers at once. */
export function openStoredBanks(root: string, { circuits, knowledge }: Workshop): CircuitBanks {
  const build = () => Promise.reject(new Error("not built"));
  return openCircuitBanks({ circuits, knowledge, root, build });
}

/** The observation that tells the weather at the machine. */
const OUTDOORS = "outdoors";
/** Where nothing is known: a mild day. */
export const MILD_CELSIUS = 20;

/** The weather as far as reports tell it. */
export function weatherTold(reports: readonly Report[]): Weather {
  const said = reports.findLast((report) => report.observation === OUTDOORS)?.said;
  if (said?.kind !== "states") return { usualCelsius: MILD_CELSIUS };
  const [told] = Object.entries(said.weights).sort((a, b) => b[1] - a[1])[0] ?? [];
  return told === undefined ? { usualCelsius: MILD_CELSIUS } : { told, usualCelsius: MILD_CELSIUS };
}
