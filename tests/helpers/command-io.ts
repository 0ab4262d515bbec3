import type { Command } from "../../src/commands/io.ts";

/** What a command printed, and its exit code. */
export interface Ran {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs a command of this project as npm would, in this process. */
export async function runCommand(
  command: Command,
  args: readonly string[],
  given: { readonly stdin?: string; readonly root?: string; readonly cwd?: string } = {},
): Promise<Ran> {
  let stdout = "";
  let stderr = "";
  const code = await command(args, {
    stdout: (text) => {
      stdout += text;
    },
    stderr: (text) => {
      stderr += text;
    },
    cwd: given.cwd ?? ".",
    root: given.root ?? ".",
    stdin: () => Promise.resolve(given.stdin ?? ""),
  });
  return { code, stdout, stderr };
}
