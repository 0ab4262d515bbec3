import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { drawings, machineKinds } from "../../src/domain/vocabulary.ts";
import { drawDrawing, drawingSvg } from "../../src/paper/drawings.ts";

describe("the drawings", () => {
  it.each(drawings)(
    "shows %s as a picture that is mostly white and has a black frame",
    async (id) => {
      const png = await drawDrawing(id, "compact-tractor");
      const { data, info } = await sharp(png)
        .greyscale()
        .raw()
        .toBuffer({ resolveWithObject: true });
      const white = data.filter((level) => level > 240).length / data.length;
      expect(white).toBeGreaterThan(0.6);
      expect(data[Math.floor(info.height / 2) * info.width + 8]).toBeLessThan(60);
    },
  );

  it("tells the parts apart, and where they are on each shape of machine", () => {
    const cards = new Set(
      drawings.flatMap((id) => machineKinds.map((kind) => drawingSvg(id, kind))),
    );
    // Five shapes of machines, five drawings.
    expect(cards.size).toBe(25);
  });

  it("needs no words: only numbers and the signs of the poles stand in it", () => {
    for (const id of drawings) {
      const texts = [...drawingSvg(id, "other").matchAll(/<text[^>]*>([^<]*)</g)].map((match) =>
        (match[1] ?? "").replace(/[\u2066-\u2069]/g, ""),
      );
      expect(texts.length).toBeGreaterThan(1);
      expect(texts.filter((text) => !/^(\d|\+|−)$/.test(text))).toEqual([]);
    }
  });
});
