import { z } from "zod";
import type {
  Arg,
  CancelIf,
  Effect,
  FileRef,
  Message,
  OutboxEntry,
  Phrase,
  Press,
  Unit,
} from "../domain/effects.ts";
import type { Paper } from "../domain/paper.ts";
import { Drawing, MachineKindId } from "../domain/vocabulary.ts";
import { exactly, list, text, whole } from "./exactly.ts";

const unit = exactly<Unit>()(
  z.enum(["V", "A", "°C", "h", "bar", "SG", "Ω", "rpm", "min", "percent", "km", "dB"]),
);

const arg: z.ZodType<Arg> = z.lazy(() =>
  z.union([
    text,
    z.number(),
    z.object({ know: text }),
    z.object({ phrase }),
    z.object({ quantity: z.number(), unit, digits: whole.exactOptional() }),
    z.object({ time: z.number(), style: z.enum(["day", "hour", "day-hour"]) }),
    z.object({ list: list(arg), parted: z.literal(true).exactOptional() }),
  ]),
);

const phrase: z.ZodType<Phrase> = z.union([
  z.object({ key: text, args: z.record(text, arg).exactOptional() }),
  z.object({ know: text }),
  z.object({ raw: text }),
]);

const press = exactly<Press>()(
  z.object({
    case: text.exactOptional(),
    revision: z.int(),
    act: text,
    value: text.exactOptional(),
  }),
);

export const fileRef = exactly<FileRef>()(
  z.object({
    id: text,
    kind: z.enum([
      "photo",
      "voice",
      "audio",
      "video",
      "video-note",
      "animation",
      "document",
      "sticker",
    ]),
    mime: text.exactOptional(),
    bytes: whole.exactOptional(),
  }),
);

export const line = z.object({
  say: phrase,
  style: z.enum(["heading", "bullet", "quote", "caution", "step"]).exactOptional(),
  gap: z.boolean().exactOptional(),
});

const sheetLine = z.object({
  words: phrase,
  style: z.enum(["step", "tick", "turn", "caution", "quote"]).exactOptional(),
});
const bar = z.object({
  name: phrase,
  share: z.number(),
  shareText: phrase,
  reason: phrase.exactOptional(),
  hollow: z.boolean().exactOptional(),
});
const circuitWish = z.object({
  title: phrase,
  kind: text,
  fuel: text.exactOptional(),
  volts: z.number().exactOptional(),
  fault: text.exactOptional(),
  headings: z.object({ supply: phrase, control: phrase, power: phrase }).exactOptional(),
  readings: list(z.object({ point: text, words: phrase })).exactOptional(),
});

const paper = exactly<Paper<Phrase>>()(
  z.discriminatedUnion("kind", [
    z.object({
      kind: z.literal("calendar"),
      uid: text,
      sequence: whole,
      made: z.number(),
      from: z.number(),
      until: z.number(),
      cancelled: z.boolean(),
      title: phrase,
      where: phrase.exactOptional(),
      about: list(phrase),
      place: z.object({ latitude: z.number(), longitude: z.number() }).exactOptional(),
    }),
    z.object({
      kind: z.literal("causes"),
      name: text,
      title: phrase,
      subtitle: phrase.exactOptional(),
      bars: list(bar),
      note: phrase.exactOptional(),
    }),
    z.object({
      ...{ kind: z.literal("sticker"), name: text, title: phrase, link: text },
      lines: list(phrase),
    }),
    z.object({ kind: z.literal("circuit"), name: text, circuit: circuitWish }),
    z.object({
      kind: z.literal("table"),
      name: text,
      rows: list(list(z.union([text, z.number(), z.null()]))),
    }),
    z.object({
      kind: z.literal("sheet"),
      name: text,
      made: z.number(),
      title: phrase,
      head: list(sheetLine),
      causes: z.object({ title: phrase, bars: list(bar) }).exactOptional(),
      circuit: circuitWish.exactOptional(),
      sections: list(z.object({ heading: phrase, lines: list(sheetLine) })),
    }),
  ]),
);

const shared = { share: z.enum(["location", "contact"]), label: phrase };

const message = exactly<Message>()(
  z.object({
    lines: list(line),
    buttons: list(list(z.object({ label: phrase, press }))).exactOptional(),
    offer: z.object({ ...shared, also: z.object(shared).exactOptional() }).exactOptional(),
    endOffer: z.boolean().exactOptional(),
    file: fileRef.exactOptional(),
    place: z.object({ latitude: z.number(), longitude: z.number() }).exactOptional(),
    picture: z.object({ drawing: Drawing, machine: MachineKindId }).exactOptional(),
    card: z.object({ name: text, phone: text }).exactOptional(),
    attachment: z.object({ name: text, text }).exactOptional(),
    paper: paper.exactOptional(),
  }),
);

const to = z.object({ chat: text, topic: z.int().exactOptional() });

const effect = exactly<Effect>()(
  z.discriminatedUnion("do", [
    z.object({
      do: z.literal("say"),
      to,
      language: text,
      message,
      slot: text.exactOptional(),
      quiet: z.boolean().exactOptional(),
    }),
    z.object({
      do: z.literal("revise"),
      to,
      language: text,
      message,
      slot: text,
      quiet: z.boolean().exactOptional(),
    }),
    z.object({
      do: z.literal("tell"),
      document: z.object({ kind: z.enum(["case", "person", "shop"]), id: text }),
      event: z.unknown(),
    }),
  ]),
);

const cancelIf = exactly<CancelIf>()(
  z.union([
    z.object({ revisionAbove: z.int() }),
    z.object({ closed: z.literal(true) }),
    z.object({ flagSeen: text }),
  ]),
);

export const outboxEntry = exactly<OutboxEntry>()(
  z.object({
    id: text,
    effect,
    sequence: whole,
    notBefore: z.number(),
    cancelIf: cancelIf.exactOptional(),
    attempts: whole,
    part: whole.exactOptional(),
  }),
);
