import type { CaseState } from "../domain/case-state.ts";
import type { Phrase } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { StockedPart } from "../domain/stock.ts";
import type { KitItem } from "../domain/triage.ts";
import { shownChance } from "./chance.ts";
import { phrase } from "./decision.ts";
import type { Desk } from "./desk.ts";

/** What the shop keeps of a part for this machine: what is on the shelf first, in the file's order. */
export function stockedFor(
  part: string,
  machine: CaseState["machine"],
  stock: readonly StockedPart[],
): readonly StockedPart[] {
  const { kind, volts } = machine;
  return stock
    .filter((one) => one.part === part)
    .filter((one) => one.kinds.length === 0 || (kind !== undefined && one.kinds.includes(kind)))
    .filter((one) => one.volts === undefined || volts === undefined || one.volts === volts)
    .sort((a, b) => Number(b.stock > 0) - Number(a.stock > 0));
}

/** The shop's own number and stock; without one, how the right one is found; null: any fits. */
function ownWords(part: string, state: CaseState, desk: Desk): Phrase | null {
  const [own] = stockedFor(part, state.machine, desk.stock ?? []);
  if (own !== undefined) {
    const { number, stock, shelf } = own;
    if (stock === 0) return phrase("part-own-none", { number });
    return shelf === undefined
      ? phrase("part-own", { number, stock })
      : phrase("part-own-shelf", { number, stock, shelf });
  }
  const known = desk.knowledge.parts.get(part);
  if (known === undefined || known.universal) return null;
  const fit = known.fit.map((_, n) => ({ know: wordKey("part", part, `fit-${n + 1}`) }));
  return fit.length === 0
    ? phrase("part-look-up")
    : phrase("part-look-up-by", { fit: { list: fit } });
}

/** A part of the kit: its chance, and how the shop gets at it. */
export function kitPart({ part, chance }: KitItem, state: CaseState, desk: Desk): Phrase {
  const words = phrase("kit-part", {
    part: { know: wordKey("part", part) },
    chance: { quantity: shownChance(chance), unit: "percent" },
  });
  const own = ownWords(part, state, desk);
  if (own === null) return words;
  return phrase("kit-part-own", { part: { phrase: words }, own: { phrase: own } });
}
