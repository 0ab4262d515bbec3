import type { Problem } from "../domain/result.ts";
import { cautions } from "./build-tasks.ts";
import { forbiddenPhrase } from "./forbidden-words.ts";
import type { Gathered } from "./gather.ts";
import type { ForbiddenText } from "./schema-shared.ts";
import { type Path, type Placed, problemAt } from "./source-file.ts";

/** Units of readings that need a measuring instrument. */
const instrumentUnits: readonly string[] = ["V", "A", "Ω", "SG", "bar"];

/** A check, an act or a remedy, as far as safety is concerned. */
interface Task {
  readonly title: string;
  readonly by: readonly string[];
  readonly finds?: string | undefined;
  readonly step?: string | undefined;
  readonly ask?: string | undefined;
  readonly how?: string | undefined;
  readonly text?: string | undefined;
  readonly tools?: readonly string[] | undefined;
  readonly access?: string | undefined;
  readonly cautions?: readonly string[] | undefined;
}

/**
 * Nobody is sent into danger: every step done by hand carries its cautions, and nothing that is
 * forbidden to the person is asked of them.
 */
export function checkSafety(gathered: Gathered): Problem[] {
  const checks: Placed<Task>[] = [...gathered.checks.values()];
  const acts: Placed<Task>[] = [...gathered.acts.values()];
  const remedies: Placed<Task>[] = [...gathered.remedies.values()];
  return [
    ...checks.flatMap((place) => missingCautions(place, place.value.step ?? "talk", gathered)),
    ...acts.flatMap((place) => missingCautions(place, "try", gathered)),
    ...remedies.flatMap((place) => noCaution(place, gathered)),
    ...[...checks, ...acts, ...remedies].flatMap((place) => forbidden(place, gathered)),
    ...forbiddenAdvice(gathered),
  ];
}

function missingCautions(place: Placed<Task>, step: string, gathered: Gathered): Problem[] {
  const said = cautions(place.value, gathered);
  const problems = step === "talk" ? [] : noCaution(place, gathered);
  for (const hazard of gathered.hazards.values()) {
    const { steps, finds } = hazard.value["needed-for"] ?? {};
    const needed =
      (steps ?? []).some((one) => one === step) ||
      (step !== "talk" && (finds ?? []).includes(place.value.finds ?? ""));
    if (!needed || said.includes(hazard.id)) continue;
    problems.push(
      problemAt(place, `"${place.id}" needs the caution "${hazard.id}" (${hazard.value.title}).`),
    );
  }
  return problems;
}

function noCaution(place: Placed<Task>, gathered: Gathered): Problem[] {
  if (cautions(place.value, gathered).length > 0) return [];
  return [
    problemAt(
      place,
      `"${place.id}" is done by hand on the machine but carries no caution; add "cautions:".`,
    ),
  ];
}

function forbidden(place: Placed<Task>, gathered: Gathered): Problem[] {
  const { by, finds = "", access = "" } = place.value;
  const observation = gathered.observations.get(finds)?.value;
  const measures =
    observation?.kind === "number" && instrumentUnits.includes(observation.unit ?? "");
  return [...gathered.forbidden.values()].flatMap(({ value: rule }) => {
    if (rule.who !== "anyone" && !by.includes(rule.who)) return [];
    const refuse = (key: string, why: string): Problem[] => [
      problemAt(place, `${rule.says} (${why})`, [key]),
    ];
    if (rule.finds?.includes(finds)) return refuse("finds", `it finds "${finds}"`);
    if (measures && rule.readings !== undefined && !rule.readings.allowed.includes(finds)) {
      return refuse("finds", `"${finds}" is a reading with an instrument`);
    }
    if (rule.access?.includes(access)) return refuse("access", `it needs "${access}"`);
    return forbiddenTexts(place, rule, gathered);
  });
}

function forbiddenTexts(place: Placed<Task>, rule: ForbiddenText, gathered: Gathered): Problem[] {
  const { title, ask, how, text } = place.value;
  return Object.entries({ title, ask, how, text }).flatMap(([key, words]) =>
    forbiddenText(place, [key], words, { rule, gathered }),
  );
}

/** Cautions and red flags are advice too. */
function forbiddenAdvice(gathered: Gathered): Problem[] {
  const rules = [...gathered.forbidden.values()].filter(({ value }) => value.who === "anyone");
  return rules.flatMap(({ value: rule }) => [
    ...[...gathered.hazards.values()].flatMap((place) =>
      forbiddenText(place, ["caution"], place.value.caution, { rule, gathered }),
    ),
    ...[...gathered.redFlags.values()].flatMap((place) =>
      forbiddenText(place, ["say"], place.value.say, { rule, gathered }),
    ),
    ...[...gathered.acts.values()].flatMap((place) =>
      Object.entries(place.value["left-to-shop"] ?? {}).flatMap(([id, { because }]) =>
        forbiddenText(place, ["left-to-shop", id, "because"], because, { rule, gathered }),
      ),
    ),
  ]);
}

function forbiddenText(
  place: Placed<unknown>,
  inside: Path,
  text: string | undefined,
  { rule, gathered }: { rule: ForbiddenText; gathered: Gathered },
): Problem[] {
  const negations = gathered.negations.get("negations")?.value ?? [];
  const phrase = forbiddenPhrase(text ?? "", rule.phrases ?? [], negations);
  return phrase === undefined
    ? []
    : [problemAt(place, `${rule.says} (it says "${phrase}")`, inside)];
}
