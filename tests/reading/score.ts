import { readFileSync } from "node:fs";
import { parse } from "yaml";
import { z } from "zod";
import type { Reader, ReadingResult } from "../../src/domain/reading.ts";

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

/** The observations that are scored; what else is found is neither right nor wrong. */
const scored = new Set(
  (
    "on-start engine-turns pattern battery-goes-flat lights-on lights-at-start jump-start last-use " +
    "how-stopped recent-event fuel-level fuel-age fuel-reaches-engine water-or-wax spark smoke " +
    "preheat-lamp controls-moved joint-look outdoors at-machine flooding-signs"
  ).split(" "),
);

/** Precision and recall on states: what is understood against what each opening states. */
export function scoreOpenings(
  reader: Reader,
  openings: readonly Opening[],
  language: string,
): Score {
  const wrong: string[] = [];
  const missed: string[] = [];
  const denied: string[] = [];
  let found = 0;
  let right = 0;
  let stated = 0;
  for (const opening of openings) {
    const states = statesOf(reader.read(opening.text, { languages: [language] }));
    const allowed = new Set([...opening.says.flatMap((one) => one.split("|")), ...opening.may]);
    found += states.length;
    right += states.filter((state) => allowed.has(state)).length;
    stated += opening.says.length;
    const at = (state: string): string => `${opening.id}: ${state}`;
    wrong.push(...states.filter((state) => !allowed.has(state)).map(at));
    missed.push(
      ...opening.says.filter((one) => !one.split("|").some((s) => states.includes(s))).map(at),
    );
    denied.push(...opening.denied.filter((state) => states.includes(state)).map(at));
  }
  const precision = found === 0 ? 0 : right / found;
  return { precision, recall: 1 - missed.length / stated, wrong, missed, denied };
}

function statesOf(result: ReadingResult): readonly string[] {
  const states = result.understood.flatMap((one) =>
    "state" in one && scored.has(one.observation) ? [`${one.observation}=${one.state}`] : [],
  );
  return [...new Set(states)];
}
