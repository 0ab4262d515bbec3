import { reportOn } from "../cases/report.ts";
import { readConfig } from "../config.ts";
import type { CaseState } from "../domain/case-state.ts";
import { foldCase } from "../domain/fold-case.ts";
import { openLowdbStore } from "../store/lowdb-store.ts";
import { problemLines } from "./case-files.ts";
import type { CommandIo } from "./io.ts";
import { commandLine } from "./options.ts";
import { loadShopSettings } from "./shop-settings.ts";

const percent = (share: number) => `${Math.round(100 * share)} %`;

/** `report [--json]`: what the shop's cases add up to. Reads the data folder, changes nothing in it. */
export async function reportCommand(args: readonly string[], io: CommandIo): Promise<number> {
  const line = commandLine(args, { flags: ["json"], valued: [] });
  if (line.words.length > 0 || line.unknown.length > 0) {
    io.stderr("Use: npm run -s report [-- --json]\n");
    return 2;
  }
  const config = readConfig(process.env, io.root);
  if (!config.ok) {
    io.stderr(problemLines(config.problems));
    return 2;
  }
  const settings = loadShopSettings(io.root, config.value.dataFolder);
  if (!settings.ok) {
    io.stderr(problemLines(settings.problems));
    return 2;
  }
  const store = await openLowdbStore(config.value.dataFolder, {
    now: Date.now,
    onDamage: ({ file, why }) => io.stderr(`set aside as damaged: ${file} (${why})\n`),
  });
  const states: CaseState[] = [];
  for await (const document of store.all("case"))
    states.push(foldCase(document.id, document.events));
  const report = reportOn(states, settings.value.comebackDays);
  if (line.options["json"] === true) {
    io.stdout(`${JSON.stringify(report, null, 2)}\n`);
    return 0;
  }
  io.stdout(
    [
      `${report.cases} cases: ${report.open} open, ${report.closed} closed`,
      ...Object.entries(report.byEnd).map(([end, count]) => `  ${end}: ${count}`),
      `Solved by chat: ${percent(report.solvedByChat)}`,
      `Fixed with the first repair of the visit: ${percent(report.firstRepairFix)}`,
      `Comebacks within ${settings.value.comebackDays} days: ${report.comebacks}`,
      ...report.causes.map(({ machine, fault, count }) => `  ${count} × ${fault} on ${machine}`),
      "",
    ].join("\n"),
  );
  return 0;
}
