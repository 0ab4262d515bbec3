import type { CaseHappening, Stamp } from "../domain/case-events.ts";
import { stamped } from "../domain/case-events.ts";
import type { CaseDocument, Ledger, PersonDocument, ShopDocument } from "../domain/documents.ts";
import { FORMAT } from "../domain/documents.ts";
import type { OutboxEntry, PlannedEffect } from "../domain/effects.ts";
import type { ChangeDocument } from "./change-document.ts";
import type { Directory } from "./directory.ts";
import { keyOf, laneOf } from "./lanes.ts";
import type { Clock, DocumentKind, DocumentOf, Target } from "./ports.ts";

/**
 * How many updates a document remembers. The chat service repeats at most the hundred updates of
 * one unconfirmed batch; follow-ups from other documents come on top.
 */
const UPDATE_WINDOW = 200;

/** What a decision hands over, by kind of document. */
export interface Decisions {
  /** What happened; `by` names who did it, where a happening does not name somebody else. */
  case: {
    readonly by: string;
    readonly happenings: readonly (CaseHappening & { readonly by?: string })[];
    readonly effects: readonly PlannedEffect[];
  };
  person: {
    readonly body: Omit<PersonDocument, keyof Ledger | "kind">;
    readonly effects: readonly PlannedEffect[];
  };
  shop: {
    readonly body: Omit<ShopDocument, keyof Ledger | "kind">;
    readonly effects: readonly PlannedEffect[];
  };
}

/**
 * Pure: what follows from a document (null: there is none yet) at a moment. Null: nothing does.
 * Called again when somebody else wrote in between.
 */
export type Decide<K extends DocumentKind> = (
  document: DocumentOf<K> | null,
  at: number,
) => Decisions[K] | null;

export interface Committed<K extends DocumentKind> {
  /** `repeated`: this update was applied before and is not applied again. */
  readonly outcome: "saved" | "repeated" | "nothing";
  readonly document: DocumentOf<K> | null;
}

/**
 * Applies one update to one document: the new state, the update's id and the decided effects in a
 * single write.
 *
 * @param update the id under which the update counts only once; null for upkeep that may be done
 * any number of times
 */
export type Commit = <K extends DocumentKind>(
  target: Target<K>,
  update: string | null,
  decide: Decide<K>,
) => Promise<Committed<K>>;

interface Plan extends Omit<Stamp, "by"> {
  readonly effects: readonly PlannedEffect[];
}

type Compose<K extends DocumentKind> = (
  ledger: Ledger,
  old: DocumentOf<K> | null,
  decision: Decisions[K],
  stamp: Omit<Stamp, "by">,
) => DocumentOf<K>;

const compose: { readonly [K in DocumentKind]: Compose<K> } = {
  case: (ledger, old, { by, happenings }, stamp): CaseDocument => {
    const news = happenings.map((one) => stamped(one, { by: one.by ?? by, ...stamp }));
    return { ...ledger, kind: "case", events: [...(old?.events ?? []), ...news] };
  },
  person: (ledger, _old, { body }) => ({ ...body, ...ledger, kind: "person" }),
  shop: (ledger, _old, { body }) => ({ ...body, ...ledger, kind: "shop" }),
};

export function createCommit(parts: {
  readonly change: ChangeDocument;
  readonly directory: Directory;
  readonly clock: Clock;
}): Commit {
  const { change, directory, clock } = parts;

  function entries(source: Ledger, key: string, plan: Plan): OutboxEntry[] {
    return plan.effects.map(({ effect, notBefore, cancelIf }, index) => ({
      // The moment keeps ids apart where a document was removed and begun anew.
      id: `${key}/${source.version}/${index}/${plan.at.toString(36)}`,
      effect,
      sequence: directory.nextSequence(laneOf(effect)),
      notBefore: notBefore ?? plan.at,
      ...(cancelIf === undefined ? {} : { cancelIf }),
      attempts: 0,
    }));
  }

  /** The old ledger with the update noted and the planned effects waiting. */
  function nextLedger(target: Target, old: Ledger | null, plan: Plan): Ledger {
    const ledger: Ledger = {
      format: FORMAT,
      id: target.id,
      version: (old?.version ?? 0) + 1,
      updates: [...(old?.updates ?? []), ...(plan.update === null ? [] : [plan.update])],
      outbox: old?.outbox ?? [],
      sent: old?.sent ?? {},
    };
    return {
      ...ledger,
      updates: ledger.updates.slice(-UPDATE_WINDOW),
      outbox: [...ledger.outbox, ...entries(ledger, keyOf(target), plan)],
    };
  }

  return async (target, update, decide) => {
    let outcome: "saved" | "repeated" | "nothing" = "nothing";
    const { document } = await change(target, (old) => {
      const repeated = update !== null && (old?.updates.includes(update) ?? false);
      const at = clock.now();
      const decision = repeated ? null : decide(old, at);
      outcome = repeated ? "repeated" : decision === null ? "nothing" : "saved";
      if (decision === null) return null;
      const ledger = nextLedger(target, old, { at, update, effects: decision.effects });
      return compose[target.kind](ledger, old, decision, { at, update });
    });
    return { outcome, document };
  };
}
