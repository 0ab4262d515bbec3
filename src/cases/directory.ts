import type {
  CaseDocument,
  Member,
  PersonDocument,
  ShopDocument,
  TurnrowDocument,
} from "../domain/documents.ts";
import type { CaseSummary } from "./case-summary.ts";
import { summariseCase } from "./case-summary.ts";
import type { Pending } from "./lanes.ts";
import { createLanes, keyOf } from "./lanes.ts";
import type { DocumentStore, Target } from "./ports.ts";
import { createSeenUpdates } from "./seen-updates.ts";

/** Far more than can come in within the day for which the chat service repeats updates. */
const REMEMBERED_UPDATES = 100_000;

export type PersonCard = Pick<
  PersonDocument,
  "id" | "name" | "chat" | "language" | "reachable" | "machines" | "has" | "lookedAt" | "noting"
>;

export interface CaseFilter {
  readonly operator?: string;
  readonly technician?: string;
  /** Only those not closed, or only those closed. */
  readonly open?: boolean;
  /** Those about which this member of the shop was asked to write. */
  readonly promptedBy?: string;
  /** The one with this link still unused, by the link's digest. */
  readonly link?: string;
}

/**
 * What can be looked up without reading the disk. All of it is derived from the documents: rebuilt
 * at start, brought up to date by every write.
 */
export interface Directory {
  /** Was this update applied already, to whatever document? */
  seen(update: string): boolean;
  case(id: string): CaseSummary | null;
  /** Cases that match, the one touched last first. */
  cases(filter: CaseFilter): readonly CaseSummary[];
  /** Counts the changes of closed cases: what was learned from them is learned anew. */
  closedRevision(): number;
  person(id: string): PersonCard | null;
  /** The people whose own chat this is. */
  peopleAt(chat: string): readonly PersonCard[];
  shop(): ShopDocument | null;
  /** The people of the shop, each with the language they last chose. */
  members(): readonly Member[];
  /** Lanes with something waiting. */
  lanes(): readonly string[];
  /** What waits in a lane, in its order. */
  pending(lane: string): readonly Pending[];
  nextSequence(lane: string): number;
  /** Takes a document over as it was just written. */
  take(document: TurnrowDocument): void;
  /** Forgets a document that was removed. */
  forget(target: Target): void;
  /** Calls back with the lanes of every document taken over that has something to send. */
  onPending(listener: (lanes: readonly string[]) => void): void;
  /** Calls back with the number of every case in which something happened, or that went. */
  onCase(listener: (id: string) => void): void;
}

function matches(summary: CaseSummary, filter: CaseFilter): boolean {
  const { operator, technician, open, promptedBy, link } = filter;
  if (operator !== undefined && summary.operator.id !== operator) return false;
  if (technician !== undefined && summary.technician?.id !== technician) return false;
  if (promptedBy !== undefined && summary.prompt?.by !== promptedBy) return false;
  if (link !== undefined && summary.link !== link) return false;
  return open === undefined || open === (summary.closed === null);
}

/** Builds the directory of everything in the store. */
export async function openDirectory(store: DocumentStore): Promise<Directory> {
  const seen = createSeenUpdates(REMEMBERED_UPDATES);
  const lanes = createLanes();
  const versions = new Map<string, number>();
  const cases = new Map<string, CaseSummary>();
  /** Few beside the closed ones, and looked through with almost every message. */
  const openCases = new Map<string, CaseSummary>();
  // Both hold the one touched last at their end: what is in order already is sorted in one go.
  const people = new Map<string, PersonDocument>();
  const listeners: ((lanes: readonly string[]) => void)[] = [];
  const caseListeners: ((id: string) => void)[] = [];
  let shop: ShopDocument | null = null;
  let closedRevision = 0;

  function takeCase(document: CaseDocument): void {
    const wasClosed = cases.get(document.id)?.closed != null;
    const summary = summariseCase(document);
    for (const one of [cases, openCases]) one.delete(document.id);
    cases.set(document.id, summary);
    if (summary.closed === null) openCases.set(document.id, summary);
    if (wasClosed || summary.closed !== null) closedRevision += 1;
    for (const listener of caseListeners) listener(document.id);
  }

  function take(document: TurnrowDocument): void {
    const key = keyOf(document);
    if (document.version < (versions.get(key) ?? 0)) return;
    versions.set(key, document.version);
    seen.add(document.updates);
    if (document.kind === "case") takeCase(document);
    else if (document.kind === "person") people.set(document.id, document);
    else shop = document;
    const source = { kind: document.kind, id: document.id };
    const waiting = lanes.take(source, document.outbox);
    if (waiting.length > 0) for (const listener of listeners) listener(waiting);
  }

  for (const kind of ["shop", "person", "case"] as const) {
    for await (const document of store.all(kind)) take(document);
  }
  for (const known of [cases, openCases]) {
    const inOrder = [...known.values()].sort((a, b) => a.touchedAt - b.touchedAt);
    known.clear();
    for (const one of inOrder) known.set(one.id, one);
  }

  return {
    seen: seen.has,
    case: (id) => cases.get(id) ?? null,
    cases: (filter) =>
      [...(filter.open === true ? openCases : cases).values()]
        .filter((summary) => matches(summary, filter))
        .reverse()
        .sort((a, b) => b.touchedAt - a.touchedAt),
    closedRevision: () => closedRevision,
    person: (id) => people.get(id) ?? null,
    peopleAt: (chat) => [...people.values()].filter((person) => person.chat === chat),
    shop: () => shop,
    members: () =>
      (shop?.members ?? []).map((member) => ({
        ...member,
        language: people.get(member.person)?.language ?? member.language,
      })),
    lanes: lanes.names,
    pending: lanes.pending,
    nextSequence: lanes.nextSequence,
    take,
    forget(target) {
      versions.delete(keyOf(target));
      lanes.take(target, []);
      if (target.kind === "case") {
        cases.delete(target.id);
        openCases.delete(target.id);
        closedRevision += 1;
        for (const listener of caseListeners) listener(target.id);
      } else if (target.kind === "person") people.delete(target.id);
      else shop = null;
    },
    onPending: (listener) => void listeners.push(listener),
    onCase: (listener) => void caseListeners.push(listener),
  };
}
