import type { CaseState } from "../domain/case-state.ts";
import type { FileRef, PlannedEffect } from "../domain/effects.ts";
import type { FollowUp } from "../domain/follow-up.ts";
import { line, phrase, say } from "./decision.ts";
import { DAY, type Desk, MINUTE, machineOf } from "./desk.ts";
import { notAtNight } from "./hours.ts";

/** After this long without an answer the operator is reminded, once. */
export const SILENCE = 90 * MINUTE;
/** Days after the end at which the operator is asked whether the machine is still fine. */
const STILL_FINE_DAYS = 4;

interface When {
  readonly notBefore?: number;
}

/** Tells a case or a person something, now or later. */
export function tell(
  kind: "case" | "person",
  id: string,
  { event, notBefore }: { readonly event: FollowUp } & When,
): PlannedEffect {
  const effect = { do: "tell", document: { kind, id }, event } as const;
  return notBefore === undefined ? { effect } : { effect, notBefore };
}

/** Pictures that can be looked at, sent as a photo or as a file. */
const isPicture = (file: FileRef) =>
  file.kind === "photo" || (file.kind === "document" && file.mime?.startsWith("image/") === true);

/** The machine is kept for the next time once enough is known of it. */
function machineEffects(before: CaseState, after: CaseState): PlannedEffect[] {
  const { kind } = after.machine;
  const isDone = after.interview === "ended" || after.closed !== null;
  const wasDone = before.interview === "ended" || before.closed !== null;
  const same = wasDone && before.machine === after.machine;
  if (kind === undefined || !isDone || same || after.operator.chat === "") return [];
  const facts = machineOf(after);
  const machine = { id: after.profile ?? after.id, title: facts.words ?? "", facts };
  return [tell("person", after.operator.id, { event: { type: "machine.seen", machine } })];
}

function equipmentEffects(before: CaseState, after: CaseState): PlannedEffect[] {
  if (after.has === null || after.has === before.has || before.askedEver.length === 0) return [];
  const has = [...after.has];
  return [tell("person", after.operator.id, { event: { type: "equipment.told", has } })];
}

function photoEffects(before: CaseState, after: CaseState): PlannedEffect[] {
  return after.files
    .slice(before.files.length)
    .filter((one) => one.from === "operator" && isPicture(one.file))
    .map(({ file }) => tell("case", after.id, { event: { type: "photo.came", file: file.id } }));
}

function clockEffects(before: CaseState, after: CaseState, desk: Desk): PlannedEffect[] {
  const { timeZone, quietHours } = desk.shop;
  const later = (event: FollowUp, wait: number) =>
    tell("case", after.id, { event, notBefore: notAtNight(desk.now + wait, timeZone, quietHours) });
  const isFirst = before.askedEver.length === 0 && after.open.operator !== null;
  const isClosed = before.closed === null && after.closed !== null;
  const isOver = isClosed && after.closed?.end !== "called-off" && after.aftermath === "unasked";
  return [
    ...(isFirst ? [later({ type: "look-in" }, SILENCE)] : []),
    ...(isOver ? [later({ type: "still-fine" }, STILL_FINE_DAYS * DAY)] : []),
  ];
}

/** The operator hears that somebody is at the machine now. */
function arrivalEffects(before: CaseState, after: CaseState, { shop }: Desk): PlannedEffect[] {
  const { technician, operator } = after;
  const began = before.visit !== "started" && after.visit === "started";
  if (!began || technician === null || operator.chat === "" || operator.id === technician.id) {
    return [];
  }
  const words = { technician: technician.name, shop: shop.name };
  return [say(operator, { lines: [line(phrase("operator-arrived", words))] })];
}

/**
 * What follows from a turn besides its own messages: the machine and equipment are remembered with
 * the person, new photos are looked at, what is due later is put on the clock, and the operator is
 * told of an arrival.
 * @param before the case before the turn, after: with everything that happened in it
 */
export function followUps(before: CaseState, after: CaseState, desk: Desk): PlannedEffect[] {
  return [
    ...machineEffects(before, after),
    ...equipmentEffects(before, after),
    ...photoEffects(before, after),
    ...clockEffects(before, after, desk),
    ...arrivalEffects(before, after, desk),
  ];
}
