import { FluentBundle, FluentResource, type FluentVariable } from "@fluent/bundle";
import { createFormatters, type Formatters } from "./formatters.ts";
import { isRightToLeft } from "./text-direction.ts";
import type { ReportTrouble } from "./trouble.ts";

export type Variables = Readonly<Record<string, FluentVariable>>;

/** What formatting one message gave: a text, and what went wrong on the way. */
export interface Formatted {
  readonly text: string;
  readonly errors: readonly Error[];
}

/** The messages of one language together with its rules for numbers, dates and lists. */
export interface LanguagePack {
  readonly language: string;
  /** Numbers, dates and lists; digits are those of a meter's display. */
  readonly forms: Formatters;
  readonly rightToLeft: boolean;
  /** Null where the language has no such message. */
  format(key: string, variables: Variables): Formatted | null;
}

/**
 * Makes the pack of one language.
 * @param language BCP 47 tag; a tag that is none gets the rules of English
 * @param text Fluent messages; entries that cannot be read are missing afterwards (the check of
 *   the locales reports them), doubled ones are reported here
 */
export function createLanguagePack(
  language: string,
  text: string,
  report: ReportTrouble,
): LanguagePack {
  const rightToLeft = isRightToLeft(language);
  const bundle = openBundle(language, text, report);
  return {
    language,
    forms: createFormatters(meterDigits(regional(language))),
    rightToLeft,
    format: (key, variables) => formatKey(bundle, key, variables),
  };
}

/** Fluent marks off what it puts into a text where that text runs from right to left. */
function openBundle(language: string, text: string, report: ReportTrouble): FluentBundle {
  const useIsolating = isRightToLeft(language);
  const bundle = new FluentBundle([meterDigits(language)], { useIsolating });
  for (const error of bundle.addResource(new FluentResource(text))) {
    report({ language, key: "", says: error.message });
  }
  return bundle;
}

function formatKey(bundle: FluentBundle, key: string, variables: Variables): Formatted | null {
  const pattern = bundle.getMessage(key)?.value;
  if (pattern === undefined || pattern === null) return null;
  const errors: Error[] = [];
  const text = bundle.formatPattern(pattern, variables, errors);
  return { text: errors.length > 0 && text === GIVEN_UP ? "" : text, errors };
}

/** What Fluent shows when it could not salvage anything of a message. */
const GIVEN_UP = "{???}";

/** English without a country means no country's habits: day before month, 24 hours. */
function regional(language: string): string {
  return language === "en" ? "en-GB" : language;
}

/** People compare what they read here with a meter, so the digits are 0 to 9 in every language. */
function meterDigits(language: string): string {
  try {
    return new Intl.Locale(language, { numberingSystem: "latn" }).toString();
  } catch {
    return "en-GB";
  }
}
