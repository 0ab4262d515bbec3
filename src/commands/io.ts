/** What a command touches of the world outside, so that tests can stand in for it. */
export interface CommandIo {
  /** Machine-readable output, and nothing else, goes here. */
  readonly stdout: (text: string) => void;
  /** Progress and complaints. */
  readonly stderr: (text: string) => void;
  /** The caller's folder: file names are relative to it. */
  readonly cwd: string;
  /** The project's root, where flows/ and locales/ are. */
  readonly root: string;
  readonly stdin: () => Promise<string>;
}

/** Runs a command line verb; the number is the exit code. */
export type Command = (args: readonly string[], io: CommandIo) => Promise<number>;
