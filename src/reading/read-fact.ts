import type {
  ActTold,
  Ambiguous,
  Reader,
  ReaderModel,
  ReaderObservation,
  ReadOptions,
  StateReading,
  Understood,
} from "../domain/reading.ts";
import { ENGINE_TURNS, ON_START } from "../domain/vocabulary.ts";

/** What one entry of a case file says. */
export interface FactReading {
  readonly understood: readonly Understood[];
  /** States that it says do not hold. */
  readonly denied: readonly StateReading[];
  /** What was done, where the entry tells what came of it. */
  readonly acts: readonly ActTold[];
  readonly ambiguous: readonly Ambiguous[];
  /** It was so only once something had been done. */
  readonly afterwards: boolean;
  /** Texts that nothing could be made of, as `key: value`. */
  readonly notUnderstood: readonly string[];
}

export interface FactTools {
  readonly model: ReaderModel;
  readonly reader: Reader;
  readonly options: ReadOptions;
}

/** Old and general names, each with the observations it may mean; the first with the state wins. */
const aliases: Readonly<Record<string, readonly string[]>> = {
  lights: ["lights-on", "lights-at-start"],
};

/**
 * Reads one entry of a case file: a known observation with a state id, a number with its unit or
 * free text, or a list of these. Nothing is an error: an unknown key or state goes to the reader
 * as the text `key: value`, and what stays unplaced is handed back.
 */
export function readFact(key: string, value: unknown, tools: FactTools): FactReading {
  const values = Array.isArray(value) ? value : [value];
  const parts = values.map((one) => readOne(key, String(one ?? ""), tools));
  return {
    understood: parts.flatMap((part) => part.understood),
    denied: parts.flatMap((part) => part.denied),
    acts: parts.flatMap((part) => part.acts),
    ambiguous: parts.flatMap((part) => part.ambiguous),
    afterwards: parts.some((part) => part.afterwards),
    notUnderstood: parts.flatMap((part) => part.notUnderstood),
  };
}

const nothing: FactReading = {
  understood: [],
  denied: [],
  acts: [],
  ambiguous: [],
  afterwards: false,
  notUnderstood: [],
};

function readOne(key: string, value: string, tools: FactTools): FactReading {
  for (const id of aliases[key] ?? [key]) {
    const observation = tools.model.observations.get(id);
    const plain = observation === undefined ? null : plainState(observation, value);
    if (plain !== null) return { ...nothing, understood: [plain] };
  }
  const label = key.replaceAll(/[-_]/g, " ");
  const options = { ...tools.options, label: tools.model.observations.has(key) ? key : label };
  const read = tools.reader.read(value, options);
  const heard = read.understood.filter((one) => key === ON_START || !saysItRuns(one));
  const { denied, acts, afterwards } = read;
  const isTrial =
    tools.options.mended === true && options.label.includes(" ") && tellsOnlyOfTurning(heard);
  const understood = isTrial ? heard.filter((one) => one.observation !== ENGINE_TURNS) : heard;
  const ambiguous = isTrial ? read.ambiguous.filter((one) => !isOfTurning(one)) : read.ambiguous;
  const placed = [understood, denied, acts, ambiguous, read.replaced].some((of) => of.length > 0);
  const found = { understood, denied, acts, ambiguous, afterwards };
  return { ...found, notUnderstood: placed ? [] : [`${key}: ${value}`] };
}

/**
 * That the engine runs, said under a key of its own, tells what came of something ("new coil:
 * started", "light work: restarts") and never how the machine was found.
 */
function saysItRuns(one: Understood): boolean {
  return "state" in one && one.observation === ON_START && one.state === "starts";
}

/**
 * That the engine turns, said by a technician under a name of two words and more and with nothing
 * of how the trouble shows, tells what came of a trial: "jump lead to the block: cranks at full speed".
 */
function tellsOnlyOfTurning(heard: readonly Understood[]): boolean {
  const turning = heard.filter((one) => one.observation === ENGINE_TURNS);
  return (
    heard.every((one) => one.observation !== ON_START) &&
    turning.every((one) => "state" in one && one.state === "normal")
  );
}

function isOfTurning({ options }: Ambiguous): boolean {
  return options.some(({ observation }) => observation === ENGINE_TURNS);
}

function plainState(observation: ReaderObservation, value: string): Understood | null {
  const state = value.trim();
  if (!observation.states.some((one) => one.id === state)) return null;
  return {
    observation: observation.id,
    state,
    probability: 1,
    hedge: 0,
    source: "self",
    span: [0, value.length],
  };
}
