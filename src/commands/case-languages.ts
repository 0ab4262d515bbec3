import type { CaseFile } from "../cases/case-file.ts";
import { detectLanguage } from "../reading/choose-language.ts";

/**
 * The languages that written-down cases are in, among those known: each one more takes most of a
 * second to make ready. All of them where a case is too short to tell.
 */
export function languagesOf(
  cases: readonly CaseFile[],
  known: readonly string[],
): readonly string[] {
  const found = new Set<string>();
  for (const { opening, operator, technician } of cases) {
    const values = [operator, technician].flatMap((facts) => Object.values(facts).flat());
    const language = detectLanguage([opening, ...values.map(String)].join(" "), known);
    if (language === null) return known;
    found.add(language);
  }
  return known.filter((language) => found.has(language));
}
