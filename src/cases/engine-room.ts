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
import { machineOf } from "../talk/desk.ts";
import { situationOf } from "../talk/situation.ts";

/** Compiled models kept; one is some hundred kilobytes and a shop sees few kinds of machine. */
const MODELS_KEPT = 24;

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

/** Keeps compiled models by machine, and each answer for as long as its case state lives. */
export function createEngineRoom(parts: EngineRoomParts): EngineRoom {
  const models = new Map<string, Model>();
  const answers = new WeakMap<CaseState, Map<string, Triage>>();

  function modelOf(state: CaseState): Model {
    const machine = machineOf(state);
    const { key: optionsKey, options } = parts.options?.(state) ?? { key: "", options: {} };
    const key = JSON.stringify([machine, optionsKey]);
    const known = models.get(key);
    const model = known ?? compileModel(parts.knowledge, machine, options);
    models.delete(key);
    models.set(key, model);
    const oldest = models.keys().next();
    if (models.size > MODELS_KEPT && !oldest.done) models.delete(oldest.value);
    return model;
  }

  const situation = (state: CaseState, performer: Performer) =>
    situationOf(state, performer, parts.travelMinutes?.(state));

  function triageOf(state: CaseState, performer: Performer): Triage {
    const kept = answers.get(state) ?? new Map<string, Triage>();
    answers.set(state, kept);
    const known = kept.get(performer);
    if (known !== undefined) return known;
    const found = triage(modelOf(state), evidenceOf(state), situation(state, performer), {
      seed: state.opened.seed,
    });
    kept.set(performer, found);
    return found;
  }

  return {
    next: (state, performer) =>
      chooseNext(modelOf(state), evidenceOf(state), situation(state, performer)),
    triage: triageOf,
    expected(state, observation) {
      const [joint] = parts.options?.(state).options.joint ?? [];
      if (joint === undefined) return null;
      const causes = triageOf(state, "technician")
        .ranking.causes.slice(0, CAUSES_EXPECTED)
        .map((cause) => cause.fault);
      const query = { observation, causes };
      return expectedReading(modelOf(state), joint, { evidence: evidenceOf(state), query });
    },
  };
}
