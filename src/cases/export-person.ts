import type { CaseEvent } from "../domain/case-events.ts";
import { foldCase } from "../domain/fold-case.ts";
import type { Commit } from "./commit.ts";
import type { Directory } from "./directory.ts";

export interface ExportParts {
  readonly directory: Directory;
  readonly commit: Commit;
}

/** Whose doing it was, without the names of others. */
function whose(by: string, person: string): "you" | "program" | "shop" {
  if (by === person) return "you";
  return by === "turnrow" ? "program" : "shop";
}

/** An event as its person may have it: nothing of other people, nothing of the program's inside. */
function shareable(event: CaseEvent, person: string): Record<string, unknown> {
  const { by, at, type } = event;
  const head = { when: new Date(at).toISOString(), who: whose(by, person), type };
  const inner = new Set(["at", "by", "update", "type", "before"]);
  const others = new Set([
    "technician",
    "operator",
    "name",
    "chat",
    "to",
    "digest",
    "seed",
    "knowledge",
    "profile",
  ]);
  const rest = Object.entries(event).filter(([key]) => !inner.has(key) && !others.has(key));
  return { ...head, ...Object.fromEntries(rest) };
}

/**
 * Everything that is kept of a person, as JSON that people and programs can read: who they are, their
 * machines, and their cases from the first word to the end.
 */
export function createExport({ directory, commit }: ExportParts) {
  return async (person: string): Promise<string> => {
    const cases: unknown[] = [];
    for (const { id } of directory.cases({ operator: person })) {
      await commit({ kind: "case", id }, null, (document) => {
        const events = document?.events ?? [];
        const { machine, closed } = foldCase(id, events);
        const happened = events.map((event) => shareable(event, person));
        cases.push({ number: id, machine, end: closed?.end ?? null, happened });
        return null;
      });
    }
    const { name, language, machines, has } = directory.person(person) ?? {
      ...{ name: "", language: "", machines: [], has: [] },
    };
    return JSON.stringify({ name, language, has: has ?? [], machines, cases }, null, 2);
  };
}
