import { phraseLanguages } from "../knowledge/phrase-texts.ts";
import type { CommandIo } from "./io.ts";
import { type CommandLine, commandLine, optionValue } from "./options.ts";
import { brokenFlows, openReadingDesk, type ReadingDesk } from "./workshop.ts";

const usage =
  'Use it as: npm run -s read -- [--lang L] [--expecting OBSERVATION] [--volts 12] "TEXT"\n';

/**
 * `read`: what the reader makes of a text, as JSON. Without `--lang` the language is detected among
 * those that have phrases.
 * @returns 0; 1 where flows/ or locales/ cannot be used, 2 for a wrong command line
 */
export async function readCommand(args: readonly string[], io: CommandIo): Promise<number> {
  const line = commandLine(args, { flags: ["json"], valued: ["lang", "expecting", "volts"] });
  if (line.unknown.length > 0 || line.words.length === 0) {
    io.stderr(usage);
    return 2;
  }
  const spoken = phraseLanguages(io.root);
  const lang = optionValue(line, "lang", "");
  if ("lang" in line.options && !spoken.includes(lang)) {
    io.stderr(`There are no phrases for "${lang}". There are: ${spoken.join(", ")}.\n`);
    return 2;
  }
  const desk = await openReadingDesk(io.root, lang === "" ? spoken : [lang]);
  if (!desk.ok) {
    io.stderr(brokenFlows(desk.problems));
    return 1;
  }
  const mistake = mistakeIn(line, desk.value);
  if (mistake !== null) {
    io.stderr(`${mistake}\n`);
    return 2;
  }
  const text =
    line.words.length === 1 && line.words[0] === "-" ? await io.stdin() : line.words.join(" ");
  const { reader, languages } = desk.value;
  const expecting = optionValue(line, "expecting", "");
  const result = reader.read(text, {
    languages,
    volts: Number(optionValue(line, "volts", "12")),
    now: Date.now(),
    ...(expecting === "" ? {} : { expecting: { observation: expecting } }),
  });
  io.stdout(`${JSON.stringify(result, null, 2)}\n`);
  return 0;
}

function mistakeIn(line: CommandLine, { model }: ReadingDesk): string | null {
  const volts = Number(optionValue(line, "volts", "12"));
  if (!Number.isFinite(volts) || volts <= 0) return "--volts wants a voltage, for example 12.";
  const expecting = optionValue(line, "expecting", "");
  return expecting === "" || model.observations.has(expecting)
    ? null
    : `There is no observation "${expecting}".`;
}
