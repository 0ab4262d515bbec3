import type { Api } from "grammy";
import type { InlineKeyboardMarkup } from "grammy/types";
import type { Carried, Carrier, CarryContext, Outgoing, RateLimit } from "../cases/ports.ts";
import type { SentMessage } from "../domain/documents.ts";
import type { Wording } from "../domain/rendered.ts";
import type { PrintPaper } from "../paper/print-paper.ts";
import type { Call } from "./plan-calls.ts";
import { planCalls } from "./plan-calls.ts";
import type { PressCodec } from "./press-codec.ts";
import { sendFile, sendMade } from "./send-file.ts";
import type { Trouble } from "./trouble.ts";
import { judgeTrouble } from "./trouble.ts";

/** Bot FAQ: in one chat about one message a second, short bursts allowed; edits count here too. */
const IN_A_CHAT: readonly RateLimit[] = [{ count: 5, milliseconds: 5_000 }];
/** Bot FAQ: in one group 20 messages a minute. */
const IN_A_GROUP: readonly RateLimit[] = [...IN_A_CHAT, { count: 20, milliseconds: 60_000 }];
/** Bot FAQ: about 30 a second over all chats; some are kept for answers to pressed buttons. */
const OVERALL: readonly RateLimit[] = [{ count: 25, milliseconds: 1_000 }];

export interface CarrierParts {
  readonly api: Api;
  readonly wording: Wording;
  readonly codec: PressCodec;
  /** Hears of what had to be left out: a button that does not fit, a file that is gone. */
  readonly report: (what: "button-left-out" | "file-left-out") => void;
  readonly pace: Pick<Carrier, "limits" | "overall">;
  /** Draws up papers of our own. */
  readonly print: PrintPaper;
}

/** Groups have negative numbers. */
const isGroup = (chat: string) => chat.startsWith("-");
const isInline = (keyboard: Call["keyboard"]): keyboard is InlineKeyboardMarkup | undefined =>
  keyboard === undefined || "inline_keyboard" in keyboard;

/** How fast the platform wants messages to follow each other. */
export const PLATFORM_PACE: CarrierParts["pace"] = {
  limits: (chat) => (isGroup(chat) ? IN_A_GROUP : IN_A_CHAT),
  overall: OVERALL,
};

/** Carries effects out over the Bot API, one message a call. */
export function createCarrier({ api, wording, codec, report, pace, print }: CarrierParts): Carrier {
  const encode = (press: Parameters<PressCodec["encode"]>[0]) => {
    const data = codec.encode(press);
    if (data === null) report("button-left-out");
    return data;
  };

  async function send(call: Call, effect: Outgoing, topic = effect.to.topic): Promise<number> {
    const chat = effect.to.chat;
    const options = {
      ...(topic === undefined ? {} : { message_thread_id: topic }),
      ...(effect.quiet === true ? { disable_notification: true } : {}),
      ...(call.keyboard === undefined ? {} : { reply_markup: call.keyboard }),
    };
    if (call.send === "place") {
      return (await api.sendLocation(chat, call.latitude, call.longitude, options)).message_id;
    }
    if (call.send === "card") {
      return (await api.sendContact(chat, call.phone, call.name, options)).message_id;
    }
    if (call.send === "file") return sendFile(api, chat, call, options);
    if (call.send !== "text") return sendMade(api, chat, call, { ...options, print });
    const entities = [...call.words.entities];
    const preview = { link_preview_options: { is_disabled: true } };
    const sent = await api.sendMessage(chat, call.words.text, { ...options, ...preview, entities });
    return sent.message_id;
  }

  /** Sends, giving up first the topic and then the file where that is what stands in the way. */
  async function sendAnyhow(call: Call, effect: Outgoing): Promise<number | null> {
    try {
      return await send(call, effect);
    } catch (error) {
      const { is } = judgeTrouble(error);
      if (is === "no-topic") return sendAnyhow(call, { ...effect, to: { chat: effect.to.chat } });
      if (is !== "no-file" || call.send !== "file") throw error;
      report("file-left-out");
      if (call.words.text === "") return null;
      return sendAnyhow({ ...call, send: "text" }, effect);
    }
  }

  async function edit(call: Call, { chat, message }: SentMessage): Promise<void> {
    if (call.send === "place" || call.send === "card" || !isInline(call.keyboard)) return;
    const id = Number(message);
    const entities = [...call.words.entities];
    const markup = call.keyboard === undefined ? {} : { reply_markup: call.keyboard };
    if (call.send !== "text") {
      const words = { caption: call.words.text, caption_entities: entities };
      await api.editMessageCaption(chat, id, { ...words, ...markup });
      return;
    }
    const preview = { link_preview_options: { is_disabled: true } };
    await api.editMessageText(chat, id, call.words.text, { entities, ...preview, ...markup });
  }

  /** Changes the earlier message; false where it can only be said anew. */
  async function changed(calls: readonly Call[], earlier: SentMessage): Promise<boolean> {
    const [call, ...more] = calls;
    if (call === undefined || more.length > 0) return false;
    if (call.send === "place" || call.send === "card" || !isInline(call.keyboard)) return false;
    try {
      await edit(call, earlier);
      return true;
    } catch (error) {
      const { is } = judgeTrouble(error);
      if (is === "unchanged") return true;
      if (is === "gone") return false;
      throw error;
    }
  }

  /** Takes the buttons away and leaves the words. */
  async function silence(earlier: SentMessage | null): Promise<Carried> {
    try {
      if (earlier !== null) await api.editMessageReplyMarkup(earlier.chat, Number(earlier.message));
    } catch (error) {
      const { is } = judgeTrouble(error);
      if (is !== "unchanged" && is !== "gone") throw error;
    }
    return { outcome: "done", sent: null };
  }

  async function attempt(effect: Outgoing, { earlier, part }: CarryContext): Promise<Carried> {
    if (effect.do === "revise" && effect.message.lines.length === 0) return silence(earlier);
    const rendered = wording.render(effect.message, effect.language);
    const calls = planCalls(rendered, { direct: !isGroup(effect.to.chat), encode });
    if (calls.length === 0) return { outcome: "refused", reason: "nothing to send" };
    const isRevision = effect.do === "revise" && part === 0 && earlier?.chat === effect.to.chat;
    if (isRevision && (await changed(calls, earlier))) return { outcome: "done", sent: null };
    const call = calls[part];
    if (call === undefined) return { outcome: "done", sent: null };
    const id = await sendAnyhow(call, effect);
    const { chat } = effect.to;
    const sent = call.main && id !== null ? { chat, message: String(id) } : null;
    return { outcome: part + 1 < calls.length ? "partly" : "done", sent };
  }

  return {
    async carry(effect, context) {
      try {
        return await attempt(effect, context);
      } catch (error) {
        return outcomeOf(judgeTrouble(error));
      }
    },
    ...pace,
  };
}

const outcomeOf = (trouble: Trouble): Carried =>
  trouble.is === "final" ? trouble.carried : { outcome: "refused", reason: trouble.is };
