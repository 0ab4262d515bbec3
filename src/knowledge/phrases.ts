import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Knowledge } from "../domain/knowledge.ts";
import type { Phrases } from "../domain/phrases.ts";
import type { Problem, Result } from "../domain/result.ts";
import { checkShape } from "./explain-issue.ts";
import type { KnownStates } from "./phrases-bench.ts";
import { buildPhrases } from "./phrases-build.ts";
import { PhrasesFile } from "./phrases-schema.ts";
import { readYaml } from "./read-yaml.ts";

/** Languages that have phrases below `<root>/locales`: English first, then by name. */
export function phraseLanguages(root: string): readonly string[] {
  const folder = join(root, "locales");
  return readdirSync(folder)
    .filter((name) => existsSync(join(folder, name, "phrases.yaml")))
    .sort((a, b) => Number(b === "en") - Number(a === "en") || a.localeCompare(b, "en"));
}

/**
 * Reads `<root>/locales/<language>/phrases.yaml` of every language there is.
 *
 * @param root the folder that holds `locales/`
 * @param known the states that claims may name; null leaves them unchecked
 * @param wanted only these languages, where they have phrases; absent: all
 * @returns the phrases, English first, then by language; or every mistake with file and line
 */
export function loadPhrases(
  root: string,
  known: KnownStates,
  wanted?: readonly string[],
): Result<readonly Phrases[]> {
  const languages = phraseLanguages(root);
  const problems: Problem[] = [];
  const all: Phrases[] = [];
  for (const language of languages.filter((one) => wanted?.includes(one) ?? true)) {
    const file = `locales/${language}/phrases.yaml`;
    const read = readPhrases(file, readFileSync(join(root, file), "utf8"), known);
    problems.push(...read.problems);
    if (read.phrases !== null) all.push(read.phrases);
  }
  return problems.length === 0 ? { ok: true, value: all } : { ok: false, problems };
}

/** Reads the text of one phrases file; `phrases` is null where its shape is wrong. */
export function readPhrases(
  file: string,
  text: string,
  known: KnownStates,
): { readonly phrases: Phrases | null; readonly problems: readonly Problem[] } {
  const { source, problems } = readYaml(file, "phrases", text);
  if (problems.length > 0) return { phrases: null, problems };
  const shape = checkShape(source, PhrasesFile);
  if (shape.value === undefined) return { phrases: null, problems: shape.problems };
  return buildPhrases(source, shape.value, known);
}

/** The states that phrases may speak of. */
export function knownStates(knowledge: Knowledge): KnownStates {
  return new Map(
    [...knowledge.observations].map(
      ([id, observation]) => [id, new Set(observation.states.map((state) => state.id))] as const,
    ),
  );
}
