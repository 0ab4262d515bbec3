import type { ReadingRange } from "../domain/joint-likelihood.ts";
import type { Ranked } from "./ranked.ts";

const CAUSES = 8;
const REASONS = 3;
const STEPS = 10;

const percent = (chance: number) => `${(100 * chance).toFixed(chance < 0.1 ? 1 : 0)} %`.padStart(6);

/** A ranked case for somebody who reads it in a terminal. */
export function rankedText(ranked: Ranked): string {
  const lines = [`Case ${ranked.id} (${ranked.machineKind})`];
  for (const flag of ranked.redFlags) lines.push(`  DANGER  ${flag.text}`);
  for (const cause of ranked.causes.slice(0, CAUSES)) {
    lines.push(`  ${percent(cause.probability)}  ${cause.name}  [${cause.group}]`);
    for (const reason of cause.reasons.slice(0, REASONS)) {
      const sign = reason.decibans > 0 ? "+" : "";
      lines.push(
        `            ${sign}${reason.decibans.toFixed(1)} dB  ${reason.observation} = ${reason.state}`,
      );
    }
  }
  lines.push(`  ${percent(ranked.somethingElse)}  something else`);
  lines.push(`  ${percent(ranked.nothingWrong)}  nothing wrong any more`);
  if (ranked.lookAlike !== null) lines.push(alikeLine(ranked, ranked.lookAlike));
  for (const reading of ranked.readings) lines.push(readingLine(ranked, reading));
  for (const { name, value, unit } of ranked.unexplained) {
    lines.push(
      `  Does not go with the other readings: ${name}, ${value} ${unit}; where were the probes?`,
    );
  }
  if (ranked.next !== null)
    lines.push(`  Next: ${ranked.next.text}  (decides: ${ranked.next.decides})`);
  const { median, p90 } = ranked.plan.minutes;
  lines.push(
    `  Plan, about ${Math.round(median)} minutes, nine times in ten under ${Math.round(p90)}:`,
  );
  ranked.plan.steps.slice(0, STEPS).forEach((step, index) => {
    lines.push(`    ${index + 1}. ${step.text} (${step.who}, ${Math.round(step.minutes)} min)`);
  });
  const load = ranked.kit.filter((part) => part.carry);
  lines.push(`  Kit, covers ${percent(ranked.kitCovers).trim()}:`);
  for (const part of load) lines.push(`    ${percent(part.chance)}  ${part.name}`);
  for (const caution of ranked.cautions) lines.push(`  Caution: ${caution}`);
  for (const text of ranked.notUnderstood) lines.push(`  Not understood: ${text}`);
  return `${lines.join("\n")}\n`;
}

function alikeLine(ranked: Ranked, alike: NonNullable<Ranked["lookAlike"]>): string {
  const names = alike.causes.map((id) => ranked.causes.find((one) => one.id === id)?.name ?? id);
  const by = alike.separatedBy === null ? "" : `; what tells them apart: ${alike.separatedBy.text}`;
  return `  Not to be told apart yet: ${names.join(", ")}${by}`;
}

const range = ({ low, median, high }: ReadingRange) =>
  `${median.toFixed(1)} (${low.toFixed(1)} to ${high.toFixed(1)})`;

function readingLine(ranked: Ranked, reading: Ranked["readings"][number]): string {
  const { name, measured, unit, healthy, causes } = reading;
  const beside = causes.map(({ id, expected }) => {
    const cause = ranked.causes.find((one) => one.id === id)?.name ?? id;
    return `; ${cause}: ${range(expected)}`;
  });
  return `  ${name}: ${measured} ${unit}; healthy: ${range(healthy)}${beside.join("")}`;
}
