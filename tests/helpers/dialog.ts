import { createEngineRoom } from "../../src/cases/engine-room.ts";
import { openSpeech } from "../../src/commands/speech.ts";
import { openWorkshop } from "../../src/commands/workshop.ts";
import {
  type Asking,
  type CaseEvent,
  type CaseHappening,
  stamped,
} from "../../src/domain/case-events.ts";
import type { CaseState } from "../../src/domain/case-state.ts";
import type { Member } from "../../src/domain/documents.ts";
import type { PlannedEffect, Press } from "../../src/domain/effects.ts";
import { applyEvent, foldCase } from "../../src/domain/fold-case.ts";
import type { IncomingContent } from "../../src/domain/incoming.ts";
import type { Rendered } from "../../src/domain/rendered.ts";
import { ShopSettings } from "../../src/domain/settings.ts";
import { choicesFor } from "../../src/talk/choices.ts";
import { counterTurn } from "../../src/talk/counter-turn.ts";
import type { Decision } from "../../src/talk/decision.ts";
import type { Desk } from "../../src/talk/desk.ts";
import { operatorTurn } from "../../src/talk/operator-turn.ts";
import { ask } from "../../src/talk/proceed.ts";
import { visitTurn } from "../../src/talk/visit-turn.ts";

const opened = await openWorkshop(".");
if (!opened.ok) throw new Error(JSON.stringify(opened.problems, null, 1));
export const workshop = opened.value;
export const speech = openSpeech(".", workshop.knowledge, { timeZone: "UTC" });
const engine = createEngineRoom({ knowledge: workshop.knowledge });

export const members: readonly Member[] = [
  { person: "2", name: "Jonas", chat: "2", language: "en", role: "dispatcher" },
  { person: "3", name: "Ilse", chat: "3", language: "en", role: "technician" },
];

export const settings = ShopSettings.parse({
  name: "Hill Farm workshop",
  phone: "555 0100",
  emergency: "112",
});

/** A message as one person sees it, in the slot by which it can change. */
export interface Shown {
  readonly to: string;
  readonly slot: string | null;
  readonly rendered: Rendered;
}

/**
 * A whole dialog in memory, by the pure turns alone: what was said to whom, and the case's state.
 * It carries effects out at once and in order, the way a chat without faults would.
 */
export class Dialog {
  state: CaseState;
  readonly shown: Shown[] = [];
  /** Messages sent anew to the operator; edits do not count. */
  sentToOperator = 0;
  toast: string | null = null;
  /** Everything that happened, in order. */
  readonly events: CaseEvent[] = [];
  /** Everything that was decided to happen outside, in order. */
  readonly effects: PlannedEffect[] = [];
  private clock = 1_700_000_000_000;
  private count = 0;
  readonly language: string;
  readonly desk: Desk;

  constructor(language = "en", more: Partial<Desk> = {}) {
    this.language = language;
    this.desk = {
      knowledge: workshop.knowledge,
      shop: settings,
      members,
      now: this.clock,
      next: engine.next,
      triage: engine.triage,
      words: (phrase, spoken) => speech.wording.phrase(phrase, spoken),
      ...more,
    };
    this.state = foldCase("4F7K", [
      stamped(
        {
          type: "case.opened",
          operator: "1",
          name: "Marit",
          chat: "1",
          language,
          knowledge: "",
          seed: 7,
        },
        { at: this.clock, by: "1", update: null },
      ),
    ]);
  }

  private show({ effect, notBefore }: PlannedEffect): void {
    if (effect.do === "tell" || (notBefore ?? 0) > this.clock) return;
    const rendered = speech.wording.render(effect.message, effect.language);
    const slot = effect.slot ?? null;
    const to = effect.to.chat;
    const earlier =
      effect.do === "revise"
        ? this.shown.findLastIndex((one) => one.to === to && one.slot === slot)
        : -1;
    const before = this.shown[earlier]?.rendered;
    if (effect.do === "revise" && effect.message.lines.length === 0) {
      if (before !== undefined)
        this.shown[earlier] = { to, slot, rendered: { ...before, buttons: [] } };
    } else if (earlier >= 0) this.shown[earlier] = { to, slot, rendered };
    else {
      this.shown.push({ to, slot, rendered });
      if (to === "1") this.sentToOperator += 1;
    }
  }

