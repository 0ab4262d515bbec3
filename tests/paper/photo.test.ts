// Also covers sharpness.ts, by which a blur is told.
import sharp, { type Sharp } from "sharp";
import { describe, expect, it } from "vitest";
import { inspectPhoto, usualPhotoLimits } from "../../src/paper/photo.ts";
import { renderPng } from "../../src/paper/png.ts";
import { svgText } from "../../src/paper/svg.ts";

/** A scene with writing on it: 1280 × 960 px, letters 20 to 60 px high. */
async function scene(ink = "#222222", ground = "#999988"): Promise<Sharp> {
  const lines = [20, 30, 40, 60].flatMap((size, column) =>
    Array.from({ length: 3 }, (_, row) =>
      svgText("Fuse 10 A, 12.4 V", { x: 40, y: 80 * (3 * column + row + 1) - 10, size }),
    ),
  );
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="1280" height="960"><rect width="1280"
    height="960" fill="${ground}"/><g fill="${ink}">${lines.join("")}</g></svg>`;
  return sharp(await renderPng(svg));
}

const good = { readable: true, format: "jpeg", tooDark: false, blurred: false, tiny: false };

describe("the look at a photo", () => {
  it("finds nothing wrong with a good one, in the three formats", async () => {
    const picture = await scene();
    expect(await inspectPhoto(await picture.jpeg().toBuffer())).toEqual(good);
    expect(await inspectPhoto(await picture.png().toBuffer())).toEqual({ ...good, format: "png" });
    expect(await inspectPhoto(await picture.webp().toBuffer())).toEqual({
      ...good,
      format: "webp",
    });
  });

  it("finds a blur that hides the writing, in light and in shade", async () => {
    for (const shade of [1, 0.5]) {
      const sharpOne = (await scene()).linear(shade, 0);
      expect((await inspectPhoto(await sharpOne.jpeg().toBuffer())).blurred).toBe(false);
      // The look is taken at half this size, so this is a blur of 4 px there.
      const blurred = (await scene()).linear(shade, 0).blur(8);
      expect((await inspectPhoto(await blurred.jpeg().toBuffer())).blurred).toBe(true);
    }
  });

  it("does not mind a blurred ground behind a sharp thing", async () => {
    const near = await (await scene())
      .extract({ left: 0, top: 200, width: 640, height: 480 })
      .png();
    const photo = sharp(await (await scene()).blur(12).png().toBuffer())
      .composite([{ input: await near.toBuffer(), left: 320, top: 240 }])
      .jpeg();
    expect((await inspectPhoto(await photo.toBuffer())).blurred).toBe(false);
  });

  it("does not take a date printed into a corner for sharpness", async () => {
    const date = await (await scene())
      .extract({ left: 40, top: 300, width: 200, height: 60 })
      .png();
    const photo = sharp(await (await scene()).blur(12).png().toBuffer())
      .composite([{ input: await date.toBuffer(), left: 1070, top: 890 }])
      .jpeg();
    expect((await inspectPhoto(await photo.toBuffer())).blurred).toBe(true);
  });

  it("calls a photo dark, not blurred, where there was no light", async () => {
    const night = await (await scene("#0a0a0a", "#181818")).jpeg().toBuffer();
    expect(await inspectPhoto(night)).toEqual({ ...good, tooDark: true });
    const lit = await (await scene("#dddddd", "#333333")).jpeg().toBuffer();
    expect((await inspectPhoto(lit)).tooDark).toBe(false);
  });

  it("calls a photo tiny where details cannot be made out", async () => {
    const small = await (await scene()).resize(300, 400).jpeg().toBuffer();
    expect((await inspectPhoto(small)).tiny).toBe(true);
    const limits = { ...usualPhotoLimits, leastSide: 200 };
    expect((await inspectPhoto(small, limits)).tiny).toBe(false);
  });

  it("opens nothing but the three formats, nothing damaged and nothing huge", async () => {
    const picture = await scene();
    const jpeg = await picture.jpeg().toBuffer();
    const bad = [
      new Uint8Array(0),
      Buffer.from("no picture"),
      Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"></svg>'),
      await picture.tiff().toBuffer(),
      await picture.gif().toBuffer(),
      jpeg.subarray(0, jpeg.length / 2),
    ];
    for (const bytes of bad) expect((await inspectPhoto(bytes)).readable).toBe(false);
    const limits = { ...usualPhotoLimits, mostPixels: 1_000_000 };
    expect((await inspectPhoto(jpeg, limits)).readable).toBe(false);
  });
});
