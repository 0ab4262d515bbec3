import { drawSamplePhotos } from "../paper/sample-photos.ts";
import { openRoom } from "../rehearsal/room.ts";
import type { RoomPicture, RoomScenario } from "../rehearsal/room-scenario.ts";
import { createRehearsalServer, type RehearsalServer } from "../rehearsal/server.ts";
import { playCall } from "./demo-call.ts";
import { languageNames } from "./language-names.ts";
import type { Scenario } from "./scenario.ts";

/** Only what cannot be a real token is accepted by the local server. */
export const REHEARSAL_TOKEN = "1:rehearsal-room-on-this-computer";

function roomOf(
  scenario: Scenario,
  languages: readonly string[],
  pictures: readonly RoomPicture[],
): RoomScenario {
  const phones = Object.entries(scenario.phones).map(([id, phone]) => ({
    id,
    role: phone.role,
    person: { id: phone.id, name: phone.name, language: languages[0] ?? "en" },
    about: phone.about,
    phoneNumber: phone.phoneNumber,
    place: phone.place,
    lines: phone.lines,
  }));
  return {
    title: scenario.title,
    about: scenario.about,
    phones,
    languages: languages.map((tag) => ({ tag, name: languageNames(tag) })),
    pictures,
  };
}

/** The local server with its page; the program then talks to it as to the real service. */
export async function openRehearsal(
  scenario: Scenario,
  options: { readonly port: number; readonly languages: readonly string[] },
): Promise<RehearsalServer> {
  const server = createRehearsalServer({
    token: REHEARSAL_TOKEN,
    port: options.port,
    botName: "Turnrow",
    botUsername: "turnrow_rehearsal_bot",
  });
  openRoom(server, {
    scenario: roomOf(scenario, options.languages, await drawSamplePhotos()),
    play: () => playCall(server, scenario),
  });
  await server.start();
  return server;
}
