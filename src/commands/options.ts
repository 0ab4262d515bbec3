/** A command line: what stands alone, and what follows a `--name`. */
export interface CommandLine {
  readonly words: readonly string[];
  readonly options: Readonly<Record<string, string | true>>;
  /** Options that the command does not have. */
  readonly unknown: readonly string[];
}

/**
 * Splits a command line.
 * @param flags options without a value
 * @param valued options with one, as `--stage opening` or `--stage=opening`
 */
export function commandLine(
  args: readonly string[],
  known: { readonly flags: readonly string[]; readonly valued: readonly string[] },
): CommandLine {
  const words: string[] = [];
  const options: Record<string, string | true> = {};
  const unknown: string[] = [];
  for (let at = 0; at < args.length; at += 1) {
    const arg = args[at] ?? "";
    if (!arg.startsWith("--")) {
      words.push(arg);
      continue;
    }
    const [, name = "", inline] = /^--([^=]*)(?:=(.*))?$/s.exec(arg) ?? [];
    if (known.flags.includes(name)) options[name] = true;
    else if (known.valued.includes(name)) {
      options[name] = inline ?? args[at + 1] ?? "";
      if (inline === undefined) at += 1;
    } else unknown.push(arg);
  }
  return { words, options, unknown };
}

/** The value of an option, or the default. */
export function optionValue(line: CommandLine, name: string, otherwise: string): string {
  const value = line.options[name];
  return typeof value === "string" && value !== "" ? value : otherwise;
}
