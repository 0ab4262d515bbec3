import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { CaseEvent } from "../../src/domain/case-events.ts";
import { samplePicture } from "../../src/rehearsal/people/sample-picture.ts";
import { Hand } from "../helpers/e2e-hand.ts";
import { killPrograms, programHome, removeFolder } from "../helpers/e2e-program.ts";
import { Shop, TOKEN } from "../helpers/e2e-shop.ts";

const MOST_MILLISECONDS = 120_000;
/** A word that stands in what people write here and nowhere else. */
const OWN_WORD = "quillwort";

let home: string;
let shop: Shop;
beforeAll(async () => {
  home = programHome();
  shop = await Shop.open(home);
  await shop.seat();
}, MOST_MILLISECONDS);
afterAll(async () => {
  await shop?.close();
  killPrograms();
  removeFolder(home);
});

const eventsOf = (hand: Hand): readonly CaseEvent[] => shop.caseOf(hand.person)?.events ?? [];
const count = (hand: Hand, type: CaseEvent["type"]) =>
  eventsOf(hand).filter((event) => event.type === type).length;
const SYMPTOM = "What exactly happens when you turn the key";

/** Somebody whose interview has come to the question what the key does. */
async function atSymptom(name: string): Promise<Hand> {
  const hand = new Hand(shop, shop.stranger(name));
  hand.say("My petrol ride-on mower won't start");
  await hand.press("All is safe");
  await hand.sees(SYMPTOM);
  return hand;
}

/** The interview is where it was: an answer to the question that was open still counts. */
async function expectGoesOn(hand: Hand): Promise<void> {
  const before = count(hand, "question.asked");
  await hand.press("The engine does not turn");
  await hand.press("One click");
  await shop.onDisk("the answer and the next question", () => {
    const told = eventsOf(hand).some(
      (event) => event.type === "answer.given" && event.report.observation === "on-start",
    );
    return told && count(hand, "question.asked") > before;
  });
}

/** Each comes in the middle of an interview and must neither end it nor be taken for an answer. */
const oddities: readonly {
  readonly name: string;
  readonly send: (hand: Hand) => void;
  readonly answer: string;
  readonly kept?: CaseEvent["type"];
}[] = [
  {
    name: "an unknown command",
    send: ({ person }) => person.say("/frobnicate"),
    answer: "I don't know that command",
  },
  {
    name: "a sticker",
    send: ({ person }) => person.sendSticker("🚜"),
    answer: "kept that for the shop",
    kept: "file.received",
  },
  {
    name: "a voice note",
    send: ({ person }) => person.sendVoice(Buffer.from("OggS"), { durationSeconds: 4 }),
    answer: "kept that for the shop",
    kept: "file.received",
  },
  {
    name: "a place on the map",
    send: ({ person }) => person.sendLocation({ latitude: 53.1, longitude: 9.7 }),
    answer: "I have the place",
    kept: "where.told",
  },
  {
    name: "somebody else's card",
    send: ({ person }) => person.sendContact({ phone: "+15550999", firstName: "Ole", userId: 77 }),
    answer: "another person's card",
  },
  {
    name: "the own number",
    send: ({ person }) => person.sendOwnContact("+15550123"),
    answer: "I have your number",
    kept: "phone.told",
  },
  {
    name: "words that mean nothing here",
    send: ({ person }) => person.say(`the ${OWN_WORD} grows by the pond`),
    answer: "I did not understand that",
    kept: "words.said",
  },
  {
    name: "a reading that cannot be",
    send: ({ person }) => person.say("battery at rest 48 V"),
    answer: "cannot be right here",
    kept: "words.said",
  },
  {
    name: "a number with the wrong unit",
    send: ({ person }) => person.say("battery at rest 12.4 bar"),
    answer: "I did not understand that",
    kept: "words.said",
  },
];

describe("what nobody asked for", () => {
  it.concurrent.each(oddities)(
    "$name gets a kind answer, and the interview goes on",
    async ({ name, send, answer, kept }) => {
      const hand = await atSymptom(name);
      const before = kept === undefined ? 0 : count(hand, kept);
      const given = count(hand, "answer.given");
      send(hand);
      await hand.sees(answer);
      expect(count(hand, "answer.given")).toBe(given);
      if (kept !== undefined) expect(count(hand, kept)).toBe(before + 1);
      await expectGoesOn(hand);
    },
    MOST_MILLISECONDS,
  );

  it.concurrent(
    "a text of ten thousand characters is kept whole",
    async () => {
      const hand = await atSymptom("Long");
      const text = `${OWN_WORD} `.repeat(1_000).trim();
      hand.say(text);
      await hand.sees("I did not understand that");
      const said = eventsOf(hand).findLast((event) => event.type === "words.said");
      expect(said).toMatchObject({ text });
      await expectGoesOn(hand);
    },
    MOST_MILLISECONDS,
  );

  it.concurrent(
    "an album is kept picture by picture and thanked for once",
    async () => {
      const hand = await atSymptom("Album");
      hand.person.sendAlbum([10, 20, 30].map((shade) => ({ photo: samplePicture({ shade }) })));
      await shop.onDisk("three photos", () => count(hand, "file.received") === 3);
      await hand.sees("kept 3 photos");
      const thanks = hand.transcript.filter(({ text }) => text.includes("for the shop"));
      expect(thanks).toHaveLength(1);
      await expectGoesOn(hand);
    },
    MOST_MILLISECONDS,
  );

  it.concurrent(
    "an edited message is no new answer, and is kept",
    async () => {
      const hand = new Hand(shop, shop.stranger("Edit"));
      const { message_id: id } = hand.person.say("My petrol ride-on mower won't start");
      await hand.press("All is safe");
      await hand.sees(SYMPTOM);
      hand.person.edit(id, "My petrol ride-on mower won't start, fast clicking");
      await hand.sees("kept the changed message");
      expect(count(hand, "answer.given")).toBe(0);
      expect(count(hand, "note.added")).toBe(1);
      await expectGoesOn(hand);
    },
    MOST_MILLISECONDS,
  );
});

