import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join, resolve } from "node:path";
import { realChance } from "../../src/commands/chance.ts";
import { openSpeech, type Speech } from "../../src/commands/speech.ts";
import { startTurnrow, type Turnrow } from "../../src/commands/turnrow.ts";
import { openWorkshop, type Workshop } from "../../src/commands/workshop.ts";
import type { Phrase } from "../../src/domain/effects.ts";
import { wordKey } from "../../src/domain/knowledge.ts";
import { ShopSettings } from "../../src/domain/settings.ts";
import { expectedWords } from "../../src/knowledge/locale-words.ts";
import { LIMITS_WITHOUT_PAUSES } from "../../src/rehearsal/limits.ts";
import type { Person } from "../../src/rehearsal/people/person.ts";
import { createRehearsalServer } from "../../src/rehearsal/server.ts";
import { freshFolder, removeFolder } from "./e2e-program.ts";
import { createFakeTimers } from "./fake-timers.ts";
import { pseudoMessages, pseudoWords } from "./pseudo-ftl.ts";

const TOKEN = `1:${"rehearsal-".repeat(3)}operators`;
/** Real time: the machine may be busy. */
const PATIENCE = { timeoutMs: 300_000, quietMs: 10 };
const ROUND_MS = 30_000;
/** More questions than this no call has. */
const MOST_ROUNDS = 40;

/** Stands at the end of a label that is too long for a button. */
const CUT = "…";

/** A made-up language, under a tag of two letters as an app would send it. */
export const MADE_UP = "ar";

/** A home with the shipped languages and one that is made up: right to left and 40 % longer. */
function homeWithMadeUp(workshop: Workshop): string {
  const home = freshFolder("languages");
  symlinkSync(resolve("flows"), join(home, "flows"), "junction");
  cpSync("locales", join(home, "locales"), { recursive: true });
  const folder = join(home, "locales", MADE_UP);
  const strange = { rightToLeft: true, longer: 0.4 };
  const english = (name: string) => readFileSync(join("locales/en", name), "utf8");
  const own = `language-${MADE_UP} = ${MADE_UP}\n`;
  for (const name of readdirSync(join(home, "locales"))) {
    const file = join(home, "locales", name, "chat.ftl");
    if (existsSync(file)) writeFileSync(file, `${own}${readFileSync(file, "utf8")}`);
  }
  mkdirSync(folder);
  writeFileSync(join(folder, "chat.ftl"), own + pseudoMessages(english("chat.ftl"), strange));
  writeFileSync(join(folder, "units.ftl"), english("units.ftl"));
  const words = expectedWords(workshop.knowledge);
  writeFileSync(join(folder, "knowledge.ftl"), pseudoWords(words, strange));
  return home;
}

/** How somebody answers: by pressing what is offered, or by typing its words. */
export type Manner = "buttons" | "text";

export interface Caller {
  readonly language: string;
  readonly manner: Manner;
  /** The state of `on-start` they have, or of another observation, as `observation.state`. */
  readonly complaint: string;
}

/** One call, seen from outside. */
export interface Called extends Caller {
  readonly person: Person;
  /** The case's number. */
  readonly id: string;
  /** What the bot wrote, as it stands in the chat at the end. */
  readonly texts: readonly string[];
  readonly ended: boolean;
  readonly messages: number;
  /** The case as it stands on disk. */
  readonly events: readonly Readonly<Record<string, unknown>>[];
}

/** Words by which this caller answers, those they would rather say first. */
function wishes({ complaint, language }: Caller, speech: Speech, { knowledge }: Workshop) {
  const [observation = "", state = ""] = complaint.split(".");
  const heads = [...knowledge.checks.values()].flatMap((check) =>
    check.yields !== observation
      ? []
      : check.menu
          .filter(({ states }) => states.includes(state))
          .map(({ id }): Phrase => ({ know: wordKey("menu", `${check.id}.${id}`) })),
  );
  const say = (key: string): Phrase => ({ key });
  const told = observation === "on-start" ? [] : [{ know: wordKey("state", "on-start.slow") }];
  const turnsSlowly = [...knowledge.checks.values()].flatMap(({ id, menu }) =>
    menu
      .filter(({ states }) => told.length > 0 && states.includes("slow"))
      .map((head): Phrase => ({ know: wordKey("menu", `${id}.${head.id}`) })),
  );
  // Two answers that are one word in English may be two in another language.
  const unchanged = [...knowledge.observations.values()]
    .filter(({ states }) => states.some(({ id }) => id === "no-change"))
    .map(({ id }): Phrase => ({ know: wordKey("state", `${id}.no-change`) }));
  const phrases: Phrase[] = [
    say("answer-all-clear"),
    say("answer-safe-now"),
    { know: wordKey("machine", "ride-on-mower") },
    say("fuel-petrol"),
    { know: wordKey("state", complaint) },
    ...heads,
    ...told,
    ...turnsSlowly,
    { know: wordKey("state", "at-machine.yes") },
    say("outcome-no-change"),
    ...unchanged,
    say("equipment-none"),
    say("urgency-normal"),
    say("answer-dont-know"),
    say("answer-skip"),
    say("answer-cannot"),
  ];
  return phrases.map((phrase) => speech.wording.phrase(phrase, language));
}

