import type { Knowledge } from "../domain/knowledge.ts";
import type { Phrases } from "../domain/phrases.ts";
import type { Problem, Result } from "../domain/result.ts";
import { checkShape } from "./explain-issue.ts";
import { phraseLanguages, readPhraseText } from "./phrase-texts.ts";
import type { KnownStates } from "./phrases-bench.ts";
import { buildPhrases } from "./phrases-build.ts";
import { PhrasesFile } from "./phrases-schema.ts";
import { readYaml } from "./read-yaml.ts";

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
    const { file, text } = readPhraseText(root, language);
    const read = readPhrases(file, text, known);
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
