import type { Knowledge } from "../domain/knowledge.ts";
import { createWorkerBuilder } from "../knowledge/bank-builder.ts";
import { benchCircuit } from "./bench-circuit.ts";
import { benchEngine } from "./bench-engine.ts";
import { benchLoading } from "./bench-loading.ts";
import { benchReader } from "./bench-reader.ts";
import { benchShop } from "./bench-shop.ts";
import type { CommandIo } from "./io.ts";
import { commandLine } from "./options.ts";
import { brokenFlows, openWorkshop, type Workshop } from "./workshop.ts";

/** Full size: what the engine itself uses, and enough held-out machines for a stable figure. */
const FULL = { machines: 2000, heldOutPerFault: 10 };

const parts: Readonly<Record<string, (workshop: Workshop, root: string) => unknown>> = {
  engine: ({ knowledge }) => benchEngine(knowledge),
  circuit: ({ circuits, knowledge }) =>
    benchCircuit({ circuits, knowledge, build: createWorkerBuilder(), ...FULL }),
  shop: (workshop, root) => benchShop(workshop, root),
  reader: ({ knowledge, reader }) =>
    benchReader(reader, { language: "en", texts: wordsOf(knowledge) }),
  loading: (_, root) => benchLoading(root),
};

/** Things and their states by the names that everybody sees: "Fuel tap: shut". */
function wordsOf({ observations }: Knowledge): readonly string[] {
  return [...observations.values()].flatMap(({ title, states }) =>
    states.map((state) => `${title}, ${state.title}`),
  );
}

/** `bench [PART] [--json]`: speed and quality, as ratios in one run; without a part all of them. */
export async function benchCommand(args: readonly string[], io: CommandIo): Promise<number> {
  const line = commandLine(args, { flags: ["json"], valued: [] });
  const [part] = line.words;
  const chosen = part === undefined ? Object.keys(parts) : [part];
  if (line.unknown.length > 0 || chosen.some((name) => !Object.hasOwn(parts, name))) {
    io.stderr(`Use: npm run -s bench [-- ${Object.keys(parts).join("|")}] [--json]\n`);
    return 2;
  }
  const workshop = await openWorkshop(io.root);
  if (!workshop.ok) {
    io.stderr(brokenFlows(workshop.problems));
    return 1;
  }
  const figures: Record<string, unknown> = {};
  for (const name of chosen) figures[name] = await parts[name]?.(workshop.value, io.root);
  const [only] = chosen;
  const shown = part === undefined ? figures : figures[only ?? ""];
  io.stdout(`${JSON.stringify(shown, null, 2)}\n`);
  return 0;
}
