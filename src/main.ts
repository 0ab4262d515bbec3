import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Command, CommandIo } from "./commands/io.ts";

/** Only the files of the command that is wanted are loaded: half of the time of a short one. */
const commands: Readonly<Record<string, () => Promise<Command>>> = {
  start: async () => (await import("./commands/start.ts")).startCommand,
  rank: async () => (await import("./commands/rank.ts")).rankCommand,
  field: async () => (await import("./commands/field.ts")).fieldCommand,
  read: async () => (await import("./commands/read.ts")).readCommand,
  flows: async () => (await import("./commands/flows.ts")).flowsCommand,
  circuit: async () => (await import("./commands/circuit.ts")).circuitCommand,
  bench: async () => (await import("./commands/bench.ts")).benchCommand,
  report: async () => (await import("./commands/report.ts")).reportCommand,
};

async function stdin(): Promise<string> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of process.stdin) chunks.push(chunk);
  return Buffer.concat(chunks).toString("utf8");
}

const io: CommandIo = {
  stdout: (text) => void process.stdout.write(text),
  stderr: (text) => void process.stderr.write(text),
  // npm runs scripts in the project's folder; the caller's own is in INIT_CWD.
  cwd: process.env["INIT_CWD"] ?? process.cwd(),
  root: join(dirname(fileURLToPath(import.meta.url)), ".."),
  stdin,
};

const [verb = "start", ...args] = process.argv.slice(2);
const command = commands[verb];
if (command === undefined) {
  io.stderr(`There is no command "${verb}". There are: ${Object.keys(commands).join(", ")}.\n`);
  process.exitCode = 2;
} else {
  process.exitCode = await (await command())(args, io);
}
