import { z } from "zod";
import type { MachineFacts, Report, Said, Situation } from "../domain/evidence.ts";
import { Fuel, MachineKindId, Performer, Reporter } from "../domain/vocabulary.ts";
import { exactly, list, text, whole } from "./exactly.ts";

const facts = z.object({
  kind: MachineKindId,
  fuel: Fuel.exactOptional(),
  volts: z.number().exactOptional(),
  positiveEarth: z.boolean().exactOptional(),
  cylinders: z.number().exactOptional(),
  hours: z.number().exactOptional(),
  ageYears: z.number().exactOptional(),
  features: z.record(text, z.boolean()).exactOptional(),
  words: text.exactOptional(),
  serial: text.exactOptional(),
});

export const machineFacts = exactly<MachineFacts>()(facts);
export const someMachineFacts = exactly<Partial<MachineFacts>>()(
  facts.extend({ kind: MachineKindId.exactOptional() }),
);

const said = exactly<Said>()(
  z.discriminatedUnion("kind", [
    z.object({ kind: z.literal("states"), weights: z.record(text, z.number()) }),
    z.object({ kind: z.literal("value"), value: z.number() }),
    z.object({ kind: z.literal("members"), present: list(text), absent: list(text) }),
    z.object({ kind: z.literal("unknown") }),
  ]),
);

export const report = exactly<Report>()(
  z.object({
    observation: text,
    epoch: whole,
    reporter: Reporter,
    said,
    hedge: z.number(),
    unasked: z.boolean().exactOptional(),
    probes: z.enum(["post", "clamp", "unknown"]).exactOptional(),
  }),
);

export const urgency = exactly<Situation["urgency"]>()(z.enum(["low", "normal", "high"]));

/** Without the epoch, which follows from the order of the events. */
export const actDone = z.object({
  act: text,
  performer: Performer,
  outcome: z.enum(["cured", "no-change", "changed", "unknown"]),
});
