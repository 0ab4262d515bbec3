import { z } from "zod";
import {
  CauseGroup,
  Fuel,
  frequencyWords,
  Performer,
  ProcedureStep,
  Reporter,
} from "../domain/vocabulary.ts";
import {
  Condition,
  Id,
  Line,
  listOf,
  OnlyIf,
  Paragraph,
  Source,
  Span,
  Title,
} from "./schema-words.ts";
import { UrgencyText } from "./urgency.ts";

const minutes = z.number().min(0).max(600);
const share = z.number().positive().max(1);
const probability = z.number().min(0).max(1);

export const PartText = z.strictObject({
  title: Title,
  alternates: listOf(Id).optional(),
  universal: z.boolean().default(false),
  fit: z.array(Line).optional(),
  needs: Condition.optional(),
  price: Span,
  "carry-minutes": minutes,
  source: Source.optional(),
});
export type PartText = z.infer<typeof PartText>;

/** Tools and ways of access bring their cautions along to every check that names them. */
export const ToolText = z.strictObject({ title: Title, cautions: listOf(Id).optional() });
export const AccessText = z.strictObject({
  title: Title,
  minutes,
  cautions: listOf(Id).optional(),
  source: Source.optional(),
});

export const HazardText = z.strictObject({
  title: Title,
  caution: Paragraph,
  "safe-state": z.array(Line).optional(),
  "needed-for": z
    .strictObject({ steps: listOf(ProcedureStep).optional(), finds: listOf(Id).optional() })
    .optional(),
  source: Source.optional(),
});
export type HazardText = z.infer<typeof HazardText>;

export const RedFlagText = z.strictObject({
  title: Title,
  say: Paragraph,
  emergency: z.boolean().default(false),
  offer: z.boolean().default(true),
  "seen-as": OnlyIf.optional(),
  source: Source.optional(),
});

/** What nobody, or no operator, may be sent to do. */
export const ForbiddenText = z.strictObject({
  who: z.union([Performer, z.literal("anyone")], {
    error: "Write operator, technician or anyone.",
  }),
  says: Line,
  finds: listOf(Id).optional(),
  readings: z.strictObject({ allowed: listOf(Id) }).optional(),
  access: listOf(Id).optional(),
  phrases: z.array(z.string().min(3)).optional(),
  source: Source.optional(),
});
export type ForbiddenText = z.infer<typeof ForbiddenText>;

export const RatesText = z.strictObject({
  "travel-minutes": minutes,
  "second-trip-minutes": minutes,
  "collect-minutes": minutes,
  "operator-minute": z.number().min(0),
  "standstill-per-hour": z.strictObject({ low: minutes, normal: minutes, high: minutes }),
  "call-for-help-minutes": minutes,
  "something-else": share,
  "nothing-wrong": share,
  "repeats-itself": probability,
  "cured-by-the-way": probability.default(0),
  "pair-cut-off": share,
  "share-strength": z.number().positive(),
  "told-unasked": z.partialRecord(Reporter, z.number().min(1).max(20)).default({}),
});

const frequencyShape = z.record(z.enum(frequencyWords), probability);

export const WordsText = z.strictObject({
  frequency: frequencyShape,
  reliability: z.record(Reporter, probability),
  "named-falsely": probability,
});

/** A file under `flows/shared/`: any of these sections. */
export const SharedFile = z.strictObject({
  source: Source.optional(),
  parts: z.record(Id, PartText).optional(),
  tools: z.record(Id, ToolText).optional(),
  access: z.record(Id, AccessText).optional(),
  hazards: z.record(Id, HazardText).optional(),
  "red-flags": z.record(Id, RedFlagText).optional(),
  features: z.record(Id, Title).optional(),
  forbidden: z.record(Id, ForbiddenText).optional(),
  negations: z.array(z.string().min(1)).optional(),
  rates: RatesText.optional(),
  words: WordsText.optional(),
  urgency: UrgencyText.optional(),
  photos: z.record(Id, listOf(CauseGroup)).optional(),
});
export type SharedFile = z.infer<typeof SharedFile>;

/** A file under `flows/machines/`: one kind of machine. */
export const MachineFile = z.strictObject({
  title: Title,
  family: Id,
  offer: z.number().int().min(0),
  source: Source,
  synonyms: z.array(z.string().min(1)).min(1),
  fuels: z.partialRecord(Fuel, share),
  volts: z.record(z.string().regex(/^\d+$/), share),
  systems: z.union([z.literal("all"), z.array(Id).min(1)], {
    error: 'Write "all", or a list of system files.',
  }),
  without: listOf(Id).optional(),
  features: z.record(
    Id,
    z.union([z.literal("always"), share], {
      error: 'Write "always", or the share of these machines that have it (0 to 1).',
    }),
  ),
});
export type MachineFile = z.infer<typeof MachineFile>;
