import type { DocumentKind, DocumentOf, DocumentStore } from "../cases/ports.ts";
import { type CaseHappening, stamped } from "../domain/case-events.ts";
import { type CaseDocument, FORMAT } from "../domain/documents.ts";
import type { Knowledge } from "../domain/knowledge.ts";

/** The end of the invented archive: 2 March 2026, noon UTC. */
export const NOW = Date.UTC(2026, 2, 2, 12);
const HOUR = 60 * 60 * 1000;

const PLACES = ["lower meadow", "behind the barn", "by the river", "at the road"] as const;

/** One invented case; the same for the same number. */
export function inventedCase(
  knowledge: Knowledge,
  { n, closed }: { readonly n: number; readonly closed: boolean },
): CaseDocument {
  const kinds = [...knowledge.machines.keys()];
  const faults = [...knowledge.faults.keys()];
  const [kind = "other", fault = ""] = [kinds[n % kinds.length], faults[n % faults.length]];
  const told = (observation: string, state: string): CaseHappening => ({
    type: "answer.given",
    report: {
      ...({ observation, epoch: 0, reporter: "operator", hedge: 0 } as const),
      said: { kind: "states", weights: { [state]: 1 } },
    },
  });
  const course: CaseHappening[] = [
    {
      ...({ type: "case.opened", operator: `p${n % 997}`, name: `Person ${n % 997}` } as const),
      ...{ chat: `p${n % 997}`, language: "en", knowledge: "", seed: n },
    },
    { type: "words.said", text: `the ${kind} only clicks once, call ${n}` },
    { type: "machine.described", facts: { kind, fuel: "diesel", volts: 12 } },
    told("on-start", "one-click"),
    told("lights-at-start", "stay-bright"),
    { type: "where.told", words: PLACES[n % PLACES.length] ?? "" },
    { type: "shop.told" },
  ];
  const end: CaseHappening[] = [
    { type: "cause.confirmed", faults: [fault], how: "measured" },
    {
      ...({ type: "case.closed", end: "visit", complaint: "one-click" } as const),
      ...{ cause: fault, correction: "" },
    },
  ];
  const happenings = closed ? [...course, ...end] : course;
  const at = NOW - (n % 4000) * HOUR;
  return {
    ...{ kind: "case", format: FORMAT, id: `${closed ? "C" : "A"}${n}`, version: 1 },
    ...{ updates: [], outbox: [], sent: {} },
    events: happenings.map((one) => stamped(one, { at, by: `p${n % 997}`, update: null })),
  };
}

/** A store that holds nothing but invented cases; nothing can be written to it. */
export function inventedStore(
  knowledge: Knowledge,
  size: { readonly open: number; readonly closed: number },
): DocumentStore {
  const refuse = () => Promise.reject(new Error("an invented archive is only read"));
  async function* cases(): AsyncIterable<CaseDocument> {
    for (let n = 0; n < size.open; n += 1) yield inventedCase(knowledge, { n, closed: false });
    for (let n = 0; n < size.closed; n += 1) yield inventedCase(knowledge, { n, closed: true });
  }
  return {
    load: refuse,
    save: refuse,
    remove: refuse,
    async *all<K extends DocumentKind>(kind: K): AsyncIterable<DocumentOf<K>> {
      for await (const document of cases()) if (isOf(kind, document)) yield document;
    },
  };
}

function isOf<K extends DocumentKind>(
  kind: K,
  document: DocumentOf<DocumentKind>,
): document is DocumentOf<K> {
  return document.kind === kind;
}
