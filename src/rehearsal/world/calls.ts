/** One call of the bot, as plain data. */
export interface CallRecord {
  method: string;
  /** Milliseconds since 1970. */
  at: number;
  chatId?: number;
  params: Record<string, unknown>;
  /** Missing while the call is under way. */
  outcome?: CallOutcome;
}

/** How a call ended for the bot. After a reset the record does not tell what was done. */
export type CallOutcome =
  | { kind: "done" }
  | { kind: "refused"; errorCode: number; description: string }
  | { kind: "webPage"; status: number }
  | { kind: "reset" };

/** Every call so far, oldest first, up to a limit. */
export class CallLog {
  readonly #limit: number;
  #calls: CallRecord[] = [];
  #underWay = 0;

  constructor(limit: number) {
    this.#limit = limit;
  }

  begin(call: CallRecord): void {
    this.#calls.push(call);
    if (this.#calls.length > this.#limit) this.#calls = this.#calls.slice(this.#limit / 2);
    if (call.method !== "getUpdates") this.#underWay += 1;
  }

  end(call: CallRecord): void {
    if (call.method !== "getUpdates") this.#underWay -= 1;
  }

  /** Calls that wait for their answer, polling left out. */
  underWay(): number {
    return this.#underWay;
  }

  /** @param method in any case; all calls when missing */
  list(method?: string): CallRecord[] {
    const wanted = method?.toLowerCase();
    return wanted === undefined
      ? [...this.#calls]
      : this.#calls.filter((call) => call.method.toLowerCase() === wanted);
  }
}
