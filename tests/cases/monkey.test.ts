import { describe, expect, it } from "vitest";
import type { CaseEvent } from "../../src/domain/case-events.ts";
import { askingKey } from "../../src/domain/case-state.ts";
import type { Effect, Press } from "../../src/domain/effects.ts";
import { applyEvent, foldCase } from "../../src/domain/fold-case.ts";
import type { Incoming, IncomingContent } from "../../src/domain/incoming.ts";
import { speech } from "../helpers/dialog.ts";
import { dice, pick, standing, texts, whim } from "../helpers/monkey.ts";
import { openOffice, shopMembers } from "../helpers/office-desk.ts";

type Roll = (sides: number) => number;
type Outgoing = Exclude<Effect, { do: "tell" }>;

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;
/** Longest message of the Bot API reference. */
const MOST_CHARACTERS = 4096;
/** So many updates until the next shop is opened. */
const UPDATES_A_SHOP = 100;

const OPERATORS = ["9", "8"];
const STRANGER = "7";
const [DISPATCHER, TECHNICIAN] = ["2", "3"];
const GROUP = "-200";
const everybody = [...OPERATORS, ...OPERATORS, ...OPERATORS, STRANGER, DISPATCHER, TECHNICIAN];

/** Everything that can come in besides presses. */
function content(roll: Roll): IncomingContent {
  const text = pick(texts, roll);
  const name = pick(
    ["start", "new", "person", "back", "stop", "help", "machines", "toString"],
    roll,
  );
  const id = `f${roll(50)}`;
  const kinds = ["photo", "voice", "sticker", "document", "video-note"] as const;
  return pick<IncomingContent>(
    [
      { kind: "text", text },
      { kind: "text", text },
      { kind: "text", text },
      { kind: "text", text, forwarded: true },
      { kind: "edited", text },
      { kind: "command", name, argument: pick(["", "", "m-nothing", "x".repeat(64)], roll) },
      { kind: "file", file: { id, kind: pick(kinds, roll) } },
      { kind: "file", file: { id, kind: "photo" }, album: "a", caption: text },
      { kind: "location", latitude: roll(90), longitude: roll(180) },
      { kind: "contact", phone: "555 0199", own: roll(2) === 0, name: "Pat" },
      { kind: "other", name: "poll" },
      { kind: "reachable", reachable: roll(3) > 0 },
      { kind: "press", press: null },
    ],
    roll,
  );
}

/** Whose questions may come once more: they took something back themselves. */
const takesBack = ({ what }: Incoming) =>
  (what.kind === "press" &&
    /^(back|withdraw|reopen|came-back|undo)$/.test(what.press?.act ?? "")) ||
  (what.kind === "command" && what.name === "back") ||
  ("text" in what && what.text === "back");

/** Questions to the operator that came again although they had been answered in the same epoch. */
function askedTwice(id: string, events: readonly CaseEvent[], back: ReadonlySet<string>): string[] {
  let state = foldCase(id, []);
  const twice: string[] = [];
  const done = new Set<string>();
  for (const event of events) {
    const before = state;
    state = applyEvent(state, event);
    if (state.epoch !== before.epoch || back.has(event.update ?? "")) done.clear();
    if (event.type === "question.asked" && event.to === "operator") {
      const key = askingKey(event.asking);
      const open = before.open.operator;
      const isSame = open !== null && askingKey(open.asking) === key;
      if (!isSame && done.has(key)) twice.push(`${key} in ${state.epoch}`);
    }
    if (event.type === "question.passed" && event.why !== "back") done.add(askingKey(event.asking));
    if (event.type === "answer.given" && event.check !== undefined)
      done.add(`check:${event.check}`);
  }
  return twice;
}

class Yard {
  readonly shop: Awaited<ReturnType<typeof openOffice>>;
  readonly roll: Roll;
  readonly back = new Set<string>();
  /** Buttons that each chat was shown, the newest last. */
  readonly #presses = new Map<string, Press[]>();
  #count = 0;

  constructor(shop: Yard["shop"], roll: Roll) {
    this.shop = shop;
    this.roll = roll;
  }

