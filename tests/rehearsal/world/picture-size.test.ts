// Covers also: src/rehearsal/people/sample-picture.ts
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { samplePicture } from "../../../src/rehearsal/people/sample-picture.ts";
import { pictureSize } from "../../../src/rehearsal/world/picture-size.ts";

// The pictures are written by sharp, an independent library.
const picture = () =>
  sharp({ create: { width: 321, height: 123, channels: 3, background: "#7a7" } });

describe("the size of a picture", () => {
  it.each([
    ["JPEG", () => picture().jpeg().toBuffer()],
    ["progressive JPEG", () => picture().jpeg({ progressive: true }).toBuffer()],
    [
      "JPEG with camera data",
      () =>
        picture()
          .withExif({ IFD0: { Make: "x" } })
          .jpeg()
          .toBuffer(),
    ],
    ["PNG", () => picture().png().toBuffer()],
    ["GIF", () => picture().gif().toBuffer()],
    ["WebP", () => picture().webp().toBuffer()],
    ["lossless WebP", () => picture().webp({ lossless: true }).toBuffer()],
    ["WebP with transparency", () => picture().ensureAlpha(0.5).webp().toBuffer()],
  ])("of a %s is read from its header", async (_format, make) => {
    expect(pictureSize(await make())).toEqual({ width: 321, height: 123 });
  });

  it.each([
    ["nothing", Buffer.alloc(0)],
    ["text", Buffer.from("this is no picture, however long it may be")],
    ["an SVG drawing", Buffer.from("<svg xmlns='http://www.w3.org/2000/svg'/>")],
    ["a JPEG cut off", Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0x00, 0x10])],
  ])("of %s is unknown", (_case, bytes) => {
    expect(pictureSize(bytes)).toBeUndefined();
  });
});

it("a sample picture is a PNG that other programs read", async () => {
  const { data, info } = await sharp(samplePicture({ width: 5, height: 4, shade: 200 }))
    .raw()
    .toBuffer({ resolveWithObject: true });
  expect([info.width, info.height]).toEqual([5, 4]);
  expect(new Set(data)).toEqual(new Set([200]));
});
