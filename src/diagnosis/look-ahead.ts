import { expected } from "./cost-to-go.ts";
import { type Answers, best, bestAfter, type Choice, type Costed, joints } from "./value.ts";

/** A question with its value taken alone. */
export interface Question {
  readonly answers: Answers;
  /** Cost of asking it. */
  readonly burden: number;
  /** Evidence group of its observation: within one group answers are not independent. */
  readonly group: number;
  readonly saved: number;
  readonly bits: number;
}

/** Second questions considered after each answer. */
const SECOND_QUESTIONS = 4;

/** Answers rarer than this are not thought further: what they would save is left out. */
const RARE = 0.02;

/**
 * What each of the best few questions saves beyond its own value because of what can be asked
 * after it: a question may be worth little alone and much with another. Never negative.
 * @param most questions for which a second one is thought through; the others get 0
 * @returns expected further saving, one entry a question
 */
export function savedByAsking<P extends Costed>(
  choice: Choice<P>,
  questions: readonly Question[],
  most: number,
): readonly number[] {
  const merit = ({ saved, bits, burden }: Question): number => (saved + bits) / burden;
  const ranked = [...questions].sort((a, b) => merit(b) - merit(a));
  const first = new Set(ranked.slice(0, most));
  return questions.map((question) => {
    if (!first.has(question)) return 0;
    const others = ranked.filter((other) => other.group !== question.group);
    return furtherSaving(choice, question, others.slice(0, SECOND_QUESTIONS));
  });
}

/** The second question's net saving after each answer, beyond what it saves without the first. */
function furtherSaving<P extends Costed>(
  choice: Choice<P>,
  question: Question,
  others: readonly Question[],
): number {
  let more = -Math.max(0, ...others.map(({ saved, burden }) => saved - burden));
  const whole = choice.weights.reduce((sum, weight) => sum + weight, 0);
  for (const joint of joints(choice.weights, question.answers)) {
    const mass = joint.reduce((sum, weight) => sum + weight, 0);
    if (mass < RARE * whole) continue;
    const policies = [...choice.policies, ...choice.suggest(joint)];
    const then = { ...choice, policies };
    const now = expected(joint, best(policies, joint).costs);
    const saved = others.map((other) => now - costAfter(then, joint, other) - other.burden * mass);
    more += Math.max(0, ...saved);
  }
  return Math.max(0, more);
}

function costAfter<P extends Costed>(
  choice: Choice<P>,
  weights: Float64Array,
  other: Question,
): number {
  let after = 0;
  for (const joint of joints(weights, other.answers)) after += bestAfter(choice, joint).cost;
  return after;
}
