import { expect } from "vitest";
import type { CaseEvent } from "../../src/domain/case-events.ts";
import { foldCase } from "../../src/domain/fold-case.ts";
import type { ScriptLine } from "../../src/rehearsal/player.ts";
import type { FeedEvent } from "../../src/rehearsal/world/feed.ts";
import { Hand } from "./e2e-hand.ts";
import { people, type RoleName, Shop } from "./e2e-shop.ts";
import { GOOD_RESULTS } from "./hand-back.ts";

const roles: readonly RoleName[] = ["operator", "dispatcher", "technician"];

/** A message of the bot has come to this person; the bot does not know yet that it has. */
export const isPosted = (role: RoleName) => (event: FeedEvent) =>
  event.kind === "posted" && event.chatId === people[role].id;

/** Updates were handed out; the bot has not written anything down yet. */
export const isHandedOut = (event: FeedEvent) =>
  event.kind === "called" && event.method === "getUpdates";

/** A call under way: its people, and what has been seen of repeated messages so far. */
export class Play {
  readonly shop: Shop;
  readonly operator: Hand;
  readonly dispatcher: Hand;
  readonly technician: Hand;
  readonly #repeats = new Map<RoleName, number>();

  private constructor(shop: Shop, operator: readonly ScriptLine[]) {
    this.shop = shop;
    this.operator = new Hand(shop, shop.person("operator"), operator);
    this.dispatcher = new Hand(shop, shop.person("dispatcher"));
    this.technician = new Hand(shop, shop.person("technician"), [
      { press: "Done – it runs" },
      { press: "Yes, all of it" },
      ...GOOD_RESULTS.map((press) => ({ press })),
    ]);
  }

  /** Plays one call in a shop of its own. @param operator what the operator answers to what */
  static async call(
    home: string,
    operator: readonly ScriptLine[],
    play: (call: Play) => Promise<void>,
  ): Promise<void> {
    const shop = await Shop.open(home);
    try {
      await shop.seat();
      await play(new Play(shop, operator));
    } finally {
      await shop.close();
    }
  }

  /** Kills the program as soon as this happens, in the wake of what is done; starts it again. */
  async killedWhen(happens: (event: FeedEvent) => boolean, act: () => unknown): Promise<void> {
    const dead = this.shop.killWhen(happens);
    await act();
    await dead;
    await this.again();
  }

  /**
   * Kills the program over a message to the operator whose connection breaks, before or after the
   * server has carried it out; starts it again.
   */
  async killedOverMessage(how: "resetBefore" | "resetAfter", act: () => unknown): Promise<void> {
    const { server } = this.shop;
    const chatId = people.operator.id;
    server.faults.add({ kind: how }, { method: "sendMessage", chatId });
    const dead = this.shop.killWhen(
      (event) =>
        event.kind === "called" && event.method === "sendMessage" && event.chatId === chatId,
    );
    await act();
    await dead;
    expect(this.shop.theCase().outbox, "what was decided waits on disk").not.toEqual([]);
    await this.again();
  }

  async again(): Promise<void> {
    await this.shop.start();
    await this.shop.delivered();
    this.expectFewRepeats();
  }

  /** At most one message per chat has come again since this was asked last. */
  expectFewRepeats(): void {
    for (const role of roles) {
      const now = this.shop.repeats(role);
      const since = now - (this.#repeats.get(role) ?? 0);
      expect(since, `repeated to the ${role}`).toBeLessThanOrEqual(1);
      this.#repeats.set(role, now);
    }
  }

  async handOver(): Promise<void> {
    await this.dispatcher.press("I look after it");
    await this.dispatcher.press("Hand to a technician");
    await this.dispatcher.press("Ilse");
  }

  /** The case as it is on disk at the end, with the program stopped in order. */
  async finish() {
    await this.shop.delivered();
    this.expectFewRepeats();
    expect(await this.shop.stop()).toBe(0);
    const { id, events } = this.shop.theCase();
    expectNothingTwice(events);
    for (const role of roles) expectNothingLost(events, this[role], role);
    return { events, state: foldCase(id, events) };
  }
}

/** Everything that this person did left its trace, under an update of its own. */
function expectNothingLost(events: readonly CaseEvent[], hand: Hand, role: RoleName): void {
  const by = String(people[role].id);
  const updates = new Set(events.filter((one) => one.by === by).map((one) => one.update));
  expect(updates.size, `${role} did ${hand.did.join(" | ")}`).toBe(hand.did.length);
}

/** No answer, act, repair or step stands twice. */
function expectNothingTwice(events: readonly CaseEvent[]): void {
  const happened = events
    .filter((one) => one.type !== "question.asked")
    .map(({ at: _, ...rest }) => JSON.stringify(rest));
  expect(happened).toEqual([...new Set(happened)]);
  const answers = events.flatMap((one) => {
    if (one.type !== "answer.given") return [];
    const { observation, epoch, reporter } = one.report;
    return [`${observation} in ${epoch} by ${reporter}`];
  });
  expect(answers).toEqual([...new Set(answers)]);
}

/** What was said of an observation, in order. */
export const said = (events: readonly CaseEvent[], observation: string) =>
  events.flatMap((one) =>
    one.type === "answer.given" && one.report.observation === observation ? [one.report.said] : [],
  );

export const plainly = (state: string) => ({ kind: "states", weights: { [state]: 1 } });
