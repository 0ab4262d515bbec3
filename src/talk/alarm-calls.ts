import type { CaseState } from "../domain/case-state.ts";
import type { Message, PlannedEffect } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import { button, line, phrase, say } from "./decision.ts";
import { type Desk, MINUTE } from "./desk.ts";
import { onDuty } from "./duty.ts";
import { isQuietAt } from "./hours.ts";
import { slipReaders } from "./slip.ts";

/**
 * Minutes after which the shop is told again of a danger that nobody has looked after: soon at
 * first, then less often, for half a day.
 */
const REPEATS = [2, 5, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240, 360, 480, 720] as const;
/** In the quiet hours the others are woken when whoever has the call-outs has not answered so long. */
const OTHERS_AFTER = 10;

interface Reader {
  readonly key: string;
  readonly chat: string;
  readonly language: string;
  readonly topic?: number;
}

/**
 * Who is told of a danger, so many minutes after it was raised: at any hour whoever has the
 * call-outs; the counter as well, in quiet hours only where nobody has them or does not answer.
 */
export function alarmReaders(desk: Desk, minutes: number): readonly Reader[] {
  const at = desk.now + minutes * MINUTE;
  const counter: readonly Reader[] = slipReaders(desk);
  const called = onDuty(desk, at);
  if (called === null) return counter;
  const first: Reader = { key: called.person, chat: called.chat, language: called.language };
  const quiet = isQuietAt(at, desk.shop.timeZone, desk.shop.quietHours);
  if (quiet && minutes < OTHERS_AFTER) return [first];
  return [first, ...counter.filter((reader) => reader.chat !== first.chat)];
}

/** Tells the shop of a danger, again and again until somebody presses that they have seen it. */
export function alarmCalls(state: CaseState, flag: string, desk: Desk): PlannedEffect[] {
  const said = { number: state.id, flag: { know: wordKey("flag", flag) } };
  const press = (act: string) => ({ case: state.id, revision: 0, act });
  const call = (key: string): Message => ({
    lines: [line(phrase(key, said), "caution")],
    buttons: [
      button(phrase("press-seen"), { ...press("seen"), value: flag }),
      button(phrase("press-slip"), press("slip")),
    ],
  });
  const slot = ({ key }: Reader) => `alarm-${key}`;
  const first = alarmReaders(desk, 0).map((reader) =>
    say(reader, call("alarm-for-shop"), slot(reader)),
  );
  const again = REPEATS.flatMap((minutes) =>
    alarmReaders(desk, minutes).map((reader) =>
      say(reader, call("alarm-again"), slot(reader), {
        notBefore: desk.now + minutes * MINUTE,
        cancelIf: { flagSeen: flag },
      }),
    ),
  );
  return [...first, ...again];
}
