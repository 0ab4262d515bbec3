import { z } from "zod";
import { Fuel, MachineKindId } from "./vocabulary.ts";

const facts = z.object({
  kind: MachineKindId,
  fuel: Fuel.exactOptional(),
  volts: z.number().exactOptional(),
  positiveEarth: z.boolean().exactOptional(),
  cylinders: z.number().exactOptional(),
  hours: z.number().exactOptional(),
  ageYears: z.number().exactOptional(),
  features: z.record(z.string(), z.boolean()).exactOptional(),
  words: z.string().exactOptional(),
  serial: z.string().exactOptional(),
});

/** What one document tells another, or itself for later. */
export const FollowUp = z.discriminatedUnion("type", [
  /** To a person: a machine of theirs, new or known better. */
  z.object({
    type: z.literal("machine.seen"),
    machine: z.object({ id: z.string(), title: z.string(), facts }),
  }),
  /** To a person: what they have at hand. */
  z.object({ type: z.literal("equipment.told"), has: z.array(z.string()) }),
  /** To a case: has its operator gone silent? */
  z.object({ type: z.literal("look-in") }),
  /** To a case that was closed some days ago: is the machine still fine? */
  z.object({ type: z.literal("still-fine") }),
  /** To a case: another one was found to be the same trouble. */
  z.object({ type: z.literal("took-in"), other: z.string(), by: z.string(), note: z.string() }),
  /** To a case: its technician does not belong to the shop any more. */
  z.object({ type: z.literal("technician.gone"), person: z.string() }),
  /** To a case: who looks after it has handed everything to somebody else. */
  z.object({ type: z.literal("passed-on"), from: z.string(), to: z.string() }),
  /** To a case: a photo came in and wants looking at. */
  z.object({ type: z.literal("photo.came"), file: z.string() }),
]);
export type FollowUp = z.infer<typeof FollowUp>;

/** What is due in a case by the clock alone. */
export type Due = Extract<FollowUp, { type: "look-in" | "still-fine" }>;
