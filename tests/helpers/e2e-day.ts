import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Chance, Timers } from "../../src/cases/ports.ts";
import { startTurnrow, type Turnrow } from "../../src/commands/turnrow.ts";
import { openWorkshop } from "../../src/commands/workshop.ts";
import { ShopSettings } from "../../src/domain/settings.ts";
import { LIMITS_WITHOUT_PAUSES } from "../../src/rehearsal/limits.ts";
import type { Person } from "../../src/rehearsal/people/person.ts";
import { createRehearsalServer, type RehearsalServer } from "../../src/rehearsal/server.ts";
import type { SeenMessage } from "../../src/rehearsal/view/seen-message.ts";
import { freshFolder, removeFolder } from "./e2e-program.ts";
import { createFakeTimers } from "./fake-timers.ts";

const TOKEN = `1:${"rehearsal-".repeat(3)}day`;
/** Numbers and their units stand together by spaces that do not break; nobody types those. */
const plain = (words: string) => words.replace(/[\u00a0\u202f]/g, " ");
/** Real time: the machine may be busy. */
const PATIENCE = { timeoutMs: 30_000 };
const MINUTE = 60_000;
const SHOP = { name: "Day shop", phone: "+1 555 0142", emergency: "112" };
const LINK = /start=([A-Za-z0-9_-]+)/;
/** Monday 2 March 2026, 08:00 in the shop. */
const MORNING = Date.UTC(2026, 2, 2, 8);

/** One thing that happened in a case, as it stands on disk, read by nothing of ours. */
export type StoredEvent = { readonly type: string; readonly at: number; readonly by: string } & {
  readonly [key: string]: unknown;
};
export interface StoredCase {
  readonly id: string;
  readonly events: readonly StoredEvent[];
  readonly outbox: readonly { readonly notBefore: number }[];
}

/** The same case numbers, tokens and seeds on every day. */
function countedChance(): Chance {
  let count = 0;
  const next = () => {
    count += 1;
    return count;
  };
  return {
    caseId: () => `K${String(100 + next())}`,
    token: () => `token-of-the-day-number-${next()}`,
    seed: () => 7 + next(),
  };
}

/** The documents of a folder, read by nothing of ours. */
function storedIn(folder: string): StoredCase[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".json") && !name.startsWith("."))
    .map((name) => JSON.parse(readFileSync(join(folder, name), "utf8")));
}

/** A shop for a day: the whole program in this process, on a clock that the test moves. */
export class Day {
  readonly server: RehearsalServer;
  readonly data = freshFolder("day");
  readonly #timers = createFakeTimers(MORNING);
  #turnrow: Turnrow | null = null;
  #people = 0;
  readonly logged: string[] = [];

  private constructor() {
    this.server = createRehearsalServer({
      token: TOKEN,
      clock: () => this.#timers.now(),
      limits: LIMITS_WITHOUT_PAUSES,
    });
  }

