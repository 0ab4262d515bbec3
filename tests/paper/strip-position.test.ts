import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { stripPosition } from "../../src/paper/strip-position.ts";

/** A colourful picture, so that a change of any pixel or of the colours shows. */
function picture() {
  const [width, height] = [97, 61];
  const data = Uint8Array.from(
    { length: width * height * 3 },
    (_, at) => (at * 31 + at ** 2) % 256,
  );
  return sharp(data, { raw: { width, height, channels: 3 } });
}

const place = {
  IFD0: { Artist: "Anna Berg", ImageDescription: "lower meadow" },
  IFD3: {
    GPSLatitudeRef: "N",
    GPSLatitude: "47/1 30/1 12/1",
    GPSLongitudeRef: "E",
    GPSLongitude: "9/1 5/1 3/1",
  },
};

const pixels = (bytes: Uint8Array) => sharp(bytes).raw().toBuffer();
const upright = (bytes: Uint8Array) => sharp(bytes).autoOrient().raw().toBuffer();

async function stripped(bytes: Uint8Array): Promise<Buffer> {
  const result = await stripPosition(bytes);
  expect(result).not.toBeNull();
  return Buffer.from(result ?? []);
}

describe("taking the position out of a photo", () => {
  const formats = [
    ["jpeg", () => picture().withExif(place).jpeg()],
    ["progressive jpeg", () => picture().withExif(place).jpeg({ progressive: true })],
    ["png", () => picture().withExif(place).png()],
    ["webp", () => picture().withExif(place).webp()],
    ["lossless webp", () => picture().withExif(place).webp({ lossless: true })],
  ] as const;

  it.each(formats)(
    "leaves the pixels of a %s as they were, and none of its notes",
    async (_, make) => {
      const before = await make().toBuffer();
      expect((await sharp(before).metadata()).exif).toBeDefined();
      expect(before.includes("Anna Berg")).toBe(true);
      const after = await stripped(before);
      const { exif, xmp } = await sharp(after).metadata();
      expect([exif, xmp]).toEqual([undefined, undefined]);
      expect(after.includes("Anna Berg")).toBe(false);
      expect(after.includes("meadow")).toBe(false);
      expect(Buffer.compare(await pixels(after), await pixels(before))).toBe(0);
    },
  );

  it("leaves a JPEG the right way up, without its position", async () => {
    const before = await picture()
      .withExif(place)
      .withMetadata({ orientation: 6 })
      .jpeg()
      .toBuffer();
    const after = await stripped(before);
    const { orientation, exif } = await sharp(after).metadata();
    expect(orientation).toBe(6);
    expect(exif?.length).toBeLessThan(40);
    expect(Buffer.compare(await upright(after), await upright(before))).toBe(0);
  });

  it("leaves the colours of a picture with a profile of its own as they were", async () => {
    const before = await picture().withIccProfile("p3").withExif(place).jpeg().toBuffer();
    const after = await stripped(before);
    const kept = (await sharp(after).metadata()).icc;
    expect(kept?.length).toBe((await sharp(before).metadata()).icc?.length);
  });

  it("takes away comments and whatever hangs on behind the picture", async () => {
    const plain = await picture().jpeg().toBuffer();
    const note = Buffer.from("at the lower meadow");
    const comment = Buffer.concat([Buffer.from([0xff, 0xfe, 0, note.length + 2]), note]);
    const noted = Buffer.concat([plain.subarray(0, 2), comment, plain.subarray(2), note]);
    expect((await stripped(noted)).includes("meadow")).toBe(false);
    expect(Buffer.compare(await stripped(noted), await stripped(plain))).toBe(0);
  });

  it("does nothing more when done twice", async () => {
    for (const [, make] of formats) {
      const once = await stripped(await make().toBuffer());
      expect(Buffer.compare(await stripped(once), once)).toBe(0);
    }
  });

  it("refuses what is no whole picture of a known format", async () => {
    const jpeg = await picture().jpeg().toBuffer();
    const png = await picture().png().toBuffer();
    expect(await stripPosition(Buffer.from("no picture"))).toBeNull();
    expect(await stripPosition(await picture().tiff().toBuffer())).toBeNull();
    expect(await stripPosition(jpeg.subarray(0, jpeg.length / 2))).toBeNull();
    expect(await stripPosition(png.subarray(0, png.length / 2))).toBeNull();
  });
});
