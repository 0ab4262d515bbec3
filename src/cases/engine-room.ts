import { compileModel, type ModelOptions } from "../diagnosis/compile.ts";
import { type ExpectedReading, expectedReading } from "../diagnosis/expected-readings.ts";
import type { Model } from "../diagnosis/model.ts";
import { chooseNext } from "../diagnosis/next-check.ts";
import { triage } from "../diagnosis/triage.ts";
import type { CaseState } from "../domain/case-state.ts";
import { evidenceOf } from "../domain/case-state.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import type { Next, Triage } from "../domain/triage.ts";
import type { Performer } from "../domain/vocabulary.ts";
import { toldMachine } from "../talk/desk.ts";
import { situationOf } from "../talk/situation.ts";

/** Compiled models kept; one is some hundred kilobytes and a shop sees few kinds of machine. */
const MODELS_KEPT = 24;
/** Answers kept: a few for each of the cases that are worked on at once. */
const ANSWERS_KEPT = 64;

/** The engine as a turn asks it: by the state of a case. */
export interface EngineRoom {
  readonly next: (state: CaseState, performer: Performer) => Next;
  readonly triage: (state: CaseState, performer: Performer) => Triage;
  /** What a test point would read; null where no simulated circuit knows it. */
  readonly expected: (state: CaseState, observation: string) => ExpectedReading | null;
}

/** The leading causes whose readings are worth showing beside a healthy machine's. */
const CAUSES_EXPECTED = 3;

export interface EngineRoomParts {
  readonly knowledge: Knowledge;
  /**
   * What the shop has learned, the weather at the time, simulated circuits; the key tells one set
   * of options from another.
   */
  readonly options?: (state: CaseState) => { readonly key: string; readonly options: ModelOptions };
  /** Minutes to the machine, where the place is known. */
  readonly travelMinutes?: (state: CaseState) => number | undefined;
}

/** Remembers what was made under a key; what was not asked for longest is forgotten first. */
function createMemory<T>(limit: number): (key: string, make: () => T) => T {
  const kept = new Map<string, T>();
  return (key, make) => {
    const value = kept.get(key) ?? make();
    kept.delete(key);
    kept.set(key, value);
    const oldest = kept.keys().next();
    if (kept.size > limit && !oldest.done) kept.delete(oldest.value);
    return value;
  };
}

/**
 * Keeps compiled models by machine, and answers by everything they hang on: whoever presses a
 * button that tells nothing of the machine does not make the engine think again.
 */
export function createEngineRoom(parts: EngineRoomParts): EngineRoom {
  const models = createMemory<Model>(MODELS_KEPT);
  const answers = createMemory<Triage>(ANSWERS_KEPT);
  const questions = createMemory<Next>(ANSWERS_KEPT);

  function modelOf(state: CaseState): { readonly key: string; readonly model: Model } {
    const machine = toldMachine(state, parts.knowledge);
    const { key: optionsKey, options } = parts.options?.(state) ?? { key: "", options: {} };
    const key = JSON.stringify([machine, optionsKey]);
    return { key, model: models(key, () => compileModel(parts.knowledge, machine, options)) };
  }

  function askedOf(state: CaseState, performer: Performer) {
    const { key, model } = modelOf(state);
    const evidence = evidenceOf(state);
    const about = situationOf(state, performer, parts.travelMinutes?.(state));
    const { seed } = state.opened;
    return { key: JSON.stringify([key, evidence, about, seed]), model, evidence, about, seed };
  }

  function triageOf(state: CaseState, performer: Performer): Triage {
    const { key, model, evidence, about, seed } = askedOf(state, performer);
    return answers(key, () => triage(model, evidence, about, { seed }));
  }

  return {
    next(state, performer) {
      const { key, model, evidence, about } = askedOf(state, performer);
      return questions(key, () => chooseNext(model, evidence, about));
    },
    triage: triageOf,
    expected(state, observation) {
      const [joint] = parts.options?.(state).options.joint ?? [];
      if (joint === undefined) return null;
      const causes = triageOf(state, "technician")
        .ranking.causes.slice(0, CAUSES_EXPECTED)
        .map((cause) => cause.fault);
      const query = { observation, causes };
      return expectedReading(modelOf(state).model, joint, { evidence: evidenceOf(state), query });
    },
  };
}
