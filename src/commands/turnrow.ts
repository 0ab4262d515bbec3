import { join } from "node:path";
import { createChangeDocument } from "../cases/change-document.ts";
import { createCommit } from "../cases/commit.ts";
import { openDirectory } from "../cases/directory.ts";
import { earlierCases } from "../cases/earlier-of-machine.ts";
import { createEngineRoom } from "../cases/engine-room.ts";
import { createExport } from "../cases/export-person.ts";
import { createFollow, type LookAtPhoto } from "../cases/follow.ts";
import { createForget, sweepForgotten } from "../cases/forget-person.ts";
import { foundShop } from "../cases/found-shop.ts";
import { createLearning } from "../cases/learning.ts";
import { createLobby } from "../cases/lobby.ts";
import { createMoveChat } from "../cases/move-chat.ts";
import { createOffice } from "../cases/office.ts";
import type { Chance, Timers } from "../cases/ports.ts";
import { startPostman } from "../cases/postman.ts";
import { createReception } from "../cases/reception.ts";
import { type BotOptions, type Chat, createChat } from "../chat/bot.ts";
import type { Log } from "../chat/log.ts";
import { createPressCodec } from "../chat/press-codec.ts";
import { chooseCircuits } from "../circuit/choose-circuit.ts";
import type { ShopSettings } from "../domain/settings.ts";
import type { StockedPart } from "../domain/stock.ts";
import { relabelled } from "../knowledge/circuit-labels.ts";
import { loadUrgency, urgencyOf } from "../knowledge/urgency.ts";
import { createPrinter } from "../paper/print-paper.ts";
import { takeInstanceLock } from "../store/instance-lock.ts";
import { openLowdbStore } from "../store/lowdb-store.ts";
import { createQuarantine } from "../store/quarantine.ts";
import { phrase } from "../talk/decision.ts";
import type { Desk } from "../talk/desk.ts";
import { byRoad, placeKnown } from "../talk/distance.ts";
import { realChance } from "./chance.ts";
import { noBanks, openBanks } from "./circuit-banks.ts";
import { engineOptions, withLearning } from "./engine-options.ts";
import { introductionOf } from "./introduction.ts";
import { withShopRates } from "./shop-settings.ts";
import { openSpeech } from "./speech.ts";
import type { Workshop } from "./workshop.ts";

/** Waiting messages are given this long at the end; what is left goes out at the next start. */
const LAST_POST_MS = 5_000;

export interface TurnrowOptions {
  readonly root: string;
  readonly dataFolder: string;
  readonly token: string;
  readonly apiRoot?: string;
  readonly settings: ShopSettings;
  /** Whether starting circuits are simulated. */
  readonly simulate: boolean;
  readonly workshop: Workshop;
  /** What the shop keeps of each part; absent: not known. */
  readonly stock?: readonly StockedPart[];
  readonly log: Log;
  /** How fast messages may follow each other; the chat service's own limits when missing. */
  readonly pace?: BotOptions["pace"];
  /** The time by which cases go; this computer's when missing. */
  readonly timers?: Timers;
  /** Case numbers, tokens and seeds; real chance when missing. */
  readonly chance?: Chance;
}

/** The whole program behind one bot, running. */
export interface Turnrow {
  /** Single-use link for the first owner; null once the shop has one. */
  readonly ownerLink: string | null;
  readonly ownerToken: string | null;
  /** Receives until stopped; rejects with a sentence that says what to do. */
  readonly running: Promise<void>;
  stop(): Promise<void>;
}

export const realTimers: Timers = {
  now: Date.now,
  after(milliseconds, run) {
    const timer = setTimeout(run, milliseconds);
    return () => clearTimeout(timer);
  },
};

const pause = (milliseconds: number) =>
  new Promise<void>((resolve) => void realTimers.after(milliseconds, resolve));

/** Words of the knowledge that button data may be made of. */
function pressWords({ knowledge }: Workshop): string[] {
  const states = [...knowledge.observations.values()].flatMap((one) =>
    one.states.map((state) => state.id),
  );
  return [
    ...new Set([
      ...states,
      ...knowledge.observations.keys(),
      ...knowledge.faults.keys(),
      ...knowledge.redFlags.keys(),
      ...knowledge.checks.keys(),
      ...[...knowledge.checks.values()].flatMap((check) => check.menu.map((head) => head.id)),
      ...knowledge.acts.keys(),
      ...knowledge.remedies.keys(),
      ...knowledge.machines.keys(),
      ...knowledge.parts.keys(),
    ]),
  ];
}

