import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { CaseDocument } from "../../src/domain/documents.ts";
import { LIMITS_WITHOUT_PAUSES } from "../../src/rehearsal/limits.ts";
import type { Person } from "../../src/rehearsal/people/person.ts";
import { createRehearsalServer, type RehearsalServer } from "../../src/rehearsal/server.ts";
import type { FeedEvent } from "../../src/rehearsal/world/feed.ts";
import { readDocument } from "../../src/store/document-text.ts";
import { freshFolder, type Program, removeFolder, startProgram } from "./e2e-program.ts";

/** Has a token's shape for the program, and not that of a real one for the server. */
export const TOKEN = `12345:${"rehearsal-".repeat(3)}token`;
/** Real time, because the program is a process of its own; the machine may be busy. */
export const PATIENCE = { timeoutMs: 40_000 };

export const people = {
  operator: { id: 1001, name: "Marit" },
  dispatcher: { id: 1002, name: "Jonas" },
  technician: { id: 1003, name: "Ilse" },
} as const;
export type RoleName = keyof typeof people;

const SETTINGS = `name: Test workshop
phone: "+1 555 0142"
emergency: "112"
`;

/** A data folder with nothing in it but a shop's own settings. */
export function freshData(settings = SETTINGS): string {
  const folder = freshFolder("data");
  writeFileSync(join(folder, "shop.yaml"), settings);
  return folder;
}

/** A shop whose program runs as a process and talks to a Bot API server of this one. */
export class Shop {
  readonly server: RehearsalServer;
  readonly data: string;
  readonly #home: string;
  /** Added to this computer's clock, as the server and the people see it. */
  #later = 0;
  #program: Program | null = null;
  /** The bot's messages by chat, as they stood when they came. */
  readonly #came = new Map<number, string[]>();
  #earlier = "";
  #strangers = 0;

  private constructor(home: string) {
    this.#home = home;
    this.data = freshData();
    this.server = createRehearsalServer({
      token: TOKEN,
      clock: () => Date.now() + this.#later,
      limits: LIMITS_WITHOUT_PAUSES,
    });
    this.server.subscribe((event) => {
      if (event.kind === "posted") this.#note(event.chatId, event.messageId);
    });
  }

  /** A shop with its program running, and nobody in it yet. */
  static async open(home: string): Promise<Shop> {
    const shop = new Shop(home);
    await shop.server.start();
    for (const person of Object.values(people)) shop.server.person(person);
    await shop.start();
    return shop;
  }

