// Also covers png.ts, which turns the drawing into an image.
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { type CausesPicture, drawCauses } from "../../src/paper/causes-picture.ts";

const plain: CausesPicture = { title: "Causes", bars: [], rightToLeft: false };
const bar = (share: number, name = "Earth strap") => ({ name, share, shareText: "x" });

async function pixels(picture: CausesPicture) {
  const image = sharp(await drawCauses(picture)).greyscale();
  const { data, info } = await image.raw().toBuffer({ resolveWithObject: true });
  return {
    width: info.width,
    height: info.height,
    row: (y: number) => data.subarray(y * info.width, (y + 1) * info.width),
    ink: data.reduce((sum, level) => sum + (level < 128 ? 1 : 0), 0),
  };
}
type Pixels = Awaited<ReturnType<typeof pixels>>;

/** First and last column of the longest unbroken black stretch inside the card's border. */
function longestStretch(image: Pixels): { from: number; length: number } {
  let best = { from: 0, length: 0 };
  for (let y = 30; y < image.height - 30; y++) {
    let length = 0;
    for (const [x, level] of image.row(y).entries()) {
      length = level < 128 && x > 20 && x < image.width - 20 ? length + 1 : 0;
      if (length > best.length && !isFrame(image, x, y)) best = { from: x - length + 1, length };
    }
  }
  return best;
}

/** Width of the frame round a bar, px. */
const FRAME = 2;

/** The thin frame of a bar is black too, but only two pixels high. */
function isFrame(image: Pixels, x: number, y: number): boolean {
  return (image.row(y - 8)[x] ?? 255) > 128 || (image.row(y + 8)[x] ?? 255) > 128;
}

describe("the picture of the causes", () => {
  it("is a white card with a black border, for dark and light grounds", async () => {
    const image = await pixels({ ...plain, bars: [bar(0.5)] });
    expect(image.width).toBe(1080);
    expect(image.row(0).every((level) => level === 0)).toBe(true);
    expect(image.row(20)[540]).toBe(255);
    const { isOpaque } = await sharp(await drawCauses(plain)).stats();
    expect(isOpaque).toBe(true);
  });

  it("draws bars as long as the shares are big, from the side where a line begins", async () => {
    const half = longestStretch(await pixels({ ...plain, bars: [bar(0.5)] }));
    const quarter = longestStretch(await pixels({ ...plain, bars: [bar(0.25)] }));
    expect(half.length / quarter.length).toBeCloseTo(2, 1);
    expect(Math.abs(half.from - 56)).toBeLessThanOrEqual(FRAME);
    const mirrored = longestStretch(
      await pixels({ ...plain, bars: [bar(0.5)], rightToLeft: true }),
    );
    expect(Math.abs(mirrored.from + mirrored.length - (1080 - 56))).toBeLessThanOrEqual(FRAME);
  });

  it("draws what is no number as nothing, and more than all as all", async () => {
    const none = longestStretch(await pixels({ ...plain, bars: [bar(Number.NaN)] }));
    const all = longestStretch(await pixels({ ...plain, bars: [bar(7)] }));
    expect(none.length).toBeLessThan(100);
    expect(Math.abs(all.length - (1080 - 2 * 56))).toBeLessThanOrEqual(2 * FRAME);
  });

  it("writes words of the right-to-left scripts", async () => {
    const empty = await pixels({ ...plain, rightToLeft: true, bars: [bar(0.5, " ")] });
    const hebrew = await pixels({ ...plain, rightToLeft: true, bars: [bar(0.5, "כבל הארקה")] });
    const arabic = await pixels({ ...plain, rightToLeft: true, bars: [bar(0.5, "شريط التأريض")] });
    expect(hebrew.ink).toBeGreaterThan(empty.ink + 1000);
    expect(arabic.ink).toBeGreaterThan(empty.ink + 1000);
  });

  it("leaves out what it cannot write, instead of drawing empty boxes", async () => {
    const clean = await drawCauses({ ...plain, bars: [bar(0.5, "Anna")] });
    const emoji = await drawCauses({ ...plain, bars: [bar(0.5, "Anna 🚜")] });
    expect(Buffer.compare(clean, emoji)).toBe(0);
  });

  it("takes any text, and stays within what Telegram takes as a photo", async () => {
    const long = "<b>&\u0000 a very long text with many words ".repeat(20);
    const bars = Array.from({ length: 30 }, () => ({ ...bar(0.1, long), reason: long }));
    const { width, height } = await pixels({
      ...plain,
      title: long,
      subtitle: long,
      note: long,
      bars,
    });
    // Bot API, sendPhoto: width and height together at most 10,000, ratio at most 20.
    expect(width + height).toBeLessThanOrEqual(10_000);
    expect(height / width).toBeLessThan(20);
  });
});
