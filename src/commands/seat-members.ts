import type { Person } from "../rehearsal/people/person.ts";
import type { RehearsalServer } from "../rehearsal/server.ts";
import type { SeenMessage } from "../rehearsal/view/seen-message.ts";
import type { Scenario } from "./scenario.ts";

const PATIENCE = { timeoutMs: 20_000 };
const LINK = /[?&]start=([A-Za-z0-9_-]+)/;

const tokenIn = (messages: readonly SeenMessage[]): string | undefined =>
  messages.map((message) => LINK.exec(message.text)?.[1]).findLast((token) => token !== undefined);

const personOf = (server: RehearsalServer, phone: { id: number; name: string }): Person =>
  server.person({ id: phone.id, name: phone.name });

/**
 * Follows the links of the shop as its people would: the dispatcher takes the owner's link, invites
 * the technician, and the technician takes that link.
 */
export async function seatMembers(
  server: RehearsalServer,
  scenario: Scenario,
  shop: { readonly ownerToken: string | null },
): Promise<void> {
  if (shop.ownerToken === null) return;
  const { dispatcher, technician } = scenario.phones;
  const owner = personOf(server, dispatcher);
  owner.start(shop.ownerToken);
  await server.waitFor(dispatcher.id, (seen) => seen.some((one) => one.from.isBot), PATIENCE);
  owner.say("/invite");
  const asked = await server.waitFor(
    dispatcher.id,
    (seen) => seen.some((one) => one.buttons.length > 1),
    PATIENCE,
  );
  const choice = asked.findLast((one) => one.buttons.length > 1);
  owner.press({ row: 1, column: 0 }, choice === undefined ? {} : { messageId: choice.id });
  const linked = await server.waitFor(
    dispatcher.id,
    (seen) => tokenIn(seen.filter((one) => one.from.isBot)) !== undefined,
    PATIENCE,
  );
  const token = tokenIn(linked.filter((one) => one.from.isBot));
  personOf(server, technician).start(token);
  await server.waitFor(technician.id, (seen) => seen.some((one) => one.from.isBot), PATIENCE);
}
