import { createEngineRoom, type EngineRoom } from "../cases/engine-room.ts";
import { planCalls } from "../chat/plan-calls.ts";
import { type CaseEvent, type CaseHappening, stamped } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { PlannedEffect } from "../domain/effects.ts";
import { applyEvent, foldCase } from "../domain/fold-case.ts";
import type { IncomingContent } from "../domain/incoming.ts";
import { ShopSettings } from "../domain/settings.ts";
import { operatorTurn } from "../talk/operator-turn.ts";
import type { Speech } from "./speech.ts";
import { replyTo, type ToldByOperator } from "./told-operator.ts";
import type { Workshop } from "./workshop.ts";

/** What a call was, to the one who asked for help. */
export interface WholeCall {
  /** Messages that the bot sent; an edited one is not new. */
  readonly messages: number;
  readonly taps: number;
  /** Questions put, with those about place, phone and plate. */
  readonly questions: number;
  readonly events: readonly CaseEvent[];
  /** The chat as it stands at the end. */
  readonly texts: readonly string[];
}

/** More than any call takes; reaching it is a fault of the dialog. */
const MOST_TAPS = 80;
/** What cannot be said in one message counts as many. */
const DIRECT = { direct: true, encode: () => "x" };
const MINUTE = 60_000;
const START = Date.UTC(2026, 0, 5, 8);
const ME = { id: "1", name: "1", chat: "1" };
const shop = ShopSettings.parse({ name: "Workshop", phone: "555 0100", emergency: "112" });

/** The chat of one person, kept as it would be seen. */
function createChat(speech: Speech, language: string) {
  const shown: { slot: string | undefined; text: string }[] = [];
  let sent = 0;
  const show = ({ effect, notBefore }: PlannedEffect, now: number) => {
    if (effect.do === "tell" || effect.to.chat !== ME.chat || (notBefore ?? 0) > now) return;
    if (effect.message.lines.length === 0) return;
    const rendered = speech.wording.render(effect.message, language);
    const { text } = rendered;
    const earlier =
      effect.do === "revise" ? shown.findLast((one) => one.slot === effect.slot) : undefined;
    if (earlier !== undefined) {
      earlier.text = text;
      return;
    }
    shown.push({ slot: effect.slot, text });
    sent += planCalls(rendered, DIRECT).length;
  };
  return { show, sent: () => sent, texts: () => shown.map(({ text }) => text) };
}

export interface CallRoom {
  readonly workshop: Workshop;
  readonly speech: Speech;
  readonly language: string;
}

/** One operator's call under way, through the turns of the real dialog. */
class CallUnderWay {
  private now = START;
  private readonly chat;
  readonly events: CaseEvent[] = [];
  private state: CaseState;
  private readonly room: CallRoom;
  private readonly engine: EngineRoom;

  constructor(room: CallRoom, engine: EngineRoom) {
    this.room = room;
    this.engine = engine;
    this.chat = createChat(room.speech, room.language);
    const opened: CaseHappening = {
      ...{ type: "case.opened", operator: ME.id, name: ME.name, chat: ME.chat },
      ...{ language: room.language, knowledge: "", seed: 7 },
    };
    const stamp = { at: this.now, by: ME.id, update: null };
    this.state = foldCase("4F7K", [stamped(opened, stamp)]);
  }

  private send(what: IncomingContent): void {
    this.now += MINUTE;
    const { now, engine } = this;
    const { language, speech, workshop } = this.room;
    const reading =
      what.kind === "text" ? workshop.reader.read(what.text, { languages: [language], now }) : null;
    const update = `u${now}`;
    const incoming = { update, sentAt: now, chat: ME.chat, direct: true, from: ME, what };
    const decided = operatorTurn(
      this.state,
      { incoming, reading, member: null },
      {
        ...{ knowledge: workshop.knowledge, shop, members: [], now },
        ...{ next: engine.next, triage: engine.triage },
        words: (phrase, spoken) => speech.wording.phrase(phrase, spoken),
      },
    );
    for (const happening of decided.happenings) {
      const event = stamped(happening, { at: now, by: ME.id, update });
      this.events.push(event);
      this.state = applyEvent(this.state, event);
    }
    for (const effect of decided.effects) this.chat.show(effect, now);
  }

  private press(act: string, value?: string): void {
    const revision = this.state.open.operator?.revision ?? this.state.revision;
    const which = value === undefined ? {} : { value };
    this.send({ kind: "press", press: { case: this.state.id, revision, act, ...which } });
  }

  /** One answer; a reading that is not understood as it was typed is passed. */
  private answer(call: ToldByOperator): void {
    const { knowledge } = this.room.workshop;
    for (const mayType of [true, false]) {
      const asking = this.state.open.operator?.asking;
      if (asking === undefined) return;
      const reply = replyTo(asking, call, { state: this.state, knowledge, mayType });
      if ("press" in reply) {
        this.press("answer", reply.press);
        return;
      }
      this.send({ kind: "text", text: reply.type });
      if (this.state.open.operator?.asking !== asking) return;
    }
  }

  play(call: ToldByOperator): WholeCall {
    this.send({ kind: "text", text: call.opening });
    let taps = 0;
    while (this.state.open.operator !== null || this.state.safety === "not-clear") {
      taps += 1;
      if (taps > MOST_TAPS) throw new Error(`the call has no end: ${call.opening}`);
      if (this.state.safety === "not-clear") this.press("safe-now");
      else this.answer(call);
    }
    const { events, chat } = this;
    const questions = events.filter(
      (event) =>
        event.type === "question.asked" && !(event.asking.about === "check" && event.asking.menu),
    ).length;
    return { messages: chat.sent(), taps, questions, events, texts: chat.texts() };
  }
}

/**
 * Plays whole calls: the opening in words, every other answer by button, a reading typed. The
 * operator stands beside the machine and knows exactly what is told.
 */
export function createCalls(room: CallRoom): (call: ToldByOperator) => WholeCall {
  const engine = createEngineRoom({ knowledge: room.workshop.knowledge });
  return (call) => new CallUnderWay(room, engine).play(call);
}