  private take(decision: Decision, by: string): void {
    this.toast =
      decision.toast === undefined ? null : speech.wording.phrase(decision.toast, this.language);
    for (const happening of decision.happenings) {
      const stamp = { at: this.clock, by, update: `u${this.count}` };
      const event = stamped(happening, stamp);
      this.events.push(event);
      this.state = applyEvent(this.state, event);
    }
    this.effects.push(...decision.effects);
    for (const effect of decision.effects) this.show(effect);
  }

  private expecting(side: "operator" | "technician") {
    const asking = this.state.open[side]?.asking;
    if (asking?.about !== "check") return {};
    const observation = workshop.knowledge.checks.get(asking.check)?.yields ?? "";
    const offered = choicesFor(asking, this.state, workshop.knowledge).flatMap((choice) =>
      choice.state === undefined
        ? []
        : [{ state: choice.state, title: speech.wording.phrase(choice.label, this.language) }],
    );
    return { expecting: { observation, offered } };
  }

  /**
   * Something from one of the three people; 1 is the operator, 2 the dispatcher, 3 the technician.
   * @param later milliseconds since the last thing that anybody sent
   */
  send(what: IncomingContent, from: "1" | "2" | "3" = "1", later = 60_000): this {
    const turn = from === "1" ? operatorTurn : from === "2" ? counterTurn : visitTurn;
    return this.hear(what, { from, later, turn });
  }

  /** Something that somebody does at the counter who is no dispatcher. */
  readonly counter = (what: IncomingContent, from: "1" | "2" | "3"): this =>
    this.hear(what, { from, later: 60_000, turn: counterTurn });

  private hear(
    what: IncomingContent,
    { from, later, turn }: { from: "1" | "2" | "3"; later: number; turn: typeof operatorTurn },
  ): this {
    this.clock += later;
    this.count += 1;
    const side = from === "3" ? "technician" : "operator";
    const text = what.kind === "text" ? what.text : what.kind === "file" ? what.caption : undefined;
    const reading =
      text === undefined
        ? null
        : workshop.reader.read(text, {
            languages: [this.language],
            now: this.clock,
            ...this.expecting(side),
          });
    const incoming = {
      update: `u${this.count}`,
      sentAt: this.clock,
      chat: from,
      direct: true,
      from: { id: from, name: from },
      what,
    };
    const member = members.find((one) => one.person === from) ?? null;
    this.take(
      turn(this.state, { incoming, reading, member }, { ...this.desk, now: this.clock }),
      from,
    );
    return this;
  }

  /** Puts a question to the operator that the engine would ask at some other time. */
  asked(asking: Asking): this {
    this.take(ask(this.state, { asking, before: [], aboutMore: null }, this.desk), "1");
    return this;
  }

  /** Something that happened before what is tried. */
  happened(...happenings: readonly CaseHappening[]): this {
    this.take({ happenings, effects: [] }, "1");
    return this;
  }

  say(text: string, from: "1" | "2" | "3" = "1"): this {
    return this.send({ kind: "text", text }, from);
  }

  /** The newest message to a person that still has buttons. */
  open(to = "1"): Rendered | undefined {
    return this.shown.findLast((one) => one.to === to && one.rendered.buttons.length > 0)?.rendered;
  }

  labels(to = "1"): string[] {
    return (
      this.open(to)
        ?.buttons.flat()
        .map((button) => button.label) ?? []
    );
  }

  pressOf(label: string, to = "1"): Press {
    for (const { to: reader, rendered } of [...this.shown].reverse()) {
      if (reader !== to) continue;
      const found = rendered.buttons.flat().find((button) => button.label === label);
      if (found !== undefined) return found.press;
    }
    throw new Error(`no button "${label}"; there are: ${this.labels(to).join(" | ")}`);
  }

  press(label: string, from: "1" | "2" | "3" = "1"): this {
    return this.send({ kind: "press", press: this.pressOf(label, from) }, from);
  }

  last(to = "1"): string {
    return this.shown.findLast((one) => one.to === to)?.rendered.text ?? "";
  }
}