describe("buttons that are not to be believed", () => {
  it.concurrent(
    "a forged one, and one of somebody else's case",
    async () => {
      const [own, other] = await Promise.all([atSymptom("Forger"), atSymptom("Owner")]);
      const data = other.transcript.at(-1)?.buttons[0]?.[0]?.data ?? "";
      for (const forged of ["0.X.answer.nothing", data]) {
        own.person.forge(forged);
        await own.notices("not yours to press");
      }
      await expectGoesOn(own);
      await expectGoesOn(other);
    },
    MOST_MILLISECONDS,
  );

  it.concurrent(
    "one whose case was closed since",
    async () => {
      const hand = await atSymptom("Stopper");
      const data = hand.transcript.at(-1)?.buttons[0]?.[0]?.data ?? "";
      hand.say("stop");
      await hand.sees("is closed");
      const events = eventsOf(hand).length;
      hand.person.forge(data);
      await shop.server.until(
        () => hand.person.waitingButtons().length === 0,
        "the press to be answered",
      );
      expect(eventsOf(hand)).toHaveLength(events);
    },
    MOST_MILLISECONDS,
  );
});

describe("the same thing twice", () => {
  it.concurrent(
    "a press that the app sends again under another number counts once",
    async () => {
      const hand = await atSymptom("Again");
      await hand.press("The engine does not turn");
      await hand.press("One click");
      hand.person.pressAgain();
      await hand.notices("closed");
      expect(count(hand, "answer.given")).toBe(1);
    },
    MOST_MILLISECONDS,
  );

  it.concurrent(
    "of two phones that answer one question differently, the first counts",
    async () => {
      const hand = await atSymptom("Two");
      await hand.press("The engine does not turn");
      await hand.press(/^One click$/);
      hand.person.press("Nothing at all");
      await hand.notices("closed");
      const answers = eventsOf(hand).filter((event) => event.type === "answer.given");
      expect(answers).toMatchObject([{ report: { said: { weights: { "one-click": 1 } } } }]);
    },
    MOST_MILLISECONDS,
  );

  it.concurrent(
    "somebody who blocks the bot is written to again once they come back",
    async () => {
      const hand = await atSymptom("Blocker");
      const file = join(shop.data, "people");
      const reachable = () =>
        readdirSync(file)
          .map((name): unknown => JSON.parse(readFileSync(join(file, name), "utf8")))
          .some(
            (one) =>
              typeof one === "object" &&
              one !== null &&
              "name" in one &&
              one.name === "Blocker" &&
              "reachable" in one &&
              one.reachable === true,
          );
      hand.person.block();
      await shop.onDisk("that nobody can write to them", () => !reachable());
      hand.person.unblock();
      await shop.onDisk("that they can be written to", reachable);
      await expectGoesOn(hand);
    },
    MOST_MILLISECONDS,
  );
});

describe("while nobody looked", () => {
  it(
    "takes an update once that comes again after a restart, and a button hours later",
    async () => {
      const hand = await atSymptom("Later");
      const old = hand.transcript.at(-1)?.buttons[0]?.[0]?.data ?? "";
      await hand.press("The engine does not turn");
      await hand.press("One click");
      hand.say(`there is ${OWN_WORD} in the wheel`);
      await hand.sees("I did not understand that");
      await shop.delivered();
      // That an old button was pressed may only put the open question once more.
      const told = () => eventsOf(hand).filter(({ type }) => type !== "question.repeated");
      const before = told();
      shop.server.repeatUpdate();
      await shop.server.settled();
      expect(told()).toEqual(before);
      await shop.kill();
      shop.server.repeatUpdate();
      shop.wait(5 * 60 * 60 * 1000);
      await shop.start();
      await shop.delivered();
      expect(told()).toEqual(before);
      hand.person.forge(old);
      await hand.notices("closed");
      expect(told()).toEqual(before);
      const next = hand.transcript.findLast(({ buttons }) => buttons.length > 0);
      const label = next?.buttons[0]?.[0]?.label ?? "";
      hand.person.press(label, { isInaccessible: true });
      await shop.onDisk("what was pressed hours later", () => told().length > before.length);
    },
    MOST_MILLISECONDS,
  );

  it("writes neither the token nor what people said into its log", async () => {
    const printed = shop.printed();
    expect(printed).not.toContain(TOKEN);
    expect(printed).not.toContain(OWN_WORD);
    expect(printed).not.toContain("555");
  });
});
