/** Something that shall go wrong with a call. */
export type Fault =
  /** 429: nothing is done. */
  | { kind: "tooManyRequests"; retryAfterSeconds: number }
  /** 403 as for a person who blocked the bot: nothing is done. */
  | { kind: "blocked" }
  /** 400 as for a group that became a supergroup: nothing is done. */
  | { kind: "migrated"; toChatId: number }
  /** Any other refusal: nothing is done. */
  | { kind: "refusal"; errorCode: number; description: string }
  /** A web page instead of JSON, as from a proxy: nothing is done. */
  | { kind: "webPage"; status: number }
  /** The connection breaks; the call was not carried out. */
  | { kind: "resetBefore" }
  /** The connection breaks; the call was carried out, but the bot cannot know. */
  | { kind: "resetAfter" }
  /** The answer comes late; the call is carried out at once. */
  | { kind: "slow"; milliseconds: number };

/** Which calls a fault strikes. */
export interface FaultTarget {
  /**
   * The method, in any case, or "file" for a download by a file link. When missing: any method
   * but getUpdates.
   */
  method?: string;
  chatId?: number;
  /** How many calls it strikes; 1 when missing. */
  times?: number;
  /** How many matching calls pass unharmed before; 0 when missing. */
  after?: number;
}

interface Scripted {
  fault: Fault;
  target: FaultTarget;
  left: number;
  toPass: number;
}

/** The name under which faults strike downloads. */
export const FILE_DOWNLOAD = "file";

/** The faults a test has asked for. */
export class FaultScript {
  #scripted: Scripted[] = [];

  add(fault: Fault, target: FaultTarget = {}): void {
    const { times = 1, after = 0 } = target;
    this.#scripted.push({ fault, target, left: times, toPass: after });
  }

  clear(): void {
    this.#scripted = [];
  }

  /** The fault for this call, used up by asking. The one asked for first strikes first. */
  take(method: string, chatId: number | undefined): Fault | undefined {
    for (const scripted of this.#scripted) {
      if (!matches(scripted.target, method, chatId)) continue;
      if (scripted.toPass > 0) {
        scripted.toPass -= 1;
        continue;
      }
      scripted.left -= 1;
      this.#scripted = this.#scripted.filter((entry) => entry.left > 0);
      return scripted.fault;
    }
    return undefined;
  }
}

function matches(target: FaultTarget, method: string, chatId: number | undefined): boolean {
  const isMethod =
    target.method === undefined
      ? method !== "getUpdates" && method !== FILE_DOWNLOAD
      : target.method.toLowerCase() === method.toLowerCase();
  return isMethod && (target.chatId === undefined || target.chatId === chatId);
}
