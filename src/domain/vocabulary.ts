import { z } from "zod";

/** The part whose repair cures the complaint. Every fault carries exactly one. */
export const causeGroups = [
  "battery",
  "terminals",
  "ground",
  "power-cable",
  "fuse-breaker",
  "key-switch",
  "interlock",
  "operator-setting",
  "relay-solenoid",
  "starter-motor",
  "starter-drive",
  "charging",
  "parasitic",
  "engine-mechanical",
  "fuel",
  "ignition",
  "preheat",
  "air",
  "wiring-controller",
  "other",
] as const;
export const CauseGroup = z.enum(causeGroups);
export type CauseGroup = z.infer<typeof CauseGroup>;

/** What a machine burns. */
export const fuels = ["petrol", "diesel", "gas"] as const;
export const Fuel = z.enum(fuels);
export type Fuel = z.infer<typeof Fuel>;

/** Machine kinds that free text is mapped to. */
export const machineKinds = [
  "ride-on-mower",
  "zero-turn",
  "garden-tractor",
  "compact-tractor",
  "utility-tractor",
  "row-crop-tractor",
  "old-tractor",
  "combine",
  "harvester",
  "sprayer",
  "skid-steer",
  "telehandler",
  "backhoe-loader",
  "atv",
  "walk-behind",
  "pump-or-generator",
  "other",
] as const;
export const MachineKindId = z.enum(machineKinds);
export type MachineKindId = z.infer<typeof MachineKindId>;

/**
 * The stages between the key and a running engine, in the order in which they happen. When two
 * faults are present the earliest blocked stage decides what the operator hears. `none` is for
 * faults that block nothing by themselves (a parasitic draw, a charging failure).
 */
export const stages = [
  "control",
  "pull-in",
  "motor",
  "mesh",
  "engine-drag",
  "combustion",
  "keeps-running",
  "none",
] as const;
export const Stage = z.enum(stages);
export type Stage = z.infer<typeof Stage>;

/** Whose eyes and hands a fact comes from; each has its own reliability per observation. */
export const reporters = ["operator", "second-hand", "photo", "technician"] as const;
export const Reporter = z.enum(reporters);
export type Reporter = z.infer<typeof Reporter>;

/** The people a check, an act or a remedy may be given to. */
export const performers = ["operator", "technician"] as const;
export const Performer = z.enum(performers);
export type Performer = z.infer<typeof Performer>;

/** The procedure's steps, in the order in which the interview prefers them. */
export const procedureSteps = ["talk", "inspect", "try", "measure"] as const;
export const ProcedureStep = z.enum(procedureSteps);
export type ProcedureStep = z.infer<typeof ProcedureStep>;

/** Frequency words that people write in `flows/`; their numbers are in `flows/shared/words.yaml`. */
export const frequencyWords = [
  "never",
  "rarely",
  "sometimes",
  "often",
  "usually",
  "nearly-always",
] as const;
export const FrequencyWord = z.enum(frequencyWords);
export type FrequencyWord = z.infer<typeof FrequencyWord>;

/** The observation that every call turns on: what happens when the key is turned to START. */
export const ON_START = "on-start";

/** The observation of how the starter turns the engine. */
export const ENGINE_TURNS = "engine-turns";

/** How far cranking gets; the first stage of `on-start`. `turns` = the engine turns normally. */
export const crankingStates = [
  "nothing",
  "one-click",
  "fast-clicks",
  "slow",
  "turns-then-stops",
  "uneven",
  "kicks-back",
  "spins-alone",
  "grinds",
  "keeps-cranking",
  "turns",
] as const;
export type CrankingState = (typeof crankingStates)[number];

/** What combustion does once the engine turns; the second stage of `on-start`. */
export const firingStates = [
  "turns-no-fire",
  "fires-then-dies",
  "runs-only-while-held",
  "starts",
] as const;
export type FiringState = (typeof firingStates)[number];

/** Drawings of our own that a check may show: what to look at, and where on the machine. */
export const drawings = [
  "battery-posts",
  "earth-strap",
  "fuse-box",
  "stop-knob",
  "solenoid",
] as const;
export const Drawing = z.enum(drawings);
export type Drawing = z.infer<typeof Drawing>;
