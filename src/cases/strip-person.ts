import type { CaseEvent } from "../domain/case-events.ts";
import type { CaseDocument } from "../domain/documents.ts";

/** Events that hold nothing but a person's own words, number, place or files. */
const personal: ReadonlySet<CaseEvent["type"]> = new Set([
  "words.said",
  "phone.told",
  "where.told",
  "file.received",
]);

/** Stands in for a person who asked to be forgotten. */
const NOBODY = "nobody";

function withoutPerson(event: CaseEvent): CaseEvent | null {
  if (personal.has(event.type)) return null;
  if (event.type === "case.opened") return { ...event, operator: NOBODY, name: "", chat: "" };
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
  const opened = document.events.find((event) => event.type === "case.opened");
  const chat = opened?.type === "case.opened" ? opened.chat : "";
  const person = opened?.type === "case.opened" ? opened.operator : "";
  const unsigned = (event: CaseEvent): CaseEvent =>
    event.by === person ? { ...event, by: NOBODY } : event;
  return {
    ...document,
    events: document.events.flatMap((event) => withoutPerson(unsigned(event)) ?? []),
    outbox: document.outbox.filter(({ effect }) => effect.do === "tell" || effect.to.chat !== chat),
    sent: Object.fromEntries(
      Object.entries(document.sent).filter(([, sent]) => sent.chat !== chat),
    ),
  };
}
