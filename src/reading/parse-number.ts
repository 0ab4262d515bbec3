/**
 * Reads `12.4`, `12,4`, `1,265`, `1.265,5` with decimal points and commas.
 *
 * @param thousands the mark that groups thousands in this language, "" for none
 * @returns null where no finite number is meant (`1e309`, `1.2.3`)
 */
export function parseNumber(text: string, thousands: string): number | null {
  const digits = withPoint(text, thousands);
  const value = digits === null ? Number.NaN : Number(digits);
  return Number.isFinite(value) ? value : null;
}

function withPoint(text: string, thousands: string): string | null {
  const groups = text.split(/[.,]/);
  if (groups.length === 1) return text;
  const mark = text.charAt(groups[0]?.length ?? 0);
  const grouped = groups.slice(1).every((part) => part.length === 3) && !text.startsWith("0");
  if (groups.length === 2) {
    return mark === thousands && grouped ? groups.join("") : groups.join(".");
  }
  const last = text.charAt(text.length - (groups.at(-1)?.length ?? 0) - 1);
  if (text.split(last).length === groups.length) return grouped ? groups.join("") : null;
  // Two kinds of marks: the last one, standing once, is the decimal mark; the others group.
  const whole = groups.slice(0, -1);
  const sound = text.split(last).length === 2 && whole.slice(1).every((part) => part.length === 3);
  return sound ? `${whole.join("")}.${groups.at(-1) ?? ""}` : null;
}
