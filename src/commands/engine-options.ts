import type { Learning } from "../cases/learning.ts";
import type { ModelOptions } from "../diagnosis/compile.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { ShopSettings } from "../domain/settings.ts";
import { machineOf } from "../talk/desk.ts";
import { type CircuitBanks, MILD_CELSIUS, type Weather, weatherTold } from "./circuit-banks.ts";

function weatherOf(state: CaseState, settings: ShopSettings): Weather {
  const month = new Date(state.opened.at).getUTCMonth();
  const usualCelsius = settings.monthlyTemperatures?.[month] ?? MILD_CELSIUS;
  return { ...weatherTold(state.answers.map(({ report }) => report)), usualCelsius };
}

/**
 * What the engine is compiled with for a case: the simulated circuits of its machine at its
 * temperature, as far as they stand; until then it weighs by rows.
 */
export function engineOptions(
  banks: CircuitBanks,
  settings: ShopSettings,
): (state: CaseState) => { readonly key: string; readonly options: ModelOptions } {
  return (state) => {
    const weather = weatherOf(state, settings);
    const joint = banks.now(machineOf(state), weather);
    const key = `${weather.told ?? weather.usualCelsius} ${joint.length}`;
    return { key, options: { joint } };
  };
}

type OptionsFor = ReturnType<typeof engineOptions>;

/** The same, with what the shop has learned about the machine's kind. */
export function withLearning(options: OptionsFor, learning: Learning): OptionsFor {
  return (state) => {
    const base = options(state);
    const learned = learning(machineOf(state).kind);
    return {
      key: `${base.key} ${learned.key}`,
      options: { ...base.options, ...learned.options },
    };
  };
}
