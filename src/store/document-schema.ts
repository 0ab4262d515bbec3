import { z } from "zod";
import type { DocumentKind, DocumentOf } from "../cases/ports.ts";
import type {
  CaseDocument,
  DutyShift,
  Invite,
  MachineProfile,
  Member,
  Noting,
  PersonDocument,
  Role,
  SentMessage,
  ShopDocument,
  Sticker,
} from "../domain/documents.ts";
import { caseEvent } from "./case-event-schema.ts";
import { outboxEntry } from "./effect-schema.ts";
import { machineFacts } from "./evidence-schema.ts";
import { exactly, list, text, whole } from "./exactly.ts";

const role = exactly<Role>()(z.enum(["owner", "dispatcher", "technician"]));
const sentMessage = exactly<SentMessage>()(z.object({ chat: text, message: text }));
const machine = exactly<MachineProfile>()(z.object({ id: text, title: text, facts: machineFacts }));
const member = exactly<Member>()(
  z.object({
    ...{ person: text, name: text, chat: text, language: text, role },
    skills: list(text).exactOptional(),
  }),
);
const invite = exactly<Invite>()(z.object({ digest: text, role, expires: z.number(), by: text }));

const dutyShift = exactly<DutyShift>()(
  z.object({ person: text, from: z.number(), until: z.number() }),
);

const sticker = exactly<Sticker>()(z.object({ code: text, machine }));

const noting = exactly<Noting>()(
  z.object({ machine: text, about: z.enum(["title", "serial"]), at: z.number() }),
);

/** The file's own `format` is looked at before; here it is any number. */
const ledger = {
  format: whole,
  id: text,
  version: whole,
  updates: list(text),
  outbox: list(outboxEntry),
  sent: z.record(text, sentMessage),
};

/** What a document on disk must look like, by kind. */
export const documentSchemas: { readonly [K in DocumentKind]: z.ZodType<DocumentOf<K>> } = {
  case: exactly<CaseDocument>()(
    z.object({ ...ledger, kind: z.literal("case"), events: list(caseEvent) }),
  ),
  person: exactly<PersonDocument>()(
    z.object({
      ...ledger,
      kind: z.literal("person"),
      name: text,
      chat: text,
      language: text,
      machines: list(machine),
      has: list(text).exactOptional(),
      reachable: z.boolean(),
      lookedAt: z.number().exactOptional(),
      noting: noting.nullable().exactOptional(),
    }),
  ),
  shop: exactly<ShopDocument>()(
    z.object({
      ...ledger,
      kind: z.literal("shop"),
      members: list(member),
      invites: list(invite),
      counter: z.object({ chat: text, topic: z.int().exactOptional() }).exactOptional(),
      duty: list(dutyShift).exactOptional(),
      stickers: list(sticker).exactOptional(),
      secret: text,
    }),
  ),
};
