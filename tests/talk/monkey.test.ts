import { describe, expect, it } from "vitest";
import { createPressCodec } from "../../src/chat/press-codec.ts";
import type { CaseEvent } from "../../src/domain/case-events.ts";
import { askingKey, type CaseState } from "../../src/domain/case-state.ts";
import type { Press } from "../../src/domain/effects.ts";
import type { IncomingContent } from "../../src/domain/incoming.ts";
import { Dialog, workshop } from "../helpers/dialog.ts";
import { dice, pick, standing, texts, whim } from "../helpers/monkey.ts";

/** A case goes on for so many updates, if it lasts; then another one begins. */
const UPDATES_A_CASE = 60;
const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;
/** Longest message and button data of the Bot API reference. */
const MOST_CHARACTERS = 4096;

const { knowledge } = workshop;
const codec = createPressCodec("secret", [
  ...knowledge.checks.keys(),
  ...knowledge.observations.keys(),
  ...knowledge.acts.keys(),
  ...[...knowledge.observations.values()].flatMap((one) => one.states.map(({ id }) => id)),
]);

const file = (kind: "photo" | "voice" | "sticker" | "document", id: string) => ({
  kind: "file" as const,
  file: { id, kind },
});

/** Buttons of every message so far, the newest last. */
const buttonsOf = (dialog: Dialog): Press[] =>
  dialog.shown.flatMap(({ to, rendered }) =>
    to === "1" ? rendered.buttons.flat().map(({ press }) => press) : [],
  );

function forged(dialog: Dialog, roll: (sides: number) => number): Press | null {
  const acts = [
    "answer",
    "withdraw",
    "show",
    "safe-now",
    "resume",
    "assign",
    "toString",
    "__proto__",
  ];
  const values = ["?", "-", ">page:4", ">families", "one-click", "", "constructor", "no-such"];
  if (roll(4) === 0) return null;
  const revision = dialog.state.revision - 2 + roll(5);
  return { case: dialog.state.id, revision, act: pick(acts, roll), value: pick(values, roll) };
}

function mischief(dialog: Dialog, roll: (sides: number) => number): IncomingContent {
  const presses = buttonsOf(dialog);
  const newest = dialog.open()?.buttons.flat() ?? [];
  const kind = roll(20);
  if (kind < 9 && newest.length > 0) return { kind: "press", press: pick(newest, roll).press };
  if (kind < 11 && presses.length > 0) return { kind: "press", press: pick(presses, roll) };
  if (kind === 11) return { kind: "press", press: forged(dialog, roll) };
  if (kind === 12)
    return file(pick(["photo", "voice", "sticker", "document"], roll), `f${roll(99)}`);
  if (kind === 13) return { kind: "location", latitude: roll(90), longitude: roll(180) };
  if (kind === 14) return { kind: "contact", phone: "555 0199", own: roll(2) === 0, name: "Pat" };
  if (kind === 15) return { kind: "edited", text: pick(texts, roll) };
  if (kind === 16) {
    const name = pick(["start", "person", "back", "stop", "nonsense", "toString"], roll);
    return { kind: "command", name, argument: "" };
  }
  if (kind === 17) return { kind: "other", name: "poll" };
  return { kind: "text", text: pick(texts, roll) };
}

/** What happened in one update, as the test sees it. */
interface Step {
  readonly what: IncomingContent;
  readonly before: CaseState;
  readonly after: CaseState;
  readonly events: readonly CaseEvent[];
  readonly said: readonly string[];
}

const isGoingBack = ({ what, events }: Step) =>
  events.some(({ type }) => type === "answer.withdrawn" || type === "case.reopened") ||
  (what.kind === "press" && ["back", "withdraw"].includes(what.press?.act ?? "")) ||
  (what.kind === "command" && what.name === "back") ||
  (what.kind === "text" && what.text === "back");

/** Questions that were put and not replaced unanswered, in this epoch. */
class Record {
  epoch = 0;
  readonly asked = new Set<string>();

  /** The question that was put although it had been answered in this epoch; null: none was. */
  repeated(step: Step): string | null {
    if (step.after.epoch !== this.epoch) this.asked.clear();
    this.epoch = step.after.epoch;
    const open = step.before.open.operator;
    for (const event of step.events) {
      if (event.type !== "question.asked") continue;
      const key = askingKey(event.asking);
      const unanswered = open !== null && askingKey(open.asking) === key;
      if (isGoingBack(step) || unanswered) continue;
      if (this.asked.has(key)) return key;
    }
    for (const event of step.events) {
      if (event.type === "question.passed") this.asked.add(askingKey(event.asking));
      if (event.type === "answer.given" && event.check !== undefined) {
        this.asked.add(`check:${event.check}`);
      }
    }
    if (isGoingBack(step)) this.asked.clear();
    return null;
  }
}

const rises = "opens a new way";

