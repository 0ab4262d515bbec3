import { refusalOf } from "../diagnosis/refused-act.ts";
import { type CaseState, evidenceOf } from "../domain/case-state.ts";
import type { Line } from "../domain/effects.ts";
import { type Act, wordKey } from "../domain/knowledge.ts";
import type { RankedCause } from "../domain/triage.ts";
import { line } from "./decision.ts";
import { type Desk, machineOf } from "./desk.ts";

/** An act is missed where it would have got the machine going this often under a likely cause. */
const WOULD_HELP = 0.3;

/** Why what would have helped is left to the shop: a line for each such act. */
export function refusedActLines(
  causes: readonly RankedCause[],
  state: CaseState,
  desk: Desk,
): Line[] {
  const { knowledge } = desk;
  const evidence = evidenceOf(state);
  const helps = ({ cures, masks }: Act) =>
    causes.some(({ fault }) => (cures.get(fault) ?? 0) + (masks.get(fault) ?? 0) >= WOULD_HELP);
  return [...knowledge.acts.values()].flatMap((act) => {
    if (!helps(act) || evidence.acts.some((done) => done.act === act.id)) return [];
    const refusal = refusalOf(act, machineOf(state), { evidence, knowledge });
    if (refusal === undefined) return [];
    return line({ know: wordKey("act", act.id, `not-${refusal.id}`) }, "bullet");
  });
}
