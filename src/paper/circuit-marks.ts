import type { TestPoint } from "../domain/circuit.ts";
import type { CircuitRow } from "./circuit-rows.ts";

/** A number on the drawing and the readings that are taken there. */
export interface NumberedPoint {
  readonly number: number;
  readonly testPoints: readonly string[];
}

/** Letters for the points that stand in more than one row. */
export function shareLetters(rows: readonly CircuitRow[], reference: string): Map<string, string> {
  const seen = new Map<string, Set<CircuitRow>>();
  for (const row of rows) {
    for (const { from, to } of row.parts) {
      for (const point of [from, to]) {
        seen.set(point, (seen.get(point) ?? new Set<CircuitRow>()).add(row));
      }
    }
  }
  const shared = [...seen].filter(([point, where]) => where.size > 1 && point !== reference);
  return new Map(shared.map(([point], i) => [point, String.fromCharCode(65 + i)]));
}

/** Numbers the places of the red probe in the order of the drawing. */
export function numberPoints(
  testPoints: readonly TestPoint[],
  rows: readonly CircuitRow[],
): readonly (NumberedPoint & { readonly point: string })[] {
  const order = [...new Set(rows.flatMap(({ parts }) => parts.flatMap((p) => [p.from, p.to])))];
  const probed = order.filter((point) =>
    testPoints.some(({ at, quantity }) => at === point && isProbed(quantity)),
  );
  return probed.map((point, i) => ({
    point,
    number: i + 1,
    testPoints: testPoints
      .filter(({ at, quantity }) => at === point && isProbed(quantity))
      .map(({ id }) => id),
  }));
}

function isProbed(quantity: TestPoint["quantity"]): boolean {
  return quantity === "volts" || quantity === "drop";
}
