import type { Sticker } from "../domain/documents.ts";
import type { PlannedEffect } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { ShopSettings } from "../domain/settings.ts";
import { line, phrase, say } from "./decision.ts";

interface Reader {
  readonly chat: string;
  readonly language: string;
  readonly topic?: number;
}

/** The page to print, for whoever asked for it. */
export function stickerEffects(
  to: Reader,
  given: { readonly sticker: Sticker; readonly link: string; readonly shop: ShopSettings },
): PlannedEffect[] {
  const { sticker, link, shop } = given;
  const { machine, code } = sticker;
  const kind = { know: wordKey("machine", machine.facts.kind) };
  const paper = {
    ...({ kind: "sticker", name: `sticker-${code.slice(0, 6)}`, link } as const),
    title: machine.title === "" ? kind : { raw: machine.title },
    lines: [phrase("sticker-scan"), phrase("sticker-shop", { shop: shop.name, phone: shop.phone })],
  };
  return [say(to, { lines: [line(phrase("sticker-here"))], paper })];
}
