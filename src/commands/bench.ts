import { benchEngine } from "./bench-engine.ts";
import type { CommandIo } from "./io.ts";
import { commandLine } from "./options.ts";
import { brokenFlows, openWorkshop } from "./workshop.ts";

const parts = ["engine"] as const;

/** `bench [PART] [--json]`: speed and quality as ratios in one run; engine is what there is so far. */
export async function benchCommand(args: readonly string[], io: CommandIo): Promise<number> {
  const line = commandLine(args, { flags: ["json"], valued: [] });
  const [part = "engine"] = line.words;
  if (!parts.some((one) => one === part) || line.unknown.length > 0) {
    io.stderr(`Use: npm run -s bench [-- ${parts.join("|")}] [--json]\n`);
    return 2;
  }
  const workshop = await openWorkshop(io.root);
  if (!workshop.ok) {
    io.stderr(brokenFlows(workshop.problems));
    return 1;
  }
  const figures = await benchEngine(workshop.value.knowledge);
  io.stdout(`${JSON.stringify(figures, null, 2)}\n`);
  return 0;
}
