import { z } from "zod";
import type { Asking, CaseEvent, CaseHappening, ConfirmedHow, End } from "../domain/case-events.ts";
import { payers } from "../domain/shop-happenings.ts";
import { Performer, Reporter } from "../domain/vocabulary.ts";
import { fileRef, line } from "./effect-schema.ts";
import { actDone, machineFacts, report, someMachineFacts, urgency } from "./evidence-schema.ts";
import { exactly, list, text, whole } from "./exactly.ts";

const about = <A extends Asking["about"], S extends z.ZodRawShape>(what: A, shape: S) =>
  z.object({ about: z.literal(what), ...shape });

const meanings = list(z.object({ observation: text, state: text }));

const asking = exactly<Asking>()(
  z.discriminatedUnion("about", [
    about("safety", {}),
    about("known", {
      machines: list(z.object({ id: text, title: text, facts: machineFacts })),
    }),
    about("kind", { family: text.exactOptional() }),
    about("fuel", {}),
    about("check", { check: text, menu: text.exactOptional() }),
    about("act", { act: text, stage: z.enum(["offer", "result"]) }),
    about("equipment", { has: list(text).exactOptional() }),
    about("trip", { checks: list(text) }),
    about("photo", { of: text.exactOptional() }),
    about("story", { photo: text.exactOptional() }),
    about("urgency", {}),
    about("where", { phone: z.boolean().exactOptional() }),
    about("phone", {}),
    about("plate", {}),
    about("meaning", { options: meanings, check: text.exactOptional() }),
    about("remedy", { remedy: text }),
    about("cause", {}),
    about("cause-words", {}),
    about("ran", { remedy: text.exactOptional() }),
    about("hand-back", { check: text.exactOptional() }),
    about("hand-back-why", { check: text.exactOptional() }),
    about("missing", {}),
  ]),
);

const end = exactly<End>()(
  z.enum([
    "solved-by-chat",
    "visit",
    "collected",
    "part-handed-over",
    "loan-machine",
    "referred",
    "nothing-found",
    "called-off",
    "duplicate",
  ]),
);
const how = exactly<ConfirmedHow>()(
  z.enum(["ran-after-this", "measured", "several-at-once", "guess"]),
);

/** When, by whom, and from which update. */
const stamp = { at: z.number(), by: text, update: text.nullable() };
const event = <T extends CaseHappening["type"], S extends z.ZodRawShape>(type: T, shape: S) =>
  z.object({ type: z.literal(type), ...shape, ...stamp });
const where = {
  words: text.exactOptional(),
  latitude: z.number().exactOptional(),
  longitude: z.number().exactOptional(),
};
const contact = { name: text, chat: text, language: text };

const visitEvents = [
  event("hand-back.checked", {
    check: text,
    outcome: z.enum(["fine", "not-fine", "could-not"]),
    why: text.exactOptional(),
  }),
  event("step.undone", { of: text }),
  event("visit.cut-short", { missing: text }),
  event("work.told", {
    minutes: z.number().exactOptional(),
    used: list(text).exactOptional(),
    back: list(text).exactOptional(),
  }),
  event("visit.foreseen", {
    causes: list(z.object({ fault: text, probability: z.number() })),
    medianMinutes: z.number(),
    p90Minutes: z.number(),
  }),
] as const;

const counterEvents = [
  event("counter.prompted", {
    about: z.enum(["ask", "heard", "book", "merge", "phone", "title", "serial"]),
  }),
  event("counter.left", {}),
  event("operator.asked", { text, photo: z.boolean() }),
  event("operator.replied", { text }),
  event("visit.booked", { from: z.number(), until: z.number() }),
  event("visit.unbooked", {}),
  event("visit.set-out", {}),
  event("payment.told", { payer: z.enum(payers), agreed: z.boolean() }),
  event("case.took-in", { other: text }),
  event("photo.marked", { file: text, observation: text, state: text }),
  event("help.given", { act: text }),
  event("case.passed-on", { to: text }),
  event("link.made", { digest: text }),
  event("operator.joined", { operator: text, ...contact }),
] as const;

export const caseEvent = exactly<CaseEvent>()(
  z.discriminatedUnion("type", [
    event("case.opened", { operator: text, ...contact, knowledge: text, seed: whole }),
    event("machine.described", { facts: someMachineFacts, profile: text.exactOptional() }),
    event("words.said", { text, unclear: meanings.exactOptional() }),
    event("safety.answered", { clear: z.boolean() }),
    event("flag.raised", { flag: text }),
    event("flag.seen", { flag: text }),
    event("equipment.told", { has: list(text) }),
    event("question.asked", {
      to: Performer,
      asking,
      revision: whole,
      before: list(line).exactOptional(),
      aboutMore: whole.exactOptional(),
    }),
    event("question.passed", {
      asking,
      why: z.enum(["dont-know", "could-not", "skipped", "back"]),
    }),
    event("question.repeated", { before: list(line) }),
    event("question.missed", {}),
    event("answer.given", { report, check: text.exactOptional() }),
    event("answer.withdrawn", {
      observation: text,
      epoch: whole,
      reporter: Reporter.exactOptional(),
    }),
    event("act.done", actDone.shape),
    event("file.received", { file: fileRef, caption: text.exactOptional(), from: Performer }),
    event("urgency.told", { urgency, words: text.exactOptional() }),
    event("where.told", where),
    event("phone.told", { phone: text }),
    event("interview.ended", { because: text }),
    event("interview.paused", {}),
    event("interview.resumed", {}),
    event("person.wanted", {}),
    event("shop.told", {}),
    event("shop.saw", {}),
    event("case.assigned", { technician: text, ...contact }),
    event("case.taken-back", {}),
    event("visit.started", {}),
    event("step.skipped", { step: text }),
    event("remedy.done", { remedy: text, fault: text, ran: z.boolean() }),
    event("note.added", { text, from: z.union([Performer, z.literal("dispatcher")]) }),
    event("cause.confirmed", { faults: list(text), how, words: text.exactOptional() }),
    event("case.closed", { end, complaint: text, cause: text, correction: text }),
    event("case.reopened", {}),
    event("photo.checked", {
      file: text,
      found: z.enum(["fine", "dark", "blurred", "tiny", "not-checked"]),
    }),
    event("operator.reminded", {}),
    event("aftermath.asked", {}),
    event("aftermath.told", { fine: z.boolean() }),
    event("language.changed", { language: z.string() }),
    event("language.heard", { language: text }),
    event("language.offered", { language: text }),
    event("operator.forgotten", {}),
    ...visitEvents,
    ...counterEvents,
  ]),
);
