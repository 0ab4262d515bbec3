import type { Line } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { Ranking } from "../domain/triage.ts";
import { line, phrase } from "./decision.ts";

/** The leader and the causes that look like it, with what tells them apart; none: no line. */
export function alikeLines({ alike }: Pick<Ranking, "alike">): Line[] {
  if (alike === null) return [];
  const causes = { list: alike.faults.map((fault) => ({ know: wordKey("fault", fault) })) };
  if (alike.check === null) return [line(phrase("look-alike", { causes }))];
  const check = { know: wordKey("check", alike.check) };
  return [line(phrase("look-alike-by", { causes, check }))];
}
