import jsQR from "jsqr";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import type { MachineSticker } from "../../src/domain/paper.ts";
import { renderPng } from "../../src/paper/png.ts";
import { createPrinter } from "../../src/paper/print-paper.ts";
import { stickerSvg } from "../../src/paper/sticker.ts";

const sticker = (title: string): MachineSticker<string> => ({
  kind: "sticker",
  name: "sticker-1",
  title,
  link: "https://t.me/quite_a_long_name_of_a_bot?start=m-abcdefghijklmnopqrst",
  lines: ["Does it not start? Scan this.", "Hill Farm workshop, 555 0100"],
});

/** What a reader of codes makes of the printed page, seen from a little way off. */
async function scanned(
  title: string,
  rightToLeft = false,
  width = 420,
): Promise<string | undefined> {
  const png = await renderPng(stickerSvg(sticker(title), rightToLeft));
  const image = sharp(png).resize({ width }).ensureAlpha().raw();
  const { data, info } = await image.toBuffer({ resolveWithObject: true });
  return jsQR.default(new Uint8ClampedArray(data), info.width, info.height)?.data;
}

describe("a machine's sticker", () => {
  // Read back by another program: the package jsqr.
  it("can be scanned, also small, with a long name, and from the right", async () => {
    const { link } = sticker("");
    expect(await scanned("Baler tractor")).toBe(link);
    expect(await scanned("Baler tractor", false, 260)).toBe(link);
    expect(await scanned("The old diesel tractor behind the second barn of the upper farm")).toBe(
      link,
    );
    expect(await scanned("الجرار القديم", true)).toBe(link);
  }, 20_000);

  it("is a page to print", async () => {
    const { name, bytes } = await createPrinter()({
      paper: sticker("Baler tractor"),
      language: "en",
      rightToLeft: false,
    });
    expect(name).toBe("sticker-1.pdf");
    const text = Buffer.from(bytes).toString("latin1");
    expect(text.startsWith("%PDF-")).toBe(true);
    expect(text.match(/\/Type \/Page\b/g)).toHaveLength(1);
  }, 20_000);
});
