import { TurnrowError } from "../domain/result.ts";
import type { Directory } from "./directory.ts";
import type { DocumentKind, DocumentOf, DocumentStore, Target } from "./ports.ts";

/** Each round lost means that somebody else's write went through, so few rounds are enough. */
const ROUNDS = 12;

/** A document was changed by others again and again while we tried to change it. */
export class StillContended extends TurnrowError {
  override readonly name = "StillContended";
  readonly target: Target;
  constructor(target: Target) {
    super(`${target.kind} ${target.id} was changed by others ${ROUNDS} times in a row`);
    this.target = target;
  }
}

/** The document after a change; `changed` is false where the step wanted none. */
export interface Changed<K extends DocumentKind> {
  readonly changed: boolean;
  readonly document: DocumentOf<K> | null;
}

/**
 * Loads a document, computes its next state and writes it, computing anew when somebody else wrote
 * in between.
 *
 * @param next gets the document (null: there is none) and gives the next one, or null to leave it
 * as it is; may be called several times; the version is set here
 */
export type ChangeDocument = <K extends DocumentKind>(
  target: Target<K>,
  next: (document: DocumentOf<K> | null) => DocumentOf<K> | null,
) => Promise<Changed<K>>;

export function createChangeDocument(store: DocumentStore, directory: Directory): ChangeDocument {
  /** What stands on disk now, also when we were told that it could not be written. */
  async function lookAgain({ kind, id }: Target): Promise<void> {
    const document = await store.load<DocumentKind>(kind, id);
    if (document !== null) directory.take(document);
  }

  return async (target, next) => {
    for (let round = 0; round < ROUNDS; round++) {
      const document = await store.load(target.kind, target.id);
      const wanted = next(document);
      if (wanted === null) return { changed: false, document };
      const expected = document?.version ?? 0;
      const written = { ...wanted, version: expected + 1 };
      const outcome = await store.save(written, expected).catch(async (error) => {
        await lookAgain(target).catch(() => undefined);
        throw error;
      });
      if (outcome === "saved") {
        directory.take(written);
        return { changed: true, document: written };
      }
    }
    throw new StillContended(target);
  };
}