function check(dialog: Dialog, step: Step, record: Record): void {
  const told = JSON.stringify(step.what).slice(0, 200);
  expect(record.repeated(step), told).toBeNull();
  for (const event of step.events) {
    if (event.type !== "question.asked" || event.aboutMore === undefined) continue;
    const more = event.aboutMore > (step.before.aboutMore ?? Number.POSITIVE_INFINITY);
    if (more) expect(step.said.join(), told).toContain(rises);
  }
  for (const { to, rendered } of dialog.shown.slice(-4)) {
    if (to !== "1") continue;
    const { text, buttons } = rendered;
    expect(text.length, told).toBeLessThanOrEqual(MOST_CHARACTERS);
    const answers = buttons.flat().filter(({ press }) => press.act === "answer");
    expect(answers.length, text).toBeLessThanOrEqual(6);
    for (const { press, label } of buttons.flat()) {
      expect(codec.encode(press), JSON.stringify(press)).not.toBeNull();
      expect(label).not.toBe("");
    }
  }
}

/** Something open, a way on, or a closed case: never a chat in which nothing can be done. */
function hasWayOn(dialog: Dialog): boolean {
  const { state } = dialog;
  if (state.closed !== null || state.interview === "ended") return true;
  if (state.safety === "not-clear") {
    // For a fire or somebody hurt the emergency number stands alone; the way on comes later.
    const flag = knowledge.redFlags.get(state.flags.at(-1)?.flag ?? "");
    return flag?.emergency === true || buttonsOf(dialog).some(({ act }) => act === "safe-now");
  }
  const current = state.open.operator?.revision ?? -1;
  return buttonsOf(dialog).some(
    ({ act, revision }) =>
      act === "resume" ||
      act === "repeat" ||
      (["more", "return"].includes(act) && revision === current),
  );
}

/** The well-behaved rest of a call: the first answer of each question. */
function finish(dialog: Dialog): void {
  if (dialog.state.closed !== null) return;
  for (let rounds = 0; rounds < 80; rounds += 1) {
    const { state } = dialog;
    if (state.safety === "not-clear") dialog.say("It is safe now, go on");
    else if (state.interview === "paused") dialog.say("ok here again");
    else if (state.closed !== null || state.open.operator === null) break;
    else {
      const labels = dialog.labels();
      const safe = labels.find((label) => label === "All is safe");
      const end = state.open.operator.asking.about === "equipment" ? "That is all" : undefined;
      dialog.press(safe ?? labels.find((label) => label === end) ?? labels[0] ?? "");
      if (dialog.state === state) dialog.say("I don't know");
    }
  }
  expect(dialog.state.open.operator).toBeNull();
}

function wantsPerson(dialog: Dialog): void {
  if (dialog.state.closed !== null) return;
  const shown = dialog.shown.length;
  dialog.say("I want to talk to a person");
  expect(dialog.state.personWanted).toBe(true);
  expect(dialog.shown.slice(shown).some(({ rendered }) => rendered.text.includes("555"))).toBe(
    true,
  );
}

function stepOf(dialog: Dialog, what: IncomingContent, later: number): Step {
  const before = dialog.state;
  const shown = dialog.shown.length;
  const events = dialog.events.length;
  dialog.send(what, "1", later);
  return {
    ...{ what, before, after: dialog.state },
    events: dialog.events.slice(events),
    said: dialog.shown.slice(Math.max(0, shown - 3)).map(({ rendered }) => rendered.text),
  };
}

function monkeyCase(roll: (sides: number) => number, updates: number): number {
  const dialog = new Dialog("en", { next: whim, triage: () => standing });
  const record = new Record();
  let done = 0;
  let last: IncomingContent = { kind: "text", text: pick(texts, roll) };
  for (; done < updates && dialog.state.closed === null; done += 1) {
    const again = done > 0 && roll(12) === 0;
    const what: IncomingContent = again || done === 0 ? last : mischief(dialog, roll);
    const later = pick([0, 500, 5_000, MINUTE, MINUTE, 10 * MINUTE, 3 * DAY, -MINUTE], roll);
    const step = stepOf(dialog, what, later);
    check(dialog, step, record);
    expect(hasWayOn(dialog), JSON.stringify(what)).toBe(true);
    last = what;
  }
  if (roll(2) === 0) wantsPerson(dialog);
  finish(dialog);
  return done;
}

describe("an operator who does anything at all", () => {
  it.each([
    [5_000, 11],
    [1_000, 12],
  ])(
    "is never stuck, never asked the same twice in an epoch, never shown what is too long (%i updates)",
    (updates, seed) => {
      const roll = dice(seed);
      let done = 0;
      while (done < updates) done += monkeyCase(roll, Math.min(UPDATES_A_CASE, updates - done));
      expect(done).toBe(updates);
    },
    60_000,
  );
});
