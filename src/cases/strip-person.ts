import type { Asking, CaseEvent } from "../domain/case-events.ts";
import type { CaseDocument } from "../domain/documents.ts";
import type { MachineFacts } from "../domain/evidence.ts";

/** Events that hold nothing but a person's own words, number, place or files, or words to them. */
const personal: ReadonlySet<CaseEvent["type"]> = new Set([
  "words.said",
  "phone.told",
  "where.told",
  "file.received",
  "photo.checked",
  "photo.marked",
  "operator.asked",
  "operator.replied",
  "link.made",
]);

/** Stands in for a person who asked to be forgotten. */
const NOBODY = "nobody";

/** A machine without what tells whose it is. */
const unnamed = <F extends Partial<MachineFacts>>(facts: F): F => ({
  ...facts,
  ...(facts.words === undefined ? {} : { words: "" }),
  ...(facts.serial === undefined ? {} : { serial: "" }),
});

/** The person's own list of machines is theirs, not the case's. */
function withoutOwn(asking: Asking): Asking {
  return asking.about === "known" ? { ...asking, machines: [] } : asking;
}

function withoutPerson(event: CaseEvent): CaseEvent | null {
  if (personal.has(event.type)) return null;
  if (event.type === "case.opened") return { ...event, operator: NOBODY, name: "", chat: "" };
  if (event.type === "operator.joined") return { ...event, operator: NOBODY, name: "", chat: "" };
  if (event.type === "machine.described") return { ...event, facts: unnamed(event.facts) };
  if (event.type === "question.asked") return { ...event, asking: withoutOwn(event.asking) };
  if (event.type === "note.added" && event.from === "operator") return null;
  if (event.type === "urgency.told" && event.words !== undefined) {
    const { words: _, ...rest } = event;
    return rest;
  }
  if (event.type === "case.closed") return { ...event, complaint: "" };
  return event;
}

/** The case without anything that tells who the operator was, and nothing waiting to be sent to them. */
export function stripPerson(document: CaseDocument): CaseDocument {
  const people = document.events.flatMap((event) =>
    event.type === "case.opened" || event.type === "operator.joined" ? [event] : [],
  );
  // A call by phone has an operator and a chat only once somebody has come by its link.
  const ids = new Set(people.map((one) => one.operator));
  const chats = new Set(people.map((one) => one.chat).filter((chat) => chat !== ""));
  const unsigned = (event: CaseEvent): CaseEvent =>
    ids.has(event.by) ? { ...event, by: NOBODY } : event;
  return {
    ...document,
    events: document.events.flatMap((event) => withoutPerson(unsigned(event)) ?? []),
    outbox: document.outbox.filter(
      ({ effect }) => effect.do === "tell" || !chats.has(effect.to.chat),
    ),
    sent: Object.fromEntries(
      Object.entries(document.sent).filter(([, sent]) => !chats.has(sent.chat)),
    ),
  };
}