  get program(): Program {
    if (this.#program === null) throw new Error("The program is not running.");
    return this.#program;
  }

  /** Everything the program has ever written to the terminal. */
  printed(): string {
    const now = this.#program;
    return now === null ? this.#earlier : this.#earlier + now.stdout() + now.stderr();
  }

  person(role: RoleName): Person {
    return this.server.person(people[role]);
  }

  /** Somebody who has never written here. */
  stranger(name: string): Person {
    this.#strangers += 1;
    return this.server.person({ id: 2000 + this.#strangers, name });
  }

  /** Starts the program and waits until it asks for updates. */
  async start(): Promise<void> {
    const polls = () => this.server.calls("getUpdates").length;
    const before = polls();
    const program = startProgram(this.#home, {
      TURNROW_TOKEN: TOKEN,
      TURNROW_DATA: this.data,
      TURNROW_API_ROOT: this.server.url,
    });
    this.#program = program;
    const asked = this.server.until(() => polls() > before, "the program to begin", PATIENCE);
    const died = program.ended.then((code) => {
      throw new Error(`The program ended with ${code}:\n${program.stderr()}`);
    });
    await Promise.race([asked, died]);
    died.catch(() => undefined);
  }

  async kill(): Promise<void> {
    await this.program.kill();
    this.#forgetProgram();
  }

  async stop(): Promise<number | null> {
    const code = await this.program.stop();
    this.#forgetProgram();
    return code;
  }

  #forgetProgram(): void {
    this.#earlier = this.printed();
    this.#program = null;
  }

  /** Lets time pass for everybody but the program. */
  wait(milliseconds: number): void {
    this.#later += milliseconds;
  }

  async close(): Promise<void> {
    if (this.#program !== null) await this.kill();
    await this.server.stop();
    removeFolder(this.data);
  }

  /** Jonas takes the owner's link, invites Ilse, and she takes hers. */
  async seat(): Promise<void> {
    const { dispatcher, technician } = people;
    const link = /start=([A-Za-z0-9_-]+)/;
    const [, token] = await this.program.written(link);
    this.person("dispatcher").start(token);
    this.person("dispatcher").say("/invite");
    const labels = () => this.newest("dispatcher")?.buttons.flat() ?? [];
    await this.server.until(() => labels().length > 1, "the roles to choose from", PATIENCE);
    this.person("dispatcher").press("technician");
    const linked = await this.server.waitFor(
      dispatcher.id,
      (seen) => seen.some((one) => one.from.isBot && link.test(one.text)),
      PATIENCE,
    );
    const text = linked.findLast((one) => one.from.isBot && link.test(one.text))?.text ?? "";
    this.person("technician").start(link.exec(text)?.[1]);
    await this.server.waitFor(
      technician.id,
      (seen) => seen.some((one) => one.from.isBot),
      PATIENCE,
    );
  }

  /** The bot's newest message to a person. */
  newest(role: RoleName) {
    return this.server.transcript(people[role].id).findLast((one) => one.from.isBot);
  }

  /** All cases as they stand on disk. */
  cases(): CaseDocument[] {
    const folder = join(this.data, "cases");
    return readdirSync(folder)
      .filter((name) => name.endsWith(".json") && !name.startsWith("."))
      .map((name) => {
        const read = readDocument("case", readFileSync(join(folder, name), "utf8"));
        if (!read.ok) throw new Error(`${name}: ${read.why}`);
        return read.document;
      });
  }

  /** The newest case of a person, if there is one. */
  caseOf(person: Person): CaseDocument | undefined {
    const by = String(person.user.id);
    const own = this.cases().filter(({ events: [first] }) => first?.by === by);
    return own.sort((a, b) => (a.events[0]?.at ?? 0) - (b.events[0]?.at ?? 0)).at(-1);
  }

  /** The only case there is. */
  theCase(): CaseDocument {
    const [first, ...more] = this.cases();
    if (first === undefined || more.length > 0) throw new Error(`${more.length + 1} cases`);
    return first;
  }

  /** Waits until everything that is due has been sent and written down as sent. */
  async delivered(): Promise<void> {
    await this.server.settled(PATIENCE);
    await this.onDisk("nothing that is due and not sent", () =>
      this.cases().every(({ outbox }) => outbox.every((one) => one.notBefore > Date.now())),
    );
  }

  /** Waits until the data folder is so. Nobody tells of a write, so it is looked at repeatedly. */
  async onDisk(what: string, isSo: () => boolean): Promise<void> {
    const until = Date.now() + PATIENCE.timeoutMs;
    while (!isSo()) {
      if (Date.now() > until) throw new Error(`Waited in vain for this on disk: ${what}.`);
      await new Promise((resolve) => setTimeout(resolve, 25));
    }
  }

  #note(chatId: number, messageId: number): void {
    const message = this.server.transcript(chatId).find((one) => one.id === messageId);
    if (message?.from.isBot !== true) return;
    const came = this.#came.get(chatId) ?? [];
    this.#came.set(chatId, [...came, JSON.stringify([message.text, message.buttons])]);
  }

  /** How many messages came a second time, word by word and button by button. */
  repeats(role: RoleName): number {
    const came = this.#came.get(people[role].id) ?? [];
    return came.length - new Set(came).size;
  }

  /** Ends the program without warning as soon as this happens. */
  killWhen(happens: (event: FeedEvent) => boolean): Promise<void> {
    return new Promise((done, fail) => {
      const late = setTimeout(() => {
        leave();
        fail(new Error("What the program should be killed at did not happen."));
      }, PATIENCE.timeoutMs);
      const leave = this.server.subscribe((event) => {
        if (!happens(event)) return;
        clearTimeout(late);
        leave();
        this.kill().then(done, fail);
      });
    });
  }
}
