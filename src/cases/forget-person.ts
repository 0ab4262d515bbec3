import type { ChangeDocument } from "./change-document.ts";
import type { Commit } from "./commit.ts";
import type { Directory } from "./directory.ts";
import type { DocumentStore } from "./ports.ts";
import { stripPerson } from "./strip-person.ts";

export interface ForgetParts {
  readonly directory: Directory;
  readonly commit: Commit;
  readonly change: ChangeDocument;
  readonly store: DocumentStore;
}

/**
 * Removes what is kept of a person: name, words, number, place and files in their cases, then
 * their own document. What was found out about the machines stays, without them.
 */
export function createForget(parts: ForgetParts): (person: string) => Promise<void> {
  const { directory, commit, change, store } = parts;
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
    await store.remove("person", person);
    directory.forget({ kind: "person", id: person });
  };
}
