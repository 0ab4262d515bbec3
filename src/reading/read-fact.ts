import type {
  Ambiguous,
  Reader,
  ReaderModel,
  ReaderObservation,
  ReadOptions,
  Understood,
} from "../domain/reading.ts";

/** What one entry of a case file says. */
export interface FactReading {
  readonly understood: readonly Understood[];
  readonly ambiguous: readonly Ambiguous[];
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
    ambiguous: parts.flatMap((part) => part.ambiguous),
    notUnderstood: parts.flatMap((part) => part.notUnderstood),
  };
}

function readOne(key: string, value: string, tools: FactTools): FactReading {
  for (const id of aliases[key] ?? [key]) {
    const observation = tools.model.observations.get(id);
    const plain = observation === undefined ? null : plainState(observation, value);
    if (plain !== null) return { understood: [plain], ambiguous: [], notUnderstood: [] };
  }
  const answered = answer(key, value, tools);
  if (answered !== null) return answered;
  // Without the colon, so that "lights: bright" reads as one phrase.
  const text = `${key.replaceAll(/[-_]/g, " ")} ${value}`;
  const read = tools.reader.read(text, tools.options);
  const placed = read.understood.length + read.ambiguous.length + read.replaced.length > 0;
  return {
    understood: read.understood,
    ambiguous: read.ambiguous,
    notUnderstood: placed ? [] : [`${key}: ${value}`],
  };
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

/** The value as an answer to the question that the key names. */
function answer(key: string, value: string, tools: FactTools): FactReading | null {
  if (!tools.model.observations.has(key)) return null;
  const read = tools.reader.read(value, { ...tools.options, expecting: { observation: key } });
  const own = read.understood.filter((one) => one.observation === key);
  if (own.length === 0) return null;
  return { understood: read.understood, ambiguous: read.ambiguous, notUnderstood: [] };
}
