import { z } from "zod";
import { FrequencyWord, Fuel, frequencyWords, MachineKindId } from "../domain/vocabulary.ts";

/** Longest texts, in UTF-16 units, so that a message with its question, its hint, its cautions and
 * a third more for other languages stays under the 4,096 of one Telegram message (Bot API). */
export const textLimits = { title: 60, button: 44, line: 300, paragraph: 600 } as const;

export const Id = z.string().regex(/^[a-z][a-z0-9-]*$/);
export const Title = z.string().trim().min(1).max(textLimits.title);
export const ButtonText = z.string().trim().min(1).max(textLimits.button);
export const Line = z.string().trim().min(1).max(textLimits.line);
export const Paragraph = z.string().trim().min(1).max(textLimits.paragraph);
export const Source = z.string().trim().min(1).max(textLimits.line);

/** A list that may also be written as its only member. */
export function listOf<T extends z.ZodType>(item: T) {
  return z.preprocess(
    (value) => (Array.isArray(value) || value === undefined ? value : [value]),
    z.array(item).min(1),
  );
}

const oftenSays = (input: unknown) =>
  `How often? Here stands ${JSON.stringify(input)}; ` +
  `write a number from 0 to 1 or one of: ${frequencyWords.join(", ")}.`;
const oftenError = { error: (issue: { input?: unknown }) => oftenSays(issue.input) };

/** How often: a word, or a probability. */
export const Often = z.union(
  [FrequencyWord, z.number().min(0, oftenError).max(1, oftenError)],
  oftenError,
);
export type Often = z.infer<typeof Often>;

/** A row: how often each state is seen; `source` may stand among the states. */
export const RowText = z.object({ source: Source.optional() }).catchall(Often);
export type RowText = Readonly<Record<string, Often | string | undefined>>;

/** How many times more often (above 1) or less often (below 1) something is so. */
export const Times = z.number().positive().max(100);

/** What must hold of the machine; every stated line must. */
export const Condition = z.strictObject({
  kinds: listOf(MachineKindId).optional(),
  fuels: listOf(Fuel).optional(),
  features: listOf(Id).optional(),
  volts: listOf(z.number().positive()).optional(),
  "age-from": z.number().min(0).optional(),
  "age-to": z.number().min(0).optional(),
});
export type ConditionText = z.infer<typeof Condition>;

/** Only in these states of other observations: `on-start: [slow, one-click]`. */
export const OnlyIf = z.record(Id, listOf(z.string()));

/** Two figures with "to" between them, as in `0 to 15`. */
export const Span = z
  .string({ error: 'Two figures are needed, written like "0 to 15".' })
  .regex(/^-?\d+(\.\d+)? to -?\d+(\.\d+)?$/, {
    error: 'Two figures are needed, written like "0 to 15".',
  })
  .transform((text): readonly [number, number] => {
    const [low = "0", high = "0"] = text.split(" to ");
    return [Number(low), Number(high)];
  })
  .refine(([low, high]) => low <= high, { error: "The first figure must be the smaller one." });
