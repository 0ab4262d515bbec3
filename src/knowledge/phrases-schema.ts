import { z } from "zod";
import { commands } from "../domain/reading.ts";
import { Fuel, MachineKindId } from "../domain/vocabulary.ts";

/** Words with blanks between them. */
const words = z.string().min(1);
/** Phrases: a list, or one text with commas between them. */
const phrases = z.union([z.string().min(1), z.array(z.string().min(1)).min(1)]);
/** `observation=state`, several with commas between them. */
const claims = z.string().min(1);
const share = z.number().gt(0).max(1);

const sign = z.strictObject({
  say: phrases,
  unless: phrases.optional(),
  means: claims.optional(),
  maybe: claims.optional(),
  denied: claims.optional(),
  "denied-maybe": claims.optional(),
  sure: share.default(0.95),
  past: z.boolean().default(false),
  "gives-way": z.boolean().default(false),
});

const together = z.strictObject({
  when: z.string().min(1),
  means: claims.optional(),
  settles: z.string().default(""),
  "one-sentence": z.boolean().default(false),
});

const grammar = z.strictObject({
  not: words,
  "not-after": words,
  or: words,
  stop: words,
  perceive: words,
  joins: words,
  sequence: words,
  after: words.optional(),
  /** Labels of the entry that tells what put the machine right. */
  remedy: phrases.optional(),
  /** Words that lead from a state to its thing: "a nest *in* the exhaust". */
  at: words.optional(),
  /** Words of looking, behind which a comma ends nothing. */
  looked: words.optional(),
  fillers: words,
  now: phrases,
  before: phrases,
  "second-hand": phrases,
  "second-hand-all": phrases,
  unreal: phrases,
  /** Another machine, a question, a plan: what follows up to a comma or to `here` is no fact. */
  elsewhere: phrases.optional(),
  here: phrases.optional(),
  hedges: z.array(z.strictObject({ strength: share, say: phrases })),
});

const numbers = z.strictObject({
  thousands: z.enum([",", ".", ""]),
  words: z.record(z.string(), z.number()),
  ordinals: z.record(z.string(), z.number()),
  units: z.record(z.string(), words),
  about: words,
  range: words,
  between: words,
  "between-and": words,
  times: z.array(
    z.strictObject({ hours: z.number().gt(0), ago: z.boolean().default(false), say: phrases }),
  ),
  /** Words that say a meter shows nothing, by unit: "no volts". */
  zero: z.record(z.string(), phrases).optional(),
  ago: words,
  /** True where they stand in front of the length of time. */
  "ago-first": z.boolean().default(false),
  /** Words before and behind a temperature that make it one below zero. */
  minus: words.optional(),
  "below-zero": words.optional(),
  since: words,
  nominal: words,
  /** Words that lead from the thing to its nominal voltage: "batería *de* 12 voltios". */
  "nominal-of": words.optional(),
  age: words,
  months: z.array(words).length(12),
});

/** A thing with its states: each name with each state is a phrase, in either order. */
const thing = z.strictObject({
  names: phrases,
  sure: share.default(0.9),
  /** True where name and state together may mean something else in a story. */
  "only-asked": z.boolean().default(false),
  states: z.record(z.string(), phrases),
});

/** Parts that somebody looked at; `$part` in a phrase of `bad` and `good` is each of its names. */
const foundParts = z.strictObject({
  sure: share.default(0.9),
  bad: phrases,
  good: phrases.optional(),
  names: z.record(
    z.string(),
    z.strictObject({
      means: claims,
      names: phrases,
      /** Stands in the place of `$bad`. */
      bad: words.optional(),
      /** Said of this part only, when it is bad. */
      say: phrases.optional(),
    }),
  ),
});

/** Signs, denied ones with "not" before them, with commas between them. */
const signRefs = z.string().min(1);

const outcomes = z.strictObject({ cured: signRefs, "no-change": signRefs, still: signRefs });

const band = z.strictObject({
  observation: z.string(),
  unit: z.string(),
  near: phrases.optional(),
  unless: phrases.optional(),
  /** `state below 24`, several with commas between them; the last has no limit. */
  states: z.string().min(1),
});

const measure = z.strictObject({
  observation: z.string(),
  unit: z.string(),
  near: phrases,
  unless: phrases.optional(),
  weight: z.number().min(0).max(1).default(0),
});

/** The file `locales/<language>/phrases.yaml`; `locales/README.md` tells what each key means. */
export const PhrasesFile = z.strictObject({
  language: z.string().regex(/^[a-z]{2}$/),
  stemmer: z.string(),
  /** Who of those who grew up with the language has read it, and when; "not yet" until then. */
  reviewed: z.string().optional(),
  endings: words.optional(),
  "same-as": z.record(z.string(), words).optional(),
  ordinary: words,
  known: words.optional(),
  classes: z.record(z.string(), words).optional(),
  grammar,
  numbers,
  signs: z.record(z.string(), sign),
  parts: foundParts.optional(),
  together: z.array(together).optional(),
  measures: z.array(measure).optional(),
  bands: z.array(band).optional(),
  components: z.record(z.string(), phrases),
  replaced: phrases,
  "not-replaced": phrases.optional(),
  "replaced-means": z.record(z.string(), claims).optional(),
  acts: z.record(z.string(), phrases).optional(),
  repairs: z.record(z.string(), z.string().min(1)).optional(),
  outcomes: outcomes.optional(),
  things: z.record(z.string(), thing).optional(),
  answers: z.record(z.string(), z.record(z.string(), phrases)).optional(),
  urgency: z.strictObject({ high: phrases, low: phrases }),
  "red-flags": z.record(z.string(), phrases),
  commands: z.partialRecord(z.enum(commands), phrases),
  politeness: words,
  fuels: z.partialRecord(Fuel, phrases),
  machines: z.partialRecord(MachineKindId, phrases).optional(),
});
export type PhrasesFile = z.infer<typeof PhrasesFile>;
