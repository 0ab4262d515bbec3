import type { Arg, Phrase } from "../domain/effects.ts";
import type { Formatted, LanguagePack, Variables } from "./language-pack.ts";
import { formatMoment } from "./moments.ts";
import { formatQuantity } from "./quantities.ts";
import { isolate, plainWords, runsAgainst } from "./text-direction.ts";
import { plainKey, type ReportTrouble } from "./trouble.ts";

/** Between things that are set side by side. */
const PARTING = " · ";

/** Turns phrases into text of one language; never throws, never gives up without a text. */
export interface Speaker {
  readonly pack: LanguagePack;
  say(phrase: Phrase): string;
}

export interface SpeakerParts {
  readonly pack: LanguagePack;
  /** Steps in where the language lacks a message; null for English itself. */
  readonly english: Speaker | null;
  /** The knowledge's word in a language; null where there is none. */
  readonly knowledgeWord: (key: string, language: string) => string | null;
  readonly timeZone: string;
  readonly report: ReportTrouble;
}

/** Fluent's own sentence for a variable that was not given. */
const unknownVariable = /^Unknown variable: \$(.+)$/;

export function createSpeaker(parts: SpeakerParts): Speaker {
  const { pack, english, report } = parts;
  const language = pack.language;

  function say(phrase: Phrase): string {
    if ("raw" in phrase) return plainWords(phrase.raw);
    if ("know" in phrase) return knowledge(phrase.know);
    return message(phrase);
  }

  function message(phrase: Extract<Phrase, { key: string }>): string {
    const { key } = phrase;
    const variables = variablesOf(phrase.args ?? {});
    const own = pack.format(key, variables);
    if (own !== null && own.errors.length === 0) return own.text;
    reportErrors(key, own);
    const spare = english === null ? null : english.pack.format(key, variables);
    if (spare !== null && spare.errors.length === 0) return english?.say(phrase) ?? spare.text;
    const salvaged = own ?? spare;
    if (salvaged === null) return plainKey(key);
    return salvage(own === null ? (english?.pack ?? pack) : pack, key, { variables, salvaged });
  }

  function reportErrors(key: string, own: Formatted | null): void {
    if (own === null) report({ language, key, says: "There is no such message." });
    for (const error of own?.errors ?? []) report({ language, key, says: error.message });
  }

  function knowledge(key: string): string {
    const own = parts.knowledgeWord(key, language);
    if (own !== null) return own;
    report({ language, key, says: "The knowledge has no word for this." });
    return parts.knowledgeWord(key, "en") ?? plainKey(key);
  }

  function variablesOf(args: Readonly<Record<string, Arg>>): Variables {
    return Object.fromEntries(
      Object.entries(args).map(([name, arg]) => [
        name,
        typeof arg === "number" ? finite(arg) : text(arg),
      ]),
    );
  }

  function text(arg: Arg): string {
    if (typeof arg === "string") return foreign(plainWords(arg));
    if (typeof arg === "number") return pack.forms.number(arg);
    if ("know" in arg) return knowledge(arg.know);
    if ("phrase" in arg) return foreign(say(arg.phrase));
    if ("quantity" in arg) return formatQuantity(arg, pack.forms, (key) => message({ key }));
    if ("time" in arg)
      return formatMoment(arg.time, arg.style, { forms: pack.forms, timeZone: parts.timeZone });
    return list(arg.list, arg.parted === true);
  }

  function list(members: readonly Arg[], isParted: boolean): string {
    if (members.length === 0) return message({ key: "list-empty" });
    const words = members.map(text).map((word) => (pack.rightToLeft ? isolate(word) : word));
    return isParted ? words.join(PARTING) : pack.forms.list(words);
  }

  /** Fluent isolates every variable of a right-to-left text; elsewhere only these need it. */
  function foreign(word: string): string {
    return !pack.rightToLeft && runsAgainst(word, false) ? isolate(word) : word;
  }

  return { pack, say };
}

/** Fluent has its own plural rules for numbers, but no place for what is not one. */
function finite(value: number): number | string {
  return Number.isFinite(value) ? value : "–";
}

/** Formats again, with the names of the missing variables in their places. */
function salvage(
  pack: LanguagePack,
  key: string,
  { variables, salvaged }: { variables: Variables; salvaged: Formatted },
): string {
  const missing = salvaged.errors.flatMap(
    (error) => unknownVariable.exec(error.message)?.[1] ?? [],
  );
  const names = Object.fromEntries(missing.map((name) => [name, plainKey(name)]));
  const text = pack.format(key, { ...variables, ...names })?.text ?? "";
  return text === "" ? plainKey(key) : text;
}
