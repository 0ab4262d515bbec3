import type { Channel } from "./channel.ts";
import { expected } from "./cost-to-go.ts";
import { bestPolicy, type Portfolio, suggested } from "./policies.ts";
import { type CheckValue, outcomesOf } from "./value.ts";

/** A question with its value taken alone. */
export interface Valued {
  readonly channel: Channel;
  readonly burden: number;
  /** Evidence group of its observation: within one group answers are not independent. */
  readonly group: number;
  readonly value: CheckValue;
}

/** Second questions considered after each answer. */
const SECOND_QUESTIONS = 8;

/**
 * Values with a second question thought through for the best few: a question may be worth little
 * alone and much because of what can then be asked. Never less than the value taken alone.
 */
export function withLookAhead(
  portfolio: Portfolio,
  questions: readonly Valued[],
  most: number,
): readonly CheckValue[] {
  const perBurden = ({ value, burden }: Valued): number => (value.minutes + value.bits) / burden;
  const ranked = [...questions].sort((a, b) => perBurden(b) - perBurden(a));
  const first = new Set(ranked.slice(0, most));
  const second = ranked.slice(0, SECOND_QUESTIONS);
  return questions.map((question) =>
    first.has(question) ? twoSteps(portfolio, question, second) : question.value,
  );
}

/** The second question's net saving after each answer, beyond what it saves without the first. */
function twoSteps(portfolio: Portfolio, question: Valued, second: readonly Valued[]): CheckValue {
  const others = second.filter((other) => other.group !== question.group);
  let more = -Math.max(0, ...others.map(({ value, burden }) => value.minutes - burden));
  for (const joint of outcomesOf(portfolio, question.channel)) {
    const own = [...portfolio.policies, ...suggested(portfolio, joint)];
    const now = expected(joint, bestPolicy(own, joint).costs);
    const mass = joint.reduce((sum, weight) => sum + weight, 0);
    const saved = others.map(
      (other) =>
        now - costAfter({ ...portfolio, policies: own }, joint, other) - other.burden * mass,
    );
    more += Math.max(0, ...saved);
  }
  return { ...question.value, minutes: question.value.minutes + Math.max(0, more) };
}

function costAfter(portfolio: Portfolio, weights: Float64Array, other: Valued): number {
  let after = 0;
  for (const joint of outcomesOf(portfolio, other.channel, weights)) {
    const policies = [...portfolio.policies, ...suggested(portfolio, joint)];
    after += expected(joint, bestPolicy(policies, joint).costs);
  }
  return after;
}
