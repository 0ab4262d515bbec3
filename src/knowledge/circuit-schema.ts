import { z } from "zod";

/** The shape of a circuit file once it is laid over what it is based on; values are still text. */

const Id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "use small letters, digits and hyphens");
/** A figure: text with its unit, or a plain number. */
const Figure = z.union([z.string(), z.number()]).transform(String);
const Figures = z.record(z.string(), Figure);
const Key = z.enum(["off", "on", "start"]);

const Part = z
  .object({
    is: z.enum([
      "battery",
      "cable",
      "joint",
      "fuse",
      "isolator",
      "interlock",
      "contact",
      "coil",
      "motor",
      "lamp",
      "resistor",
    ]),
    from: Id,
    to: Id,
    label: z.string(),
    closed: z.array(Key).optional(),
    hidden: z.boolean().optional(),
  })
  .catchall(Figure);

const ActuatorShape = z
  .object({
    coils: z.array(Id).min(1),
    hold: Id,
    contact: Id,
    sound: z.enum(["faint", "loud"]),
    label: z.string(),
  })
  .catchall(Figure);

/** `weight` and any number of `part.figure: becomes | plus | times …`. */
const Change = z.object({ weight: z.number().positive() }).catchall(Figure);
const Changes = z.array(Change).min(1);

export const FaultShape = z.union([
  Changes.transform((as) => ({ as, mild: undefined })),
  z.strictObject({ as: Changes, mild: Changes.optional() }).transform(({ as, mild }) => {
    return { as, mild };
  }),
]);
export type FaultShape = z.output<typeof FaultShape>;
export type ChangesShape = z.output<typeof Changes>;

const TestPointShape = z.strictObject({
  label: z.string(),
  key: Key,
  at: Id.optional(),
  against: Id.optional(),
  drop: z.boolean().optional(),
  measures: z.literal("charging").optional(),
  "amps-through": Id.optional(),
  or: z.record(Id, Id).optional(),
});

const Fuels = z.union([
  z.literal("any").transform((): string[] => []),
  Id.transform((fuel): string[] => [fuel]),
  z.array(Id).min(1),
]);

export const CircuitShape = z.strictObject({
  id: Id,
  title: z.string(),
  "based-on": Id.optional(),
  abstract: z.boolean().optional(),
  for: z.record(Id, Fuels).optional(),
  "weighed-unstated": z.boolean().optional(),
  volts: z.union([z.literal(6), z.literal(12), z.literal(24)]),
  earth: z.enum(["negative", "positive"]),
  reference: Id,
  "stall-amps": Figure,
  size: Figure,
  interlocks: z.array(Id).optional(),
  chain: z.strictObject({ from: Id, to: Id }).optional(),
  "chain-figures": z.record(Id, Figures).optional(),
  remove: z.array(Id).optional(),
  parts: z.record(Id, Part),
  actuators: z.record(Id, ActuatorShape).optional(),
  drive: Figures,
  engine: Figures,
  person: Figures,
  running: Figures,
  acts: z.record(z.enum(["jump", "charge", "clean", "earth-lead", "bridge"]), Changes).optional(),
  "test-points": z.record(Id, TestPointShape),
  faults: z.record(Id, FaultShape).optional(),
});
export type CircuitShape = z.output<typeof CircuitShape>;

export const InterlockShape = z
  .strictObject({ wire: Figures, switch: Figures })
  .catchall(z.strictObject({ label: z.string() }));
export type InterlockShape = z.output<typeof InterlockShape>;

const Point = z.tuple([z.number(), z.number().positive()]);
export const OilShape = z.record(z.string(), z.strictObject({ cold: Point, warm: Point }));
export type OilShape = z.output<typeof OilShape>;

export const FaultFileShape = z.record(Id, FaultShape);
