import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "yaml";
import { z } from "zod";
import type { Asking } from "../../src/domain/case-events.ts";
import { type Choice, choicesFor, DONT_KNOW, LEADS_TO, SKIP } from "../../src/talk/choices.ts";
import { Dialog, workshop } from "./dialog.ts";

const { knowledge } = workshop;

const Told = z.looseObject({
  machine: z.looseObject({ kind: z.string().default(""), fuel: z.string().default("") }).default({
    kind: "",
    fuel: "",
  }),
  opening: z.string(),
  operator: z.record(z.string(), z.unknown()).default({}),
  acts: z.record(z.string(), z.string()).default({}),
});
export type ToldCall = z.infer<typeof Told>;

/** What the operator of a written-down call knows. */
export function toldCall(name: string): ToldCall {
  return Told.parse(parse(readFileSync(join("tests/golden", name, "call.yaml"), "utf8")));
}

/** What a call cost the operator. */
export interface CallCost {
  /** Messages that the bot sent; an edited one is not new. */
  readonly messages: number;
  readonly taps: number;
  /** Questions put, with those about place, phone and plate. */
  readonly questions: number;
}

/** What is pressed once a danger is over. */
const SAFE_NOW = "It is safe now, go on";

const wordOf = (value: unknown): string => (typeof value === "string" ? value : "");

/** The answer on this screen that says the state, or leads to it. */
function towards(asking: Asking, wanted: string, choices: readonly Choice[]): Choice | undefined {
  const direct = choices.find((choice) => choice.state === wanted || choice.value === wanted);
  if (direct !== undefined) return direct;
  if (asking.about === "kind") return choices.find(({ value }) => leadsToKind(value, wanted));
  if (asking.about !== "check") return undefined;
  const check = knowledge.checks.get(asking.check);
  const head = check?.menu.find(({ states }) => states.includes(wanted));
  const states = knowledge.observations.get(check?.yields ?? "")?.states ?? [];
  if (head !== undefined) return choices.find(({ value }) => value === `${LEADS_TO}${head.id}`);
  return states.some(({ id }) => id === wanted)
    ? choices.find(({ value }) => value.startsWith(`${LEADS_TO}page:`))
    : undefined;
}

/** The list of families holds all kinds that are not among the commonest. */
function leadsToKind(value: string, kind: string): boolean {
  const family = [...knowledge.machines.values()].find((one) => one.id === kind)?.family;
  return value === `${LEADS_TO}families` || value === `${LEADS_TO}${family}`;
}

/** What this operator would say to the question. */
function wish(asking: Asking, call: ToldCall): string {
  switch (asking.about) {
    case "safety":
      return "clear";
    case "check":
      return wordOf(call.operator[knowledge.checks.get(asking.check)?.yields ?? ""]);
    case "act": {
      if (asking.stage === "offer") return "done";
      const outcome = call.acts[asking.act] ?? "no-change";
      const told = call.operator[knowledge.acts.get(asking.act)?.yields ?? ""];
      return wordOf(told) || outcome;
    }
    case "kind":
      return workshop.reader.read(call.machine.kind, { languages: ["en"] }).machine.kind ?? "other";
    case "fuel":
      return call.machine.fuel;
    case "equipment":
      return "all";
    case "trip":
      return "looked";
    case "urgency":
      return "normal";
    default:
      return "";
  }
}

/** Answers the open question the way this operator would, by button; a reading is typed. */
function answer(dialog: Dialog, call: ToldCall): void {
  const asking = dialog.state.open.operator?.asking;
  if (asking === undefined) return;
  const choices = choicesFor(asking, dialog.state, knowledge);
  const wanted = wish(asking, call);
  const isReading = asking.about === "check" && /^\d/.test(wanted);
  if (isReading) {
    dialog.say(wanted);
    if (dialog.state.open.operator?.asking !== asking) return;
  }
  const chosen =
    towards(asking, wanted, choices) ??
    choices.find(({ value }) => value === DONT_KNOW || value === SKIP) ??
    choices[0];
  const revision = dialog.state.open.operator?.revision ?? 0;
  const press = { case: dialog.state.id, revision, act: "answer", value: chosen?.value ?? "" };
  dialog.send({ kind: "press", press });
}

/** Plays a call to its end, the operator standing beside the machine. */
export function playWhole(call: ToldCall, language = "en"): { dialog: Dialog; cost: CallCost } {
  const standing = { ...call, operator: { "at-machine": "yes", ...call.operator } };
  const dialog = new Dialog(language).say(call.opening);
  let taps = 0;
  for (; taps === 0 || dialog.state.open.operator !== null; taps += 1) {
    if (taps > 60) throw new Error(`no end:\n${dialog.last()}`);
    if (dialog.state.safety === "not-clear") dialog.press(SAFE_NOW);
    answer(dialog, standing);
  }
  const questions = dialog.events.filter(
    (event) =>
      event.type === "question.asked" && !(event.asking.about === "check" && event.asking.menu),
  ).length;
  return { dialog, cost: { messages: dialog.sentToOperator, taps, questions } };
}
