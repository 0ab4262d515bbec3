import type { Person } from "./people/person.ts";
import { RehearsalError } from "./people/speaker.ts";
import type { RoomPhone, RoomScenario } from "./room-scenario.ts";
import type { RehearsalServer } from "./server.ts";

/** What the page asked for, as it came: nothing in it is believed before it is looked at. */
export type Wish = Readonly<Record<string, unknown>>;

/** Things a person can do with their phone. Each throws a RehearsalError with a plain sentence. */
export interface RoomActs {
  /** @returns false where there is no such act */
  perform(phone: RoomPhone, act: string, wish: Wish): boolean;
  /** A picture of the person's own. */
  sendPhoto(phone: RoomPhone, picture: Buffer): void;
}

/** What the server says of a reply key that wants to know the place. */
const WANTS_PLACE = /asks for a place/;

export function createRoomActs(server: RehearsalServer, scenario: RoomScenario): RoomActs {
  const personOf = (phone: RoomPhone) => server.person(phone.person);
  const acts: Readonly<Record<string, (person: Person, wish: Wish, phone: RoomPhone) => void>> = {
    start: (person, wish) => {
      const payload = wish["payload"];
      person.start(payload === undefined || payload === "" ? undefined : textOf(payload));
    },
    say: (person, wish) => void person.say(textOf(wish["text"])),
    press: (person, wish) =>
      person.press(
        { row: numberOf(wish["row"]), column: numberOf(wish["column"]) },
        { messageId: numberOf(wish["message"]) },
      ),
    key: (person, wish, phone) => pressKey(person, textOf(wish["label"]), phone),
    picture: (person, wish) => {
      const picture = scenario.pictures.find(({ id }) => id === wish["picture"]);
      if (picture === undefined) throw new RehearsalError("There is no such picture.");
      person.sendPhoto(Buffer.from(picture.bytes));
    },
    place: (person, _wish, phone) => void person.sendLocation(phone.place),
    number: (person, _wish, phone) => void person.sendOwnContact(phone.phoneNumber),
    language: (person, wish) => setLanguage(person, textOf(wish["tag"])),
  };

  function setLanguage(person: Person, tag: string): void {
    if (!scenario.languages.some((language) => language.tag === tag)) {
      throw new RehearsalError(`The room has no language "${tag}".`);
    }
    // The app tells its language with every message, so the next one carries it.
    person.user.language_code = tag;
  }

  return {
    perform: (phone, name, wish) => {
      const act = Object.hasOwn(acts, name) ? acts[name] : undefined;
      act?.(personOf(phone), wish, phone);
      return act !== undefined;
    },
    sendPhoto: (phone, picture) => void personOf(phone).sendPhoto(picture),
  };
}

function pressKey(person: Person, label: string, phone: RoomPhone): void {
  try {
    person.press(label);
  } catch (error) {
    if (!(error instanceof RehearsalError && WANTS_PLACE.test(error.message))) throw error;
    person.sendLocation(phone.place);
  }
}

function textOf(value: unknown): string {
  if (typeof value !== "string" || value.trim() === "") {
    throw new RehearsalError("There is nothing to send: the text is empty.");
  }
  return value;
}

function numberOf(value: unknown): number {
  if (typeof value !== "number" || !Number.isInteger(value)) {
    throw new RehearsalError("The room expected a whole number.");
  }
  return value;
}
