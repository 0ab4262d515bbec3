import { readFileSync } from "node:fs";
import { parse } from "yaml";
import { z } from "zod";
import type { Reader, Understood } from "../../src/domain/reading.ts";

const Opening = z.array(
  z.strictObject({
    id: z.string(),
    text: z.string(),
    says: z.array(z.string()),
    may: z.array(z.string()),
    denied: z.array(z.string()),
  }),
);
export type Opening = z.infer<typeof Opening>[number];

const Fact = z.array(
  z.strictObject({
    id: z.string(),
    key: z.string(),
    value: z.array(z.string()),
    says: z.array(z.string()),
    may: z.array(z.string()),
    denied: z.array(z.string()).default([]),
  }),
);
export type Fact = z.infer<typeof Fact>[number];

export interface Score {
  readonly precision: number;
  readonly recall: number;
  /** `id: observation=state` of everything found that is not there. */
  readonly wrong: readonly string[];
  readonly missed: readonly string[];
  /** States found that the text denies. */
  readonly denied: readonly string[];
}

export function loadOpenings(name: string): readonly Opening[] {
  const file = new URL(`./openings/${name}.yaml`, import.meta.url);
  return Opening.parse(parse(readFileSync(file, "utf8")));
}

export function loadFacts(): readonly Fact[] {
  const file = new URL("./openings/facts.yaml", import.meta.url);
  return Fact.parse(parse(readFileSync(file, "utf8")));
}

/** The observations that are scored; what else is found is neither right nor wrong. */
const scored = new Set(
  (
    "on-start engine-turns pattern battery-goes-flat lights-on lights-at-start jump-start last-use " +
    "how-stopped recent-event fuel-level fuel-age fuel-reaches-engine water-or-wax spark smoke " +
    "preheat-lamp controls-moved joint-look outdoors at-machine flooding-signs"
  ).split(" "),
);

/** Precision and recall on states: what is understood against what each text states. */
export function scoreOpenings(
  reader: Reader,
  openings: readonly Opening[],
  language: string,
): Score {
  return scoreStates(
    openings,
    (opening) => reader.read(opening.text, { languages: [language] }).understood,
  );
}

/** What a text states, and how it is read. */
export function scoreStates<Stated extends Omit<Opening, "text">>(
  texts: readonly Stated[],
  read: (text: Stated) => readonly Understood[],
): Score {
  const wrong: string[] = [];
  const missed: string[] = [];
  const denied: string[] = [];
  let found = 0;
  let stated = 0;
  for (const text of texts) {
    const states = statesOf(read(text));
    const allowed = new Set([...text.says.flatMap((one) => one.split("|")), ...text.may]);
    found += states.length;
    stated += text.says.length;
    const at = (state: string): string => `${text.id}: ${state}`;
    wrong.push(...states.filter((state) => !allowed.has(state)).map(at));
    missed.push(
      ...text.says.filter((one) => !one.split("|").some((s) => states.includes(s))).map(at),
    );
    denied.push(...text.denied.filter((state) => states.includes(state)).map(at));
  }
  const precision = found === 0 ? 0 : 1 - wrong.length / found;
  return { precision, recall: 1 - missed.length / stated, wrong, missed, denied };
}

function statesOf(understood: readonly Understood[]): readonly string[] {
  const states = understood.flatMap((one) =>
    "state" in one && scored.has(one.observation) ? [`${one.observation}=${one.state}`] : [],
  );
  return [...new Set(states)];
}