  static async open(): Promise<Day> {
    const day = new Day();
    const workshop = await openWorkshop(".");
    if (!workshop.ok) throw new Error(JSON.stringify(workshop.problems));
    await day.server.start();
    writeFileSync(join(day.data, "shop.yaml"), JSON.stringify(SHOP));
    const timers: Timers = day.#timers;
    day.#turnrow = await startTurnrow({
      ...{ root: ".", dataFolder: day.data, token: TOKEN, apiRoot: day.server.url },
      settings: ShopSettings.parse(SHOP),
      ...{ simulate: false, workshop: workshop.value, timers, chance: countedChance() },
      log: (what, facts) => void day.logged.push(`${what} ${facts?.reason ?? ""}`),
      pace: { limits: () => [], overall: [] },
    });
    day.#turnrow.running.catch((error: unknown) => void day.logged.push(String(error)));
    return day;
  }

  get now(): number {
    return this.#timers.now();
  }

  /** Lets time pass: what falls due is carried out. */
  async later(minutes: number): Promise<void> {
    await this.quiet();
    await this.#timers.advance(minutes * MINUTE);
    await this.quiet();
  }

  phone(name: string): Phone {
    this.#people += 1;
    return new Phone(this, this.server.person({ id: 500 + this.#people, name, language: "en" }));
  }

  /** The owner takes the link that the program showed, and gives the others theirs. */
  async seat(owner: Phone, others: readonly (readonly [Phone, string])[]): Promise<void> {
    owner.person.start(this.#turnrow?.ownerToken ?? "none");
    await owner.sees("Welcome");
    for (const [phone, role] of others) {
      await owner.say("/invite");
      await owner.press(role);
      const text = owner.messages().findLast((one) => LINK.test(one.text))?.text ?? "";
      phone.person.start(LINK.exec(text)?.[1]);
      await phone.sees("Welcome");
    }
  }

  /** All cases as they stand on disk. */
  cases(): StoredCase[] {
    return storedIn(join(this.data, "cases"));
  }

  /** Waits until what was sent was taken in, and what was decided has gone out. */
  async quiet(): Promise<void> {
    const isDue = () =>
      ["cases", "people", "shop"].some((folder) =>
        storedIn(join(this.data, folder)).some(({ outbox }) =>
          outbox.some((one) => one.notBefore <= this.now),
        ),
      );
    do await this.server.settled({ ...PATIENCE, quietMs: 10 });
    while (isDue());
  }

  async close(): Promise<void> {
    await this.#turnrow?.stop();
    await this.server.stop();
    removeFolder(this.data);
  }
}

/** Somebody's phone: what they see, type and press, each half a minute after what came before. */
export class Phone {
  readonly person: Person;
  readonly #day: Day;

  constructor(day: Day, person: Person) {
    this.#day = day;
    this.person = person;
  }

  /** What the bot wrote here, oldest first. */
  messages(): SeenMessage[] {
    return this.#day.server.transcript(this.person.chatId).filter((one) => one.from.isBot);
  }

  get toasts(): readonly string[] {
    return this.#day.server.view(this.person.chatId).toasts.map((toast) => toast.text);
  }

  async say(text: string): Promise<this> {
    this.person.say(text);
    await this.#day.later(0.5);
    return this;
  }

  /** The newest message that has such a button, and the button's words. */
  #find(label: string | RegExp, about: string): { messageId: number; words: string } {
    const fits = (words: string) =>
      typeof label === "string" ? plain(words) === label : label.test(plain(words));
    for (const { id, text, buttons } of this.messages().reverse()) {
      const words = buttons.flat().find((one) => fits(one.label))?.label;
      if (words !== undefined && text.includes(about)) return { messageId: id, words };
    }
    throw new Error(`No button ${label} about "${about}". The chat:\n${this.told()}`);
  }

  /** Presses without waiting for what comes of it. */
  tap(label: string | RegExp, about = ""): string {
    const { messageId, words } = this.#find(label, about);
    this.person.press(words, { messageId });
    return words;
  }

  /** @param about words of the message that is meant, such as its case's number */
  async press(label: string | RegExp, about = ""): Promise<string> {
    const words = this.tap(label, about);
    await this.#day.later(0.5);
    return words;
  }

  /** Presses whatever of these the newest message with buttons has, until this is shown. */
  async pressUntil(shown: string, labels: readonly string[]): Promise<void> {
    const from = this.messages().length;
    const isShown = () =>
      this.messages()
        .slice(from)
        .some((one) => one.text.includes(shown));
    for (let presses = 0; !isShown(); presses += 1) {
      const open = this.messages().findLast((one) => one.buttons.length > 0);
      const there = open?.buttons.flat().map((one) => one.label) ?? [];
      const label = labels.find((one) => there.includes(one));
      if (label === undefined || presses > 40) throw new Error(`Stuck:\n${this.told()}`);
      await this.press(label);
    }
  }

  /** Waits until the bot has shown this. */
  async sees(text: string): Promise<void> {
    const isShown = () => this.messages().some((one) => one.text.includes(text));
    await this.#day.server.until(isShown, `"${text}" on ${this.person.user.first_name}'s phone`, {
      ...PATIENCE,
    });
  }

  /** The end of the chat, for the messages of failed tests. */
  told(): string {
    return this.#day.server
      .transcript(this.person.chatId)
      .slice(-5)
      .map(({ from, text, buttons }) => {
        const labels = buttons.flat().map((one) => `[${one.label}]`);
        return `${from.name}: ${text}\n   ${labels.join(" ")}`;
      })
      .join("\n");
  }
}
