import { createRoomActs } from "./room-acts.ts";
import { createRoomFeed } from "./room-feed.ts";
import { createRoomRoute } from "./room-route.ts";
import type { RoomScenario } from "./room-scenario.ts";
import type { RehearsalServer } from "./server.ts";

export interface RoomOptions {
  readonly scenario: RoomScenario;
  /** Plays the demonstration call through all phones. Missing: the room offers none. */
  readonly play?: () => Promise<void>;
}

/**
 * Opens the room: a page on the server's own address with every phone of the scenario, and the
 * routes by which the page sees and acts. Loopback only; what changes something must come from the
 * page itself.
 */
export function openRoom(server: RehearsalServer, options: RoomOptions): void {
  const { scenario } = options;
  // A phone is there from the start, so that its owner can be written to once they press Start.
  for (const { person } of scenario.phones) server.person(person);
  server.handle(
    createRoomRoute({
      scenario,
      server,
      feed: createRoomFeed(server, scenario),
      acts: createRoomActs(server, scenario),
      play: options.play,
    }),
  );
}
