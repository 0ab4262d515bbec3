import { samplePicture } from "../../src/rehearsal/people/sample-picture.ts";
import { newsKey, openMessage, playOnce, type ScriptLine } from "../../src/rehearsal/player.ts";
import type { SeenMessage } from "../../src/rehearsal/view/seen-message.ts";
import { PATIENCE, people, type RoleName, type Shop } from "./e2e-shop.ts";

const picture = samplePicture({ shade: 150 });

/** A person who answers by a script whatever the program asks, and counts what they did. */
export class Hand {
  /** What was pressed or typed, in order. */
  readonly did: string[] = [];
  readonly #shop: Shop;
  readonly #role: RoleName;
  readonly #lines: readonly ScriptLine[];
  readonly #seen = new Set<string>();

  constructor(shop: Shop, role: RoleName, lines: readonly ScriptLine[]) {
    this.#shop = shop;
    this.#role = role;
    this.#lines = lines;
  }

  get transcript(): SeenMessage[] {
    return this.#shop.server.transcript(people[this.#role].id);
  }

  say(text: string): void {
    this.#shop.person(this.#role).say(text);
    this.did.push(text);
  }

  /** Waits until this button can be seen, and presses it. */
  async press(label: string): Promise<void> {
    const { server } = this.#shop;
    const seen = () =>
      this.transcript.some(({ buttons }) => buttons.flat().some((one) => one.label === label));
    await server.until(seen, `a button "${label}"`, PATIENCE);
    this.#shop.person(this.#role).press(label);
    this.did.push(label);
  }

  /** The open message this person has not answered yet. */
  news(): SeenMessage | null {
    const open = openMessage(this.transcript);
    return open === undefined || this.#seen.has(newsKey(open)) ? null : open;
  }

  /** Waits for something to answer and answers it once. */
  async turn(): Promise<string> {
    const { server } = this.#shop;
    const what = `something for ${people[this.#role].name} to answer`;
    await server.until(() => this.news() !== null, what, PATIENCE);
    const open = this.news();
    if (open === null) throw new Error(what);
    this.#seen.add(newsKey(open));
    const script = {
      lines: this.#lines,
      fallback: { labels: ["I don't know", "Skip this", "I can't do that"] },
      picture,
    };
    const done = playOnce(this.#shop.person(this.#role), [open], script);
    if (done === null) {
      const labels = open.buttons.flat().map((one) => one.label);
      throw new Error(`The script has no answer to "${open.text}" [${labels.join("] [")}]`);
    }
    this.did.push(done);
    return done;
  }

  /** Answers until the chat shows this. */
  async until(text: string): Promise<void> {
    const { server } = this.#shop;
    const shown = () => this.transcript.some((one) => one.from.isBot && one.text.includes(text));
    for (;;) {
      const what = `"${text}" or something to answer`;
      await server.until(() => shown() || this.news() !== null, what, PATIENCE);
      if (shown()) return;
      await this.turn();
    }
  }
}