  /** A button of this chat: mostly a new one; from the other phone of the same person an old one. */
  #press(chat: string): Press | null {
    const shown = this.#presses.get(chat) ?? [];
    const own = this.roll(3) > 0 ? shown.slice(-7) : shown;
    const others = [...this.#presses.values()].flat();
    if (this.roll(12) === 0 && others.length > 0) return pick(others, this.roll);
    return own.length === 0 ? null : pick(own, this.roll);
  }

  incoming(): Incoming {
    const from = pick(everybody, this.roll);
    const inGroup = this.roll(10) === 0;
    const press = this.roll(2) === 0 ? this.#press(inGroup ? GROUP : from) : null;
    const what = press === null ? content(this.roll) : ({ kind: "press", press } as const);
    this.#count += 1;
    const late = pick([0, 0, 0, MINUTE, 2 * DAY], this.roll);
    return {
      ...{ update: `m${this.#count}`, direct: !inGroup, chat: inGroup ? GROUP : from, what },
      ...{ sentAt: this.shop.now() - late, from: { id: from, name: `Person ${from}` } },
    };
  }

  /** Delivers it, and what follows from it. */
  async take(incoming: Incoming): Promise<readonly Outgoing[]> {
    if (takesBack(incoming)) this.back.add(incoming.update);
    await this.shop.receive(incoming);
    const said = await this.shop.posted();
    for (const { to, message } of said) {
      const buttons = message.buttons?.flat().map(({ press }) => press) ?? [];
      const shown = [...(this.#presses.get(to.chat) ?? []), ...buttons];
      this.#presses.set(to.chat, shown.slice(-60));
    }
    return said;
  }
}

/** Within the chat's limits, and about nobody's case but the reader's own, outside the shop. */
function isFit(yard: Yard, { to, message, language }: Outgoing): void {
  const isShop = shopMembers.some(({ chat }) => chat === to.chat);
  // Slips are long and much alike: some of them will do.
  if (message.lines.length === 0 || (isShop && yard.roll(5) > 0)) return;
  const { text, buttons } = speech.wording.render(message, language);
  if (message.file === undefined) expect(text, JSON.stringify(message)).not.toBe("");
  expect(text.length).toBeLessThanOrEqual(MOST_CHARACTERS);
  for (const { label } of buttons.flat()) expect(label).not.toBe("");
  if (isShop) return;
  const others = yard.shop.directory.cases({}).filter(({ operator }) => operator.id !== to.chat);
  const leaked = others.filter(({ id }) => new RegExp(`\\b${id}\\b`).test(text));
  expect(leaked.map(({ id }) => `${id} to ${to.chat}`)).toEqual([]);
}

async function reachesAPerson(yard: Yard, operator: string): Promise<void> {
  const open = yard.shop.directory.cases({ operator, open: true });
  if (open.length === 0) return;
  await yard.shop.say(operator, "I want to talk to a person");
  const said = await yard.shop.posted();
  const texts = said
    .filter(({ to }) => to.chat === operator)
    .map(({ message, language }) => speech.wording.render(message, language).text);
  expect(texts.join("\n")).toContain("555 0100");
}

async function mischief(roll: Roll, updates: number): Promise<void> {
  const shop = await openOffice(["en"], { next: whim, triage: () => standing });
  const yard = new Yard(shop, roll);
  for (let done = 0; done < updates; done += 1) {
    const incoming = yard.incoming();
    const said = await yard.take(incoming);
    for (const one of said) isFit(yard, one);
    if (roll(8) === 0) expect(await yard.take(incoming), JSON.stringify(incoming)).toEqual([]);
    await shop.wait(pick([0, 300, 5_000, MINUTE, MINUTE, 20 * MINUTE, DAY], roll));
  }
  for (const { id } of shop.directory.cases({})) {
    expect(askedTwice(id, await shop.events(id), yard.back), id).toEqual([]);
  }
  for (const operator of OPERATORS) await reachesAPerson(yard, operator);
}

describe("two operators with two phones each, a stranger, a group and the shop, all at once", () => {
  it.each([[5_000, 21]])(
    "lose nothing, count nothing twice, see nothing of each other (%i updates)",
    async (updates, seed) => {
      const roll = dice(seed);
      for (let done = 0; done < updates; done += UPDATES_A_SHOP) {
        await mischief(roll, UPDATES_A_SHOP);
      }
    },
    600_000,
  );
});
