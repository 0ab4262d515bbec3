import type { KnownMachine } from "../domain/case-events.ts";
import type { Member, Sticker } from "../domain/documents.ts";
import { foldCase } from "../domain/fold-case.ts";
import type { Incoming } from "../domain/incoming.ts";
import { phrase } from "../talk/decision.ts";
import { type Desk, machineOf } from "../talk/desk.ts";
import { may } from "../talk/rights.ts";
import { stickerEffects } from "../talk/sticker.ts";
import type { Commit } from "./commit.ts";
import type { Directory } from "./directory.ts";
import { SHOP } from "./invites.ts";
import type { Chance, Received } from "./ports.ts";

/** By this a link of a sticker is told from an invitation. */
const PREFIX = "m-";
/** With the prefix well within the 64 characters that a start link may carry; 120 bits. */
const CODE_CHARACTERS = 20;

/** Printed codes on machines: whoever scans one reports trouble on that machine. */
export interface Stickers {
  /** Makes the sticker of a case's machine, the same one each time. */
  make(id: string, incoming: Incoming, member: Member): Promise<Received>;
  /** The machine that a start link names; null: it is no such link, or nobody's. */
  machineOf(argument: string): KnownMachine | null;
}

export interface StickersParts {
  readonly directory: Directory;
  readonly commit: Commit;
  readonly chance: Chance;
  readonly desk: (now: number) => Desk;
  readonly linkFor: (token: string) => string;
}

export function createStickers(parts: StickersParts): Stickers {
  const { directory, commit, chance } = parts;

  /** The machine as the case knows it; null where its kind is not known yet. */
  async function machineIn(id: string): Promise<KnownMachine | null> {
    let machine: KnownMachine | null = null;
    await commit({ kind: "case", id }, null, (document) => {
      if (document === null) return null;
      const state = foldCase(id, document.events);
      const facts = machineOf(state);
      if (state.machine.kind !== undefined) {
        machine = { id: state.profile ?? id, title: facts.words ?? "", facts };
      }
      return null;
    });
    return machine;
  }

  return {
    async make(id, incoming, member) {
      if (!may(member.role, "ask")) return { toast: phrase("not-allowed") };
      const machine = await machineIn(id);
      if (machine === null) return { toast: phrase("sticker-too-early") };
      const fresh = chance.token().slice(0, CODE_CHARACTERS);
      await commit({ kind: "shop", id: SHOP }, incoming.update, (shop, now) => {
        if (shop === null) return null;
        const others = (shop.stickers ?? []).filter((one) => one.machine.id !== machine.id);
        const known = shop.stickers?.find((one) => one.machine.id === machine.id);
        const sticker: Sticker = { code: known?.code ?? fresh, machine };
        const { chat, topic } = incoming;
        const to = { chat, language: member.language, ...(topic === undefined ? {} : { topic }) };
        const link = parts.linkFor(PREFIX + sticker.code);
        const effects = stickerEffects(to, { sticker, link, shop: parts.desk(now).shop });
        return { body: { ...shop, stickers: [...others, sticker] }, effects };
      });
      return {};
    },

    machineOf(argument) {
      if (!argument.startsWith(PREFIX)) return null;
      const code = argument.slice(PREFIX.length);
      const found = directory.shop()?.stickers?.find((one) => one.code === code);
      return found?.machine ?? null;
    },
  };
}
