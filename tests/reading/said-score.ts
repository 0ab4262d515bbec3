import { readFileSync } from "node:fs";
import { parse } from "yaml";
import { z } from "zod";
import type { Reader, Understood } from "../../src/domain/reading.ts";

const Said = z.array(
  z.strictObject({
    say: z.string(),
    by: z.enum(["operator", "technician"]).optional(),
    means: z.record(z.string(), z.string()),
    /** What it also says, or nearly says; neither asked for nor wrong. */
    may: z.array(z.string()).default([]),
  }),
);

/** Units of the sentences in the unit of the knowledge; the pound per square inch by NIST SP 811. */
const inKnowledgeUnit: Readonly<Record<string, number>> = {
  mV: 0.001,
  mA: 0.001,
  kohm: 1000,
  psi: 0.0689476,
  kPa: 0.01,
};

/** A reading counts as the one that is meant when it is this near: one hundredth. */
const NEAR = 0.011;

/**
 * What goes without saying where something else was said, and is therefore not wrong though the
 * sentence was not written for it: a part that was changed was replaced, an engine that "turns but
 * will not fire" turns. By what was said, from the start of its name.
 */
const follows: Readonly<Record<string, readonly string[]>> = {
  "recent-work=": ["recent-event=parts-replaced"],
  "spark-new-plug=": ["recent-event=parts-replaced", "recent-work=ignition-work"],
  "fuse-again=": ["recent-event=parts-replaced"],
  "jump-start=": ["recent-event=jump-started"],
  "recent-event=refuelled": ["fuel-level=said-enough"],
  "on-start=turns-no-fire": ["engine-turns=normal"],
  "on-start=slow": ["engine-turns=slow"],
  "on-start=turns-then-stops": ["engine-turns=part-turn"],
  "on-start=spins-alone": ["engine-turns=no"],
  "on-start=fast-clicks": ["click-sound=repeated"],
  "engine-turns=slow": ["on-start=slow"],
  "engine-turns=part-turn": ["on-start=turns-then-stops"],
  "click-sound=none": ["on-start=nothing"],
  "click-sound=faint": ["on-start=one-click"],
  "click-sound=loud": ["on-start=one-click"],
  "click-sound=repeated": ["on-start=fast-clicks"],
  "wires-look=chewed": ["recent-event=rodents-seen"],
  "hose-run=wrong": ["found-bad=fuel-line"],
  "found-bad=injectors": ["injector-test=bad"],
  "found-bad=plus-cable": ["joint-look=corroded", "joint-look=loose"],
  "found-bad=earth-cable": ["joint-look=corroded", "joint-look=loose"],
  "found-bad=starter-drive": ["teeth-look=pinion-bad"],
  "brush-look=": ["found-bad=starter"],
};

export interface SaidScore {
  readonly precision: number;
  readonly recall: number;
}

/** Precision and recall on the sentences of one file, over every observation. */
export function scoreSaid(reader: Reader, name: string): SaidScore {
  const file = new URL(`./${name}.yaml`, import.meta.url);
  let [found, right, stated, missed] = [0, 0, 0, 0];
  for (const { say, means, may } of Said.parse(parse(readFileSync(file, "utf8")))) {
    const meant = Object.entries(means).map(([id, value]) => `${id}=${value}`);
    const read = distinct(reader.read(say, { languages: ["en"] }).understood);
    found += read.length;
    right += read.filter((one) => isMeant(one, [...meant, ...may])).length;
    stated += meant.length;
    missed += meant.filter((one) => !read.some((reading) => says(reading, one))).length;
  }
  return { precision: right / found, recall: 1 - missed / stated };
}

function distinct(readings: readonly Understood[]): readonly Understood[] {
  return [...new Map(readings.map((one) => [nameOf(one), one] as const)).values()];
}

/** `observation=state`, `observation=12.1`. */
export function nameOf(reading: Understood): string {
  return `${reading.observation}=${"state" in reading ? reading.state : reading.value}`;
}

function isMeant(reading: Understood, meant: readonly string[]): boolean {
  return meant.some((one) => says(reading, one)) || followsFrom(nameOf(reading), meant);
}

/** True where a reading goes without saying beside one of those that were meant. */
export function followsFrom(name: string, meant: readonly string[]): boolean {
  return Object.entries(follows).some(
    ([said, also]) => also.includes(name) && meant.some((one) => one.startsWith(said)),
  );
}

/** Whether a reading is what `observation=state` or `observation=12.1 V` stands for. */
function says(reading: Understood, meant: string): boolean {
  if ("state" in reading) return nameOf(reading) === meant;
  const [id, text = ""] = meant.split("=");
  const [figures, unit = ""] = text.split(" ");
  const value = Number(figures) * (inKnowledgeUnit[unit] ?? 1);
  const apart = Math.abs(reading.value - value);
  return reading.observation === id && apart <= Math.max(NEAR * Math.abs(value), 0.001);
}
