import type { Person } from "../../src/rehearsal/people/person.ts";
import { samplePicture } from "../../src/rehearsal/people/sample-picture.ts";
import { newsKey, openMessage, playOnce, type ScriptLine } from "../../src/rehearsal/player.ts";
import type { SeenMessage } from "../../src/rehearsal/view/seen-message.ts";
import { PATIENCE, type Shop } from "./e2e-shop.ts";

const picture = samplePicture({ shade: 150 });
/** Presses of these are no news to a case: they only show a list. */
const showsOnly = new Set(["Hand to a technician"]);

/** A person who answers by a script whatever the program asks, and counts what they did. */
export class Hand {
  /** What was pressed, typed or sent, in order. */
  readonly did: string[] = [];
  readonly person: Person;
  readonly #shop: Shop;
  readonly #lines: readonly ScriptLine[];
  readonly #seen = new Set<string>();

  constructor(shop: Shop, person: Person, lines: readonly ScriptLine[] = []) {
    this.#shop = shop;
    this.person = person;
    this.#lines = lines;
  }

  get transcript(): SeenMessage[] {
    return this.#shop.server.transcript(this.person.chatId);
  }

  say(text: string): void {
    this.person.say(text);
    this.did.push(text);
  }

  /** Waits until the bot has shown this. */
  async sees(text: string): Promise<void> {
    const shown = () => this.transcript.some((one) => one.from.isBot && one.text.includes(text));
    await this.#wait(shown, `"${text}" to be shown to ${this.person.user.first_name}`);
  }

  /** Waits for a notice over the chat, as the answer to a pressed button. */
  async notices(text: string): Promise<void> {
    const { toasts } = this.#shop.server.view(this.person.chatId);
    const shown = () =>
      this.#shop.server
        .view(this.person.chatId)
        .toasts.slice(toasts.length)
        .some((toast) => toast.text.includes(text));
    await this.#wait(shown, `the notice "${text}"`);
  }

  /** Waits until a button with these words can be seen, and presses it. @returns its label */
  async press(words: string | RegExp): Promise<string> {
    const labels = () => this.transcript.flatMap((one) => one.buttons.flat()).map((b) => b.label);
    const fits = (label: string) =>
      typeof words === "string" ? label === words : words.test(label);
    await this.#wait(() => labels().some(fits), `a button ${words}`);
    const label = labels().findLast(fits) ?? "";
    const open = this.news();
    if (open !== null) this.#seen.add(newsKey(open));
    this.person.press(label);
    this.#note(label);
    return label;
  }

  /** Presses the first button of every copy of a message, which is one answer. */
  async pressAll(copies: readonly SeenMessage[]): Promise<void> {
    const label = copies[0]?.buttons[0]?.[0]?.label ?? "";
    for (const copy of copies) {
      // None of them is news any more, also while one still shows its buttons.
      this.#seen.add(newsKey(copy));
      this.person.press(label, { messageId: copy.id });
    }
    this.did.push(label);
    const { toasts } = this.#shop.server.view(this.person.chatId);
    const isRefused = () =>
      this.#shop.server.view(this.person.chatId).toasts.length > toasts.length;
    await this.#wait(isRefused, "the second press to be refused");
  }

  /** The open message this person has not answered yet. */
  news(): SeenMessage | null {
    const open = openMessage(this.transcript);
    return open === undefined || this.#seen.has(newsKey(open)) ? null : open;
  }

  /** Waits for something to answer. */
  async asked(): Promise<SeenMessage> {
    const what = `something for ${this.person.user.first_name} to answer`;
    await this.#wait(() => this.news() !== null, what);
    const open = this.news();
    if (open === null) throw new Error(what);
    return open;
  }

  /** Waits for something to answer and answers it once. @returns what was done */
  async turn(): Promise<string> {
    const open = await this.asked();
    this.#seen.add(newsKey(open));
    const script = {
      lines: this.#lines,
      fallback: {
        labels: [
          "Nothing more",
          "I don't know",
          "Skip this",
          "I can't do that",
          "None of these",
          "Go on",
        ],
      },
      picture,
    };
    const done = playOnce(this.person, [open], script);
    if (done === null) throw new Error(`The script has no answer:\n${this.told()}`);
    this.#note(done);
    return done;
  }

  #note(done: string): void {
    if (!showsOnly.has(done)) this.did.push(done);
  }

  /** Answers until the chat shows this. */
  async until(text: string): Promise<void> {
    const shown = () => this.transcript.some((one) => one.from.isBot && one.text.includes(text));
    for (;;) {
      await this.#wait(() => shown() || this.news() !== null, `"${text}" or something to answer`);
      if (shown()) return;
      await this.turn();
    }
  }

  async #wait(happened: () => boolean, what: string): Promise<void> {
    await this.#shop.server.until(happened, what, PATIENCE).catch((error: unknown) => {
      throw new Error(`Waited in vain for ${what}. The chat:\n${this.told()}`, { cause: error });
    });
  }

  /** The end of the chat, for the messages of failed tests. */
  told(): string {
    return this.transcript
      .slice(-6)
      .map(({ from, text, buttons }) => {
        const labels = buttons.flat().map((one) => `[${one.label}]`);
        return `${from.name}: ${text}\n   ${labels.join(" ")}`;
      })
      .join("\n");
  }
}
