import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { benchCommand } from "./commands/bench.ts";
import { circuitCommand } from "./commands/circuit.ts";
import { fieldCommand } from "./commands/field.ts";
import { flowsCommand } from "./commands/flows.ts";
import type { Command, CommandIo } from "./commands/io.ts";
import { rankCommand } from "./commands/rank.ts";
import { readCommand } from "./commands/read.ts";
import { reportCommand } from "./commands/report.ts";
import { startCommand } from "./commands/start.ts";

const commands: Readonly<Record<string, Command>> = {
  start: startCommand,
  rank: rankCommand,
  field: fieldCommand,
  read: readCommand,
  flows: flowsCommand,
  circuit: circuitCommand,
  bench: benchCommand,
  report: reportCommand,
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
  process.exitCode = await command(args, io);
}