/** Opens the store, wires everything together and begins to receive. */
export async function startTurnrow(options: TurnrowOptions): Promise<Turnrow> {
  const { settings, workshop, log, timers = realTimers, chance = realChance } = options;
  const { reader } = workshop;
  const knowledge = withShopRates(workshop.knowledge, settings);
  const lock = takeInstanceLock(options.dataFolder);
  const store = await openLowdbStore(options.dataFolder, {
    now: timers.now,
    onDamage: ({ kind, why }) => log("damaged-document-set-aside", { reason: `${kind}: ${why}` }),
  });
  const directory = await openDirectory(store);
  await sweepForgotten(store, directory);
  const change = createChangeDocument(store, directory);
  const commit = createCommit({ change, directory, clock: timers });
  const founded = await foundShop({ directory, commit, chance });
  const speech = openSpeech(options.root, knowledge, {
    timeZone: settings.timeZone,
    report: (trouble) => log("wording", { reason: JSON.stringify(trouble) }),
  });
  const codec = createPressCodec(founded.secret, pressWords(workshop));
  const chat: Chat = createChat({
    token: options.token,
    ...(options.apiRoot === undefined ? {} : { apiRoot: options.apiRoot }),
    wording: speech.wording,
    codec,
    // The line to the chat service is watched by the time that really passes.
    timers: realTimers,
    log,
    ...(options.pace === undefined ? {} : { pace: options.pace }),
    print: createPrinter((machine, language) => {
      const circuit = chooseCircuits(workshop.circuits.values(), machine)[0]?.circuit;
      return circuit && relabelled(circuit, (key) => speech.word(key, language));
    }),
  });
  const bot = await chat.identify().catch((error: unknown) => {
    lock.release();
    throw error;
  });
  const link = (token: string) => `https://t.me/${bot.username}?start=${token}`;
  const report = (error: unknown) => log("circuit-bank", { error });
  const banks = options.simulate ? openBanks(options.root, workshop, report) : noBanks;
  const learning = createLearning({
    knowledge,
    figures: () => directory.cases({}).map((one) => one.figures),
    revision: directory.closedRevision,
    comebackDays: settings.comebackDays,
  });
  const flags = new Set(knowledge.redFlags.keys());
  const rules = await loadUrgency(join(options.root, "flows"), flags);
  if (!rules.ok) log("urgency-rules", { reason: rules.problems.map(({ says }) => says).join(" ") });
  const engine = createEngineRoom({
    knowledge,
    options: withLearning(engineOptions(banks, settings), learning),
    travelMinutes: (state) => {
      const there = placeKnown(state.where);
      const { place } = settings;
      return place === undefined || there === null
        ? undefined
        : byRoad(place, there, settings).minutes;
    },
  });
  const languages = settings.languages.filter((one) => speech.languages.includes(one));
  const desk = (now: number): Desk => {
    const shop = directory.shop();
    return {
      knowledge,
      shop: settings,
      members: directory.members(),
      ...(shop?.counter === undefined ? {} : { counter: shop.counter }),
      ...(shop?.duty === undefined ? {} : { duty: shop.duty }),
      ...(options.stock === undefined ? {} : { stock: options.stock }),
      others: () => directory.cases({ open: true }),
      earlier: (state) => earlierCases(state, directory),
      now,
      next: engine.next,
      triage: engine.triage,
      expected: engine.expected,
      words: speech.wording.phrase,
      ...(rules.ok ? { urgency: (facts) => urgencyOf(rules.value, facts) } : {}),
      read: (text, expecting) =>
        reader.read(text, {
          ...{ languages, now },
          ...(expecting === undefined ? {} : { expecting: { observation: expecting } }),
        }),
    };
  };
  const look: LookAtPhoto = async (file) => {
    const got = await chat.download(file);
    // What opens pictures is large; a start does not wait for it.
    if (got.ok) return (await import("../paper/judge-photo.ts")).judgePhoto(got.bytes);
    return got.why === "trouble" ? null : "not-checked";
  };
  const forget = createForget({ directory, commit, change });
  const lobby = createLobby({
    ...{ directory, commit, desk, languages, link, forget },
    exportOf: createExport({ directory, commit }),
    chance,
  });
  const reception = createReception({
    ...{ directory, commit },
    timers,
    quarantine: createQuarantine(join(options.dataFolder, "quarantine")),
    handle: createOffice({
      link,
      directory,
      commit,
      reader,
      lobby,
      desk,
      languages,
      chance,
    }),
    apology: phrase("apology"),
    isStorageTrouble: (error) => error instanceof Error && "code" in error && "syscall" in error,
    report: (error) => log("update-failed", { error }),
  });
  const postman = startPostman({
    ...{ store, change, directory },
    carrier: chat.carrier,
    moveChat: createMoveChat(store, change),
    timers,
    follow: createFollow({ commit, desk, look }),
    notify: async (notice) => log("delivery", { reason: notice.what }),
  });
  await chat.introduce(introductionOf(speech, languages, directory.members()));
  const running = chat.run(reception);
  return {
    ownerToken: founded.ownerToken,
    ownerLink: founded.ownerToken === null ? null : link(founded.ownerToken),
    running,
    async stop() {
      await Promise.race([chat.stop(), pause(LAST_POST_MS)]);
      await postman.drain(LAST_POST_MS);
      await postman.stop();
      lock.release();
    },
  };
}
