import { badRequest } from "../refusal.ts";
import type { Clock } from "../time.ts";

/** A press of an inline button, known to the bot by its query id. */
export interface Press {
  queryId: string;
  userId: number;
  chatId: number;
  messageId: number;
  data: string;
  /** Milliseconds since 1970. */
  at: number;
  isAnswered: boolean;
  /** The bot was shown nothing of the message but that it exists. */
  isInaccessible: boolean;
}

/** Where the numbers of query ids begin: they look like those of the real server. Ours. */
const FIRST_QUERY_ID = 7_300_000_000_000_000n;

/** Every button press so far. */
export class PressBook {
  readonly #presses = new Map<string, Press>();
  readonly #clock: Clock;
  readonly #answerSeconds: number;

  constructor(clock: Clock, answerSeconds: number) {
    this.#clock = clock;
    this.#answerSeconds = answerSeconds;
  }

  add(press: Omit<Press, "queryId" | "at" | "isAnswered">): Press {
    const queryId = String(FIRST_QUERY_ID + BigInt(this.#presses.size));
    const record: Press = { ...press, queryId, at: this.#clock(), isAnswered: false };
    this.#presses.set(queryId, record);
    return record;
  }

  /**
   * Ends the waiting on the person's button. A press is answered once, and soon.
   * @throws ApiRefusal 400 for an unknown, answered or outdated query
   */
  answer(queryId: string): Press {
    const press = this.#presses.get(queryId);
    const ageSeconds = press === undefined ? Infinity : (this.#clock() - press.at) / 1000;
    if (press === undefined || press.isAnswered || ageSeconds > this.#answerSeconds) {
      throw badRequest("query is too old and response timeout expired or query ID is invalid");
    }
    press.isAnswered = true;
    return press;
  }

  /** The last press of that person in that chat. */
  last(userId: number, chatId: number): Press | undefined {
    return [...this.#presses.values()].findLast(
      (press) => press.userId === userId && press.chatId === chatId,
    );
  }

  /** Presses the bot has not answered yet: their buttons still show that they wait. */
  unanswered(): Press[] {
    return [...this.#presses.values()].filter((press) => !press.isAnswered);
  }
}
