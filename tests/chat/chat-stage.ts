import { afterEach } from "vitest";
import type { Received, Timers } from "../../src/cases/ports.ts";
import type { Chat } from "../../src/chat/bot.ts";
import { createChat } from "../../src/chat/bot.ts";
import { createLog } from "../../src/chat/log.ts";
import { createPressCodec } from "../../src/chat/press-codec.ts";
import type { Phrase } from "../../src/domain/effects.ts";
import type { Incoming } from "../../src/domain/incoming.ts";
import type { Wording } from "../../src/domain/rendered.ts";
import type { RehearsalOptions } from "../../src/rehearsal/server.ts";
import { openStage, TOKEN } from "../rehearsal/stage.ts";

export const realTimers: Timers = {
  now: () => Date.now(),
  after(milliseconds, run) {
    const timer = setTimeout(run, milliseconds);
    return () => clearTimeout(timer);
  },
};

const plain = (phrase: Phrase) =>
  "raw" in phrase ? phrase.raw : "key" in phrase ? phrase.key : phrase.know;

/** Words as they are given; headings in bold. */
export const plainWording: Wording = {
  phrase: (phrase, language) => `${plain(phrase)}/${language}`,
  render({ lines, buttons = [], offer, endOffer, file, place }) {
    const text = lines.map(({ say }) => plain(say)).join("\n");
    const [first] = lines;
    return {
      text,
      entities:
        first?.style === "heading"
          ? [{ type: "bold", offset: 0, length: plain(first.say).length }]
          : [],
      buttons: buttons.map((row) =>
        row.map(({ label, press }) => ({ label: plain(label), press })),
      ),
      ...(offer && { share: { kind: offer.share, label: plain(offer.label) } }),
      ...(endOffer === undefined ? {} : { endShare: endOffer }),
      ...(file && { file }),
      ...(place && { place }),
    };
  },
};

export const codec = createPressCodec("secret");

const chats: Chat[] = [];
afterEach(async () => {
  for (const chat of chats.splice(0)) await chat.stop();
});

/** A server, and the chat that talks to it with the unmodified client. */
export async function openChat(
  options: {
    server?: Partial<RehearsalOptions>;
    receive?: (incoming: Incoming) => Promise<Received>;
    timers?: Timers;
  } = {},
) {
  const stage = await openStage(options.server);
  const log: string[] = [];
  const got: Incoming[] = [];
  const timers = options.timers ?? realTimers;
  const open = () => {
    const chat = createChat({
      token: TOKEN,
      apiRoot: stage.server.url,
      wording: plainWording,
      codec,
      timers,
      log: createLog((line) => log.push(line), timers.now, [TOKEN]),
    });
    chats.push(chat);
    return chat;
  };
  const reception = {
    receive: async (incoming: Incoming) => {
      got.push(incoming);
      return (await options.receive?.(incoming)) ?? {};
    },
  };
  const chat = open();
  const { carrier } = chat;
  /** Starts receiving; resolves with what `run` ends with. */
  const run = async (which: Chat = chat) => {
    await which.identify();
    const ended = which.run(reception).then(
      () => null,
      (error: unknown) => error,
    );
    return { ended };
  };
  return { ...stage, chat, open, carrier, run, log, got };
}
