import type { Line, Message } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { Share, ShopReport } from "../domain/shop-report.ts";
import { button, line, phrase } from "./decision.ts";
import type { Desk } from "./desk.ts";

const CAUSES = 8;
const MISSING = 5;

const percent = (value: number) => ({ quantity: 100 * value, unit: "percent", digits: 0 }) as const;

/** A share is said with its interval: of a few cases it says little. */
function shareLine(key: string, share: Share, none: string): Line {
  const { value, low, high, of } = share;
  if (of === 0) return line(phrase(none));
  return line(
    phrase(key, { share: percent(value), low: percent(low), high: percent(high), count: of }),
  );
}

function minuteLines({ minutes }: ShopReport): Line[] {
  const { foreseen, taken, visits, withinP90 } = minutes;
  if (foreseen === null || taken === null) return [];
  return [
    line(
      phrase("report-minutes", {
        foreseen: { quantity: foreseen, unit: "min", digits: 0 },
        taken: { quantity: taken, unit: "min", digits: 0 },
        count: visits,
        within: percent(withinP90.value),
      }),
    ),
  ];
}

function missingLines({ secondTrips, missing }: ShopReport, desk: Desk): Line[] {
  if (secondTrips === 0) return [];
  const parts = missing.slice(0, MISSING).map(({ what, count }) => {
    const known = desk.knowledge.parts.has(what);
    const part = known ? { know: wordKey("part", what) } : what;
    return line(phrase("report-missing", { part, count }), "bullet");
  });
  return [line(phrase("report-second-trips", { count: secondTrips })), ...parts];
}

function calibrationLines({ calibration }: ShopReport): Line[] {
  const { claims, bins } = calibration;
  if (claims === 0) return [];
  const rows = bins.map(({ count, claimed, held }) =>
    line(phrase("report-bin", { claimed: percent(claimed), held: percent(held), count }), "bullet"),
  );
  return [line(phrase("report-calibration", { count: claims }), "heading", true), ...rows];
}

/** What the shop's cases add up to, for people. */
export function reportMessage(report: ShopReport, desk: Desk): Message {
  const causes = report.causes.slice(0, CAUSES).map(({ machine, fault, count }) => {
    const known = desk.knowledge.faults.has(fault);
    const cause = known ? { know: wordKey("fault", fault) } : fault;
    const args = { cause, machine: { know: wordKey("machine", machine) }, count };
    return line(phrase("report-cause", args), "bullet");
  });
  const ends = Object.entries(report.byEnd).map(([end, count]) =>
    line(phrase("report-end", { end: { phrase: phrase(`end-${end}`) }, count }), "bullet"),
  );
  const table = (value: string) => ({ revision: 0, act: "table", value });
  const { open, closed, comebacks } = report;
  return {
    lines: [
      line(phrase("report-title", { open, closed }), "heading"),
      ...ends,
      shareLine("report-by-chat", report.solvedByChat, "report-by-chat-none"),
      shareLine("report-first-visit", report.firstVisitFix, "report-first-visit-none"),
      ...missingLines(report, desk),
      ...minuteLines(report),
      line(phrase("report-comebacks", { count: comebacks, days: desk.shop.comebackDays })),
      ...(causes.length === 0 ? [] : [line(phrase("report-causes"), "heading", true), ...causes]),
      ...calibrationLines(report),
    ],
    buttons: [
      button(phrase("press-table-cases"), table("cases")),
      button(phrase("press-table-rates"), table("rates")),
    ],
  };
}
