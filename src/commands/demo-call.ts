import { samplePicture } from "../rehearsal/people/sample-picture.ts";
import { newsKey, openMessage, playOnce } from "../rehearsal/player.ts";
import type { RehearsalServer } from "../rehearsal/server.ts";
import type { SeenMessage } from "../rehearsal/view/seen-message.ts";
import type { Scenario } from "./scenario.ts";

/** More turns than any call takes; reaching it ends the play. */
const MOST_TURNS = 60;
const PATIENCE = { timeoutMs: 20_000 };

type Role = keyof Scenario["phones"];

/** Who is on turn: the operator until the interview is done, then the shop, then the technician. */
const order: readonly Role[] = ["operator", "dispatcher", "technician"];

/**
 * Plays the scenario's call on the phones of the room, one turn at a time, as fast as the program
 * answers. It presses and types like people do, so it shows whatever the program really asks.
 * @param patience how long nothing may come before the call counts as over
 */
export async function playCall(
  server: RehearsalServer,
  scenario: Scenario,
  patience = PATIENCE,
): Promise<void> {
  const { call, phones } = scenario;
  const picture = samplePicture({ shade: 150 });
  server.person({ id: phones.operator.id, name: phones.operator.name }).say(call.opening);
  const looked = new Set<string>();
  const news = () => order.some((role) => newest(role) !== null);
  for (let turn = 0; turn < MOST_TURNS; turn += 1) {
    // Messages are paced; what has not come within this time does not come any more.
    const came = await server.until(news, "something to answer", patience).then(
      () => true,
      () => false,
    );
    if (!came) return;
    await server.settled(patience);
    order.some(act);
  }

  function newest(role: Role): SeenMessage | null {
    const open = openMessage(server.transcript(phones[role].id));
    return open === undefined || looked.has(keyOf(role, open)) ? null : open;
  }

  /** @returns true where this person did something */
  function act(role: Role): boolean {
    const open = newest(role);
    if (open === null) return false;
    looked.add(keyOf(role, open));
    const { id, name } = phones[role];
    const script = {
      lines: call[role],
      fallback: { labels: role === "operator" ? call.fallback : [] },
      picture,
    };
    return playOnce(server.person({ id, name }), [open], script) !== null;
  }
}

const keyOf = (role: Role, message: SeenMessage) => `${role} ${newsKey(message)}`;
