import type { ChangeDocument } from "./change-document.ts";
import type { Commit } from "./commit.ts";
import type { Directory } from "./directory.ts";
import type { DocumentStore } from "./ports.ts";
import { stripPerson } from "./strip-person.ts";

export interface ForgetParts {
  readonly directory: Directory;
  readonly commit: Commit;
  readonly change: ChangeDocument;
}

/** Removes the documents of people who asked to be forgotten, once their last message is out. */
export async function sweepForgotten(store: DocumentStore, directory: Directory): Promise<void> {
  const gone: string[] = [];
  for await (const { id, name, outbox } of store.all("person")) {
    if (name === "" && outbox.length === 0) gone.push(id);
  }
  for (const id of gone) {
    await store.remove("person", id);
    directory.forget({ kind: "person", id });
  }
}

/**
 * Removes what is kept of a person in their cases: name, words, number, place and files. What was
 * found out about the machines stays, without them. Doing it twice does nothing more. Their own
 * document is emptied by whoever answers them, and removed at the next start.
 */
export function createForget(parts: ForgetParts): (person: string) => Promise<void> {
  const { directory, commit, change } = parts;
  return async (person) => {
    for (const { id } of directory.cases({ operator: person })) {
      await change({ kind: "case", id }, (document) =>
        document === null ? null : stripPerson(document),
      );
      await commit({ kind: "case", id }, null, (document) =>
        document === null
          ? null
          : { by: "turnrow", happenings: [{ type: "operator.forgotten" }], effects: [] },
      );
    }
  };
}
