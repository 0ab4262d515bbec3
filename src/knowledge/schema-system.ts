import { z } from "zod";
import {
  CauseGroup,
  Drawing,
  Performer,
  ProcedureStep,
  Reporter,
  Stage,
} from "../domain/vocabulary.ts";
import {
  ButtonText,
  Condition,
  Id,
  Line,
  listOf,
  Often,
  OnlyIf,
  Paragraph,
  RowText,
  Source,
  Span,
  Times,
  Title,
} from "./schema-words.ts";

const minutes = z.number().positive().max(600);
const ids = listOf(Id).optional();

export const FaultText = z.strictObject({
  title: Title,
  group: CauseGroup,
  share: z.number().positive().max(100),
  source: Source.optional(),
  blocks: Stage,
  needs: Condition.optional(),
  like: Id.optional(),
  circuit: z.boolean().optional(),
  "more-likely": z
    .array(z.strictObject({ when: Condition, times: Times, because: Line }))
    .optional(),
  "more-likely-when": z.record(Id, z.record(z.string(), Times)).optional(),
  cranking: RowText.optional(),
  firing: RowText.optional(),
  shows: z.record(Id, RowText).optional(),
  brings: z.record(Id, Often).optional(),
  "cured-by": z.record(Id, Often).optional(),
  "hidden-by": z.record(Id, Often).optional(),
  remedies: listOf(Id),
  explain: Line,
  "not-yet": z.record(Id, Id).optional(),
  "cannot-be-told-from": ids,
});
export type FaultText = z.infer<typeof FaultText>;

/** A number: that the truth is told. States: the truth of each, and `otherwise` for the rest. */
export const Reliability = z.union(
  [
    z.number().min(0).max(1),
    z.record(
      z.string(),
      z.union([z.number().min(0).max(1), z.record(z.string(), z.number().min(0).max(1))]),
    ),
  ],
  { error: "How reliable? Write a number from 0 to 1, or for each state what is said instead." },
);
export type Reliability = z.infer<typeof Reliability>;

const Band = z.strictObject({
  title: ButtonText,
  from: z.number().optional(),
  to: z.number().optional(),
});

export const ObservationText = z.strictObject({
  title: Title,
  kind: z.enum(["states", "number", "list", "text"]).default("states"),
  states: z.record(Id, ButtonText).optional(),
  bands: z.record(Id, Band).optional(),
  unit: z.enum(["V", "A", "°C", "h", "bar", "SG", "Ω", "rpm"]).optional(),
  "scales-with-volts": z.boolean().default(false),
  plausible: Span.optional(),
  "meter-error": z
    .strictObject({ absolute: z.number().min(0), relative: z.number().min(0).max(0.5) })
    .optional(),
  usual: RowText.optional(),
  "says-nothing": ids,
  context: z.boolean().default(false),
  /** People tell of it unasked; no check asks. */
  "told-only": z.boolean().default(false),
  "reported-by": z.partialRecord(Reporter, Reliability).optional(),
  combine: z.enum(["precedence", "noisy-or", "noisy-max"]).default("precedence"),
  "without-cause": RowText.optional(),
  "only-if": OnlyIf.optional(),
  needs: Condition.optional(),
  /** What an answer tells of the machine itself: "by cord" means no starter, no lamps. */
  "tells-features": z.record(Id, z.record(Id, z.boolean())).optional(),
  follows: z.record(Id, z.record(z.string(), RowText)).optional(),
  source: Source.optional(),
});
export type ObservationText = z.infer<typeof ObservationText>;

export const CheckText = z.strictObject({
  title: Title,
  finds: Id,
  step: ProcedureStep,
  by: listOf(Performer),
  ask: Line,
  how: Paragraph.optional(),
  minutes,
  burden: minutes.optional(),
  tools: ids,
  access: Id.optional(),
  cautions: ids,
  needs: Condition.optional(),
  "only-if": OnlyIf.optional(),
  after: ids,
  "at-machine": z.boolean().optional(),
  "operator-needs": ids,
  verdicts: z
    .record(
      Id,
      z.strictObject({ states: listOf(z.string()), "only-if": OnlyIf.optional(), text: Line }),
    )
    .optional(),
  menu: z.record(Id, z.strictObject({ title: ButtonText, states: listOf(z.string()) })).optional(),
  /** Answers the menu leaves out: no machine that is asked so can show them. */
  "not-offered": ids,
  photo: z.boolean().default(false),
  "always-asked": z.boolean().default(false),
  drawing: Drawing.optional(),
  source: Source.optional(),
});
export type CheckText = z.infer<typeof CheckText>;

/** What it changes in the starting circuit, by the names of the circuit files' `acts`. */
const InCircuit = z.enum(["jump", "charge", "clean", "earth-lead", "bridge"]);

/** Where an operator is told not to do it, and why. */
const RefusalText = z
  .strictObject({ when: Condition.optional(), told: OnlyIf.optional(), because: Line })
  .refine((one) => one.when !== undefined || one.told !== undefined, {
    error: 'Say where: "when:" for machines, "told:" for what people have said.',
  });

export const ActText = z.strictObject({
  title: Title,
  by: listOf(Performer),
  ask: Line,
  how: Paragraph.optional(),
  minutes,
  burden: minutes.optional(),
  cautions: ids,
  needs: Condition.optional(),
  "only-if": OnlyIf.optional(),
  "left-to-shop": z.record(Id, RefusalText).optional(),
  "operator-needs": ids,
  tools: ids,
  reports: Id.optional(),
  "cured-means": Id.optional(),
  "ask-again": ids,
  "in-circuit": InCircuit.optional(),
  source: Source.optional(),
});
export type ActText = z.infer<typeof ActText>;

export const RemedyText = z.strictObject({
  title: Title,
  by: listOf(Performer),
  minutes,
  parts: ids,
  tools: ids,
  access: Id.optional(),
  cautions: ids,
  cures: Often,
  text: Paragraph,
  "in-circuit": InCircuit.optional(),
  source: Source.optional(),
});
export type RemedyText = z.infer<typeof RemedyText>;

export const LatentText = z.strictObject({
  title: Title,
  states: listOf(Id),
  usual: RowText,
  "shown-by": z.record(Id, z.record(z.string(), RowText)),
  source: Source.optional(),
});
export type LatentText = z.infer<typeof LatentText>;

/** A file under `flows/systems/` or `flows/questions/`. */
export const SystemFile = z.strictObject({
  title: Title,
  source: Source.optional(),
  faults: z.record(Id, FaultText).optional(),
  observations: z.record(Id, ObservationText).optional(),
  checks: z.record(Id, CheckText).optional(),
  acts: z.record(Id, ActText).optional(),
  remedies: z.record(Id, RemedyText).optional(),
  latent: z.record(Id, LatentText).optional(),
});
export type SystemFile = z.infer<typeof SystemFile>;
