import type { CircuitAct } from "../domain/circuit.ts";
import type { Report } from "../domain/evidence.ts";
import type {
  CircuitEvidence,
  JointLikelihood,
  ReadingEvidence,
} from "../domain/joint-likelihood.ts";
import type { Observation } from "../domain/knowledge.ts";
import { crankingStates, ON_START } from "../domain/vocabulary.ts";
import type { Measurements, Seen } from "./model.ts";
import { placesOf, readingItems } from "./reading-item.ts";

/** The cranking state in which the engine turns, as simulated circuits name it. */
export const TURNS = crankingStates[crankingStates.length - 1] ?? "turns";

/** Nominal volts that bands are written for. */
const BAND_VOLTS = 12;

/** Far beyond every reading: the open end of a band. */
const OPEN_END = 1e4;

/** P(report | simulated state): now and then the real machine shows any other state. */
export function unforeseen(joint: JointLikelihood, likelihood: Float64Array): Float64Array {
  const mean = likelihood.reduce((sum, value) => sum + value, 0) / likelihood.length;
  return likelihood.map((value) => (1 - joint.unforeseen) * value + joint.unforeseen * mean);
}

/** Reports as simulated machines can weigh them. */
export interface JointEvidence {
  readonly items: readonly CircuitEvidence[];
  /** The same for the same evidence. */
  readonly key: string;
}

/** Turns likelihoods over states into evidence of one circuit; keeps equal items identical. */
export class EvidenceTranslator {
  readonly #joint: JointLikelihood;
  readonly #observations: ReadonlyMap<string, Observation>;
  readonly #volts: number;
  readonly #items = new Map<string, CircuitEvidence>();

  constructor(
    joint: JointLikelihood,
    observations: ReadonlyMap<string, Observation>,
    volts: number,
  ) {
    this.#joint = joint;
    this.#observations = observations;
    this.#volts = volts;
  }

  /**
   * What was seen after an act, as far as machines are simulated after it; see `translate`. Where
   * the probes were is not told apart there.
   */
  translateAfter(
    act: CircuitAct,
    { seen, measured }: { readonly seen: Seen; readonly measured: Measurements | undefined },
    onStart: Readonly<Record<string, number>> | null,
  ): JointEvidence {
    const found = this.translate(seen, onStart, measured).items.map((item) => ({
      ...item,
      after: act,
    }));
    const items = found
      .filter((item) => this.#joint.weighs(item))
      .map((item) => ({ item: this.#same(item), key: JSON.stringify(item) }));
    return { items: items.map(({ item }) => item), key: items.map(({ key }) => key).join("|") };
  }

  /** Equal items become one and the same, so that what is weighed already is recognised. */
  #same(item: CircuitEvidence): CircuitEvidence {
    const key = JSON.stringify(item);
    const known = this.#items.get(key) ?? item;
    this.#items.set(key, known);
    return known;
  }

  #sameReading(item: ReadingEvidence): ReadingEvidence {
    const known = this.#same(item);
    return known.kind === "reading" ? known : item;
  }

  /**
   * @param onStart what is said of `on-start` in the circuit's own cranking states; it may depend
   *   on the hypothesis, so the caller decides
   */
  translate(
    seen: Seen,
    onStart: Readonly<Record<string, number>> | null,
    measured?: Measurements,
  ): JointEvidence {
    const items: CircuitEvidence[] = [];
    const keys: string[] = [];
    const add = (item: CircuitEvidence | null): void => {
      if (item === null) return;
      items.push(this.#same(item));
      keys.push(JSON.stringify(item));
    };
    for (const [id, likelihood] of [...seen].sort(([a], [b]) => (a < b ? -1 : 1))) {
      if (id === ON_START) continue;
      const readings = this.readings(id, measured);
      if (readings.length > 0) for (const reading of readings) add(reading);
      else add(this.#item(id, likelihood, measured?.get(id)?.at(-1)?.probes));
    }
    if (onStart !== null) add({ kind: "state", observation: ON_START, weights: onStart });
    return { items, key: keys.join("|") };
  }

  #item(id: string, likelihood: Float64Array, probes: Report["probes"]): CircuitEvidence | null {
    const observation = this.#observations.get(id);
    if (observation === undefined || !this.#joint.observations.has(id)) return null;
    if (this.#joint.statesOf(id).length > 0) {
      const chances = unforeseen(this.#joint, likelihood);
      const weights = Object.fromEntries(
        observation.states.map((state, s) => [state.id, Math.min(1, chances[s] ?? 0)]),
      );
      return { kind: "state", observation: id, weights };
    }
    const band = observation.states[indexOfLargest(likelihood)];
    const scale = observation.scalesWithVolts ? this.#volts / BAND_VOLTS : 1;
    if (band === undefined || isFlat(likelihood)) return null;
    return {
      kind: "reading",
      observation: id,
      low: band.from === undefined ? -OPEN_END : band.from * scale,
      high: band.to === undefined ? OPEN_END : band.to * scale,
      meterError: observation.meterError?.absolute ?? 0,
      ...(probes === undefined ? {} : { places: placesOf(probes) }),
    };
  }

  /** The readings of a test point whose numbers are known. */
  readings(id: string, measured: Measurements | undefined): readonly ReadingEvidence[] {
    const observation = this.#observations.get(id);
    if (observation === undefined || !this.#joint.observations.has(id)) return [];
    if (this.#joint.statesOf(id).length > 0) return [];
    return readingItems(observation, measured).map((item) => this.#sameReading(item));
  }

  /** Inner edges of a reading's bands, in volts of this machine. */
  edges(id: string): readonly number[] {
    const observation = this.#observations.get(id);
    const scale = observation?.scalesWithVolts === true ? this.#volts / BAND_VOLTS : 1;
    return (observation?.states ?? []).flatMap(({ to }) => (to === undefined ? [] : [to * scale]));
  }
}

function indexOfLargest(values: Float64Array): number {
  let best = 0;
  for (let i = 1; i < values.length; i++) if ((values[i] ?? 0) > (values[best] ?? 0)) best = i;
  return best;
}

/** A report so hedged that all states are nearly alike says nothing worth simulating. */
function isFlat(likelihood: Float64Array): boolean {
  return Math.min(...likelihood) > 0.5 * Math.max(...likelihood);
}
