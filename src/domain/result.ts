/** Something wrong with what a person or a file gave, with the place where that helps. */
export interface Problem {
  readonly file?: string;
  readonly line?: number;
  /** Path inside the data, for example `faults.battery-flat.share`. */
  readonly at?: string;
  /** A plain sentence: what was expected, what came, what to do. */
  readonly says: string;
}

/** The outcome of reading something that people wrote: a value, or every mistake at once. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A mistake in a call from other code: an unknown id, a number outside its range. */
export class TurnrowError extends Error {
  override readonly name: string = "TurnrowError";
}

/** An id that the knowledge does not hold. */
export class UnknownId extends TurnrowError {
  override readonly name = "UnknownId";
  readonly id: string;
  constructor(kind: string, id: string) {
    super(`there is no ${kind} "${id}"`);
    this.id = id;
  }
}

/** A number that is not in its range. */
export class OutOfRange extends TurnrowError {
  override readonly name = "OutOfRange";
  readonly id: string;
  constructor(id: string, value: number, range: string) {
    super(`${id}: ${value} is not ${range}`);
    this.id = id;
  }
}
