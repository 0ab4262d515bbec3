/** Scripts that run from right to left (Unicode, scripts of the bidirectional classes R and AL). */
const rightToLeftScripts = new Set(["Arab", "Hebr", "Syrc", "Thaa", "Nkoo", "Adlm", "Rohg"]);

const rightToLeftLetter =
  /[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u;
const leftToRightLetter = /[\p{Script=Latin}\p{Script=Cyrillic}\p{Script=Greek}]/u;

/** First strong isolate and its end: what stands between keeps its own direction. */
const ISOLATE = "\u2068";
const END_ISOLATE = "\u2069";

/**
 * Marks that turn or embed the direction of what follows. In words of people they may stand
 * unclosed and would then turn the rest of the message.
 */
const directionOverrides = /[\u202A-\u202E\u2066-\u2069]/gu;
/** Half of a character: no text to a computer that checks it. */
const loneSurrogates = /\p{Surrogate}/gu;
/** Control characters other than a new line and a tab. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is removed
const controls = /[\u0000-\u0008\u000B-\u001F\u007F]/gu;

/** @returns whether a language is written from right to left; unknown ones are not. */
export function isRightToLeft(language: string): boolean {
  try {
    const { script } = new Intl.Locale(language).maximize();
    return script !== undefined && rightToLeftScripts.has(script);
  } catch {
    return false;
  }
}

/**
 * Words of a person as they can be shown: whole characters only, nothing that turns the text
 * around them. Never interpreted, never shortened.
 */
export function plainWords(text: string): string {
  return text
    .replaceAll("\r\n", "\n")
    .replace(controls, "")
    .replace(directionOverrides, "")
    .replace(loneSurrogates, "\uFFFD");
}

/** Keeps the direction of a text apart from that of its neighbours. */
export function isolate(text: string): string {
  return `${ISOLATE}${text}${END_ISOLATE}`;
}

/** @returns whether the text holds letters that run against the language around it. */
export function runsAgainst(text: string, rightToLeft: boolean): boolean {
  return (rightToLeft ? leftToRightLetter : rightToLeftLetter).test(text);
}
