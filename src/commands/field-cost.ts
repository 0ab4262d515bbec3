import type { ReadCase } from "../cases/case-file.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import { AT_MACHINE } from "../talk/place.ts";
import type { ToldByOperator } from "./told-operator.ts";
import type { WholeCall } from "./whole-call.ts";

/** What a number is in the middle call, and in nine of ten at most. */
interface Spread {
  readonly median: number;
  readonly p90: number;
}

/** What calls cost the people who make them. */
export interface CallCost {
  readonly calls: number;
  readonly messages: Spread;
  readonly taps: Spread;
  readonly questions: Spread;
}

/** The value that so much of a list lies at or under. */
function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.ceil(share * sorted.length) - 1] ?? 0;
}

const spread = (values: readonly number[]): Spread => ({
  median: quantile(values, 0.5),
  p90: quantile(values, 0.9),
});

export const costOf = (calls: readonly WholeCall[]): CallCost => ({
  calls: calls.length,
  messages: spread(calls.map(({ messages }) => messages)),
  taps: spread(calls.map(({ taps }) => taps)),
  questions: spread(calls.map(({ questions }) => questions)),
});

/** What needs no look at the machine, and what nobody would be sent to do but they did. */
function storyOf({ file, entries }: ReadCase, knowledge: Knowledge): string {
  const left = new Set(
    [...knowledge.checks.values()].flatMap(({ performers, step, yields }) =>
      step !== "talk" && performers.includes("operator") ? [yields] : [],
    ),
  );
  return entries
    .filter(
      ({ key, observations }) => key !== AT_MACHINE && !observations.some((id) => left.has(id)),
    )
    .flatMap(({ key }) =>
      [file.operator[key]].flat().map((value) => inWords(key, value, knowledge)),
    )
    .join(". ");
}

/** A state by its id is said by its name; everything else is in words already. */
function inWords(key: string, value: unknown, knowledge: Knowledge): string {
  const observation = knowledge.observations.get(key);
  const state = observation?.states.find(({ id }) => id === value);
  return state === undefined ? String(value) : `${observation?.title}: ${state.title}`;
}

/** What the operator of a written-down case would tell, standing beside the machine. */
export function toldIn(read: ReadCase, knowledge: Knowledge): ToldByOperator {
  const { file, machine, operator, acts } = read;
  const told = new Map<string, string>([[AT_MACHINE, "yes"]]);
  for (const { observation, said } of operator) {
    if (said.kind === "value") told.set(observation, String(said.value));
    if (said.kind === "members" && said.present[0] !== undefined) {
      told.set(observation, said.present[0]);
    }
    if (said.kind !== "states") continue;
    const [likeliest] = Object.entries(said.weights).sort(([, a], [, b]) => b - a);
    if (likeliest !== undefined) told.set(observation, likeliest[0]);
  }
  return {
    ...{ kind: machine.kind, fuel: machine.fuel ?? "", opening: file.opening },
    story: storyOf(read, knowledge),
    told: (observation) => told.get(observation) ?? "",
    came: (act) => acts.find((one) => one.act === act && one.by === "operator")?.outcome ?? "",
  };
}

const both = ({ median, p90 }: Spread) => `median ${median}, 90 % ${p90}`;

/** A line of figures. */
export const costText = ({ calls, messages, taps, questions }: CallCost): string =>
  `  ${calls} whole calls, to the end: messages ${both(messages)}; taps ${both(taps)};` +
  ` questions ${both(questions)}\n`;