/** Plays all these calls side by side, through the real client over HTTP, in one program. */
export async function playCalls(callers: readonly Caller[]) {
  const opened = await openWorkshop(".");
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  const workshop = opened.value;
  const home = homeWithMadeUp(workshop);
  const data = freshFolder("operators");
  const timers = createFakeTimers(Date.UTC(2026, 2, 2, 8));
  const server = createRehearsalServer({
    ...{ token: TOKEN, clock: timers.now, limits: LIMITS_WITHOUT_PAUSES },
  });
  const logged: string[] = [];
  await server.start();
  const languages = [...new Set(callers.map((caller) => caller.language))];
  const turnrow: Turnrow = await startTurnrow({
    ...{ root: home, dataFolder: data, token: TOKEN, apiRoot: server.url, workshop, timers },
    settings: ShopSettings.parse({ name: "Day", phone: "555", emergency: "112", languages }),
    simulate: false,
    log: (what, facts) => void logged.push(`${what} ${facts?.reason ?? ""}`),
    pace: { limits: () => [], overall: [] },
    // The engine remembers what it thought; callers who say the same shall not make it think anew.
    chance: { ...realChance, seed: () => 7 },
  });
  turnrow.running.catch((error: unknown) => void logged.push(String(error)));
  const speech = openSpeech(home, workshop.knowledge, { timeZone: "UTC" });
  const calls = callers.map((caller, index) => {
    const { language } = caller;
    const person = server.person({ id: 900 + index, name: `P${index}`, language });
    return { caller, person, wants: wishes(caller, speech, workshop) };
  });
  const said = (person: Person) => server.transcript(person.chatId).filter((one) => one.from.isBot);
  const more = new Map(
    languages.map((one) => [one, speech.wording.phrase({ key: "answer-more" }, one)]),
  );

  /** The message with the open question: those that were answered have no buttons any more. */
  const openFor = ({ language }: Caller, person: Person) =>
    said(person).findLast(({ buttons }) =>
      buttons.flat().some(({ label }) => label === more.get(language)),
    );

  /** One answer, or nothing where the call is over. */
  function answer({ caller, person, wants }: (typeof calls)[number]): boolean {
    // The way to share a place stands in a message of its own, under the question; a danger that
    // stands comes before any question.
    const last = said(person).at(-1);
    const stopped = last?.buttons.flat().some(({ label }) => label === wants[1]) === true;
    const open = stopped ? last : openFor(caller, person);
    const labels = open?.buttons.flat().map(({ label }) => label) ?? [];
    const isShown = (want: string, label: string) =>
      label === want || (label.endsWith(CUT) && want.startsWith(label.slice(0, -CUT.length)));
    const want = wants.find((one) => labels.some((label) => isShown(one, label)));
    const way = labels.find((label) => want !== undefined && isShown(want, label)) ?? labels[0];
    if (open === undefined || way === undefined) return false;
    if (caller.manner === "text") person.say(want ?? way);
    else person.press(way, { messageId: open.id });
    return true;
  }

  const isDue = () =>
    readdirSync(join(data, "cases")).some((name) => {
      if (!name.endsWith(".json") || name.startsWith(".")) return false;
      const { outbox } = JSON.parse(readFileSync(join(data, "cases", name), "utf8"));
      return outbox.some((one: { notBefore: number }) => one.notBefore <= timers.now());
    });
  async function quiet() {
    do await server.settled(PATIENCE);
    while (isDue());
  }

  for (const { person } of calls) person.start();
  await quiet();
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    await timers.advance(ROUND_MS);
    const going = calls.filter(answer).length;
    if (going === 0) break;
    await quiet();
  }
  const files = readdirSync(join(data, "cases")).filter((name) => /^[^.].*\.json$/.test(name));
  const cases = files.map((name) => JSON.parse(readFileSync(join(data, "cases", name), "utf8")));
  const called = calls.map(({ caller, person }): Called => {
    const texts = said(person).map(({ text }) => text);
    const own = cases.find(({ events }) => events[0]?.operator === String(person.user.id));
    return {
      ...{ ...caller, person, texts, messages: texts.length, events: own?.events ?? [] },
      id: own?.id ?? "none",
      ended: openFor(caller, person) === undefined,
    };
  });
  await turnrow.stop();
  await server.stop();
  removeFolder(data);
  removeFolder(home);
  return { called, logged, speech, workshop };
}
