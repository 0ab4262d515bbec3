import { type CaseFigures, figuresOf } from "../cases/case-figures.ts";
import { reportOf } from "../cases/report.ts";
import { caseTable, rateTable } from "../cases/tables.ts";
import { readConfig } from "../config.ts";
import { foldCase } from "../domain/fold-case.ts";
import type { Share, ShopReport } from "../domain/shop-report.ts";
import { csvText } from "../paper/csv.ts";
import { createLowdbReader } from "../store/lowdb-reader.ts";
import { problemLines } from "./case-files.ts";
import type { CommandIo } from "./io.ts";
import { commandLine } from "./options.ts";
import { loadShopSettings } from "./shop-settings.ts";
import { openWorkshop } from "./workshop.ts";

const percent = (share: number) => `${Math.round(100 * share)} %`;
const shareText = ({ value, low, high, of }: Share) =>
  of === 0 ? "none yet" : `${percent(value)} of ${of} (${percent(low)} to ${percent(high)})`;

/** `report [--json] [--csv cases|rates]`: what the shop's cases add up to. Reads the data folder, changes nothing in it. */
export async function reportCommand(args: readonly string[], io: CommandIo): Promise<number> {
  const line = commandLine(args, { flags: ["json"], valued: ["csv"] });
  if (line.words.length > 0 || line.unknown.length > 0) {
    io.stderr("Use: npm run -s report [-- --json | --csv cases | --csv rates]\n");
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
  const store = createLowdbReader(config.value.dataFolder, {
    onDamage: ({ file, why }) => io.stderr(`left out as damaged: ${file} (${why})\n`),
  });
  const figures: CaseFigures[] = [];
  for await (const document of store.all("case"))
    figures.push(figuresOf(foldCase(document.id, document.events)));
  const { comebackDays } = settings.value;
  const table = line.options["csv"];
  if (table !== undefined) return writeTable(String(table), figures, { io, comebackDays });
  const report = reportOf(figures, comebackDays);
  io.stdout(
    line.options["json"] === true
      ? `${JSON.stringify(report, null, 2)}\n`
      : `${reportText(report, comebackDays).join("\n")}\n`,
  );
  return 0;
}

async function writeTable(
  name: string,
  figures: readonly CaseFigures[],
  given: { readonly io: CommandIo; readonly comebackDays: number },
): Promise<number> {
  const { io, comebackDays } = given;
  if (name !== "cases" && name !== "rates") {
    io.stderr("--csv is followed by cases or by rates.\n");
    return 2;
  }
  if (name === "cases") {
    io.stdout(csvText(caseTable(figures, comebackDays)));
    return 0;
  }
  const loaded = await openWorkshop(io.root);
  if (!loaded.ok) {
    io.stderr(problemLines(loaded.problems));
    return 2;
  }
  io.stdout(csvText(rateTable(figures, loaded.value.knowledge, comebackDays)));
  return 0;
}

function reportText(report: ShopReport, comebackDays: number): string[] {
  const { minutes, calibration } = report;
  return [
    `${report.cases} cases: ${report.open} open, ${report.closed} closed`,
    ...Object.entries(report.byEnd).map(([end, count]) => `  ${end}: ${count}`),
    `Solved by chat: ${shareText(report.solvedByChat)}`,
    `Fixed on the first visit: ${shareText(report.firstVisitFix)}`,
    `Fixed with the first repair of the visit: ${shareText(report.firstRepairFix)}`,
    `Visits that ended without the repair: ${report.secondTrips}`,
    ...report.missing.map(({ what, count }) => `  ${count} × ${what} missing`),
    `Minutes on the machine, ${minutes.visits} visits: median ${minutes.taken ?? "–"}, foreseen ${minutes.foreseen ?? "–"}`,
    `Comebacks within ${comebackDays} days: ${report.comebacks}`,
    ...report.causes.map(({ machine, fault, count }) => `  ${count} × ${fault} on ${machine}`),
    `Percentages held against ${calibration.claims} outcomes: Brier ${calibration.brier?.toFixed(3) ?? "–"}, log loss ${calibration.logLoss?.toFixed(3) ?? "–"}`,
    ...calibration.bins.map(
      ({ count, claimed, held }) => `  said ${percent(claimed)}, held ${percent(held)} of ${count}`,
    ),
  ];
}
