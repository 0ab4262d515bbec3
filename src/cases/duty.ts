import type { DutyShift, Member } from "../domain/documents.ts";
import type { Message, Phrase, PlannedEffect } from "../domain/effects.ts";
import type { Incoming } from "../domain/incoming.ts";
import { line, phrase, say } from "../talk/decision.ts";
import type { Desk } from "../talk/desk.ts";
import {
  shiftMessage,
  shiftOf,
  shiftSpans,
  typedHint,
  withoutDuty,
  withShift,
} from "../talk/duty.ts";
import { readShift } from "../talk/duty-hours.ts";
import { may } from "../talk/rights.ts";
import type { Commit } from "./commit.ts";
import { SHOP, type ShopBody } from "./invites.ts";
import type { Received } from "./ports.ts";

interface Reader {
  readonly chat: string;
  readonly language: string;
  readonly topic?: number;
}

export interface DutyParts {
  readonly commit: Commit;
  readonly desk: (now: number) => Desk;
  readonly readerOf: (incoming: Incoming) => Reader;
  readonly tell: (incoming: Incoming, message: Message) => Promise<Received>;
  readonly toast: (incoming: Incoming, words: Phrase) => Received;
}

interface Changed {
  readonly body: ShopBody;
  readonly effects: readonly PlannedEffect[];
}

const refused: Message = { lines: [line(phrase("not-allowed"))] };

/**
 * What is pressed under the roster: a person, then for how long, or nobody (`-`); and shifts by the
 * hours that were typed. The roster is the shop's own, so it commits in the shop's document.
 */
export function createDuty(parts: DutyParts) {
  const { commit, readerOf, tell, toast } = parts;

  function taken(
    shop: ShopBody,
    value: string,
    given: { now: number; to: Reader },
  ): Changed | null {
    const { now, to } = given;
    if (value === "-") {
      const ended = say(to, { lines: [line(phrase("duty-ended"))] });
      return { body: { ...shop, duty: withoutDuty(shop.duty, now) }, effects: [ended] };
    }
    const [person = "", wanted] = value.split(":");
    const span = shiftSpans.find((one) => one === wanted);
    const member = shop.members.find((one) => one.person === person);
    if (member === undefined || span === undefined) return null;
    const times = shiftOf(span, now, parts.desk(now).shop);
    return entered(shop, { person, ...times }, given);
  }

  /** Puts a shift on the roster and tells whoever asked and whoever has it. */
  function entered(shop: ShopBody, shift: DutyShift, given: { now: number; to: Reader }) {
    const { now, to } = given;
    const member = shop.members.find((one) => one.person === shift.person);
    if (member === undefined) return null;
    const words = {
      who: member.name,
      from: { time: shift.from, style: "day-hour" },
      until: { time: shift.until, style: "day-hour" },
    } as const;
    const done = say(to, { lines: [line(phrase("duty-set", words))] });
    const yours = say(member, { lines: [line(phrase("duty-yours", words), "heading")] });
    const duty = withShift(shop.duty, shift, now);
    return { body: { ...shop, duty }, effects: member.chat === to.chat ? [yours] : [done, yours] };
  }

  /** A shift by stated hours, typed after the command; where it is none the way to write it is told. */
  async function typed(text: string, incoming: Incoming, member: Member): Promise<Received> {
    if (!may(member.role, "set-duty")) return tell(incoming, refused);
    const { members, now, shop } = parts.desk(incoming.sentAt);
    const shift = readShift(text, { members, now, timeZone: shop.timeZone });
    if (shift === null) return tell(incoming, { lines: [typedHint(member.name)] });
    const to = readerOf(incoming);
    await commit({ kind: "shop", id: SHOP }, incoming.update, (body, at) =>
      body === null ? null : entered(body, shift, { now: at, to }),
    );
    return {};
  }

  async function pressed(value: string, incoming: Incoming, member: Member): Promise<Received> {
    if (!may(member.role, "set-duty")) return toast(incoming, phrase("not-allowed"));
    const desk = parts.desk(incoming.sentAt);
    const asked = desk.members.find((one) => one.person === value);
    if (asked !== undefined) return tell(incoming, shiftMessage(asked, desk));
    const to = readerOf(incoming);
    await commit({ kind: "shop", id: SHOP }, incoming.update, (shop, now) =>
      shop === null ? null : taken(shop, value, { now, to }),
    );
    return {};
  }

  return { pressed, typed };
}
