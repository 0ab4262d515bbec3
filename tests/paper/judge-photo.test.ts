import { describe, expect, it } from "vitest";
import { judgePhoto } from "../../src/paper/judge-photo.ts";
import { drawSamplePhotos } from "../../src/paper/sample-photos.ts";

describe("what a photo is worth", () => {
  it("is told in one word; what cannot be opened is passed on unseen", async () => {
    const photos = await drawSamplePhotos();
    const judged = await Promise.all(photos.map(({ bytes }) => judgePhoto(bytes)));
    expect(judged).toContain("fine");
    expect(judged).toContain("dark");
    expect(judged).toContain("blurred");
    expect(await judgePhoto(new TextEncoder().encode("no picture"))).toBe("not-checked");
  });

  it("is left to people where a phone sends HEIC", async () => {
    // The file type box of a HEIC picture (ISO/IEC 23008-12, brand "heic"), and nothing behind it.
    const box = "\0\0\0\u0018ftypheic\0\0\0\0mif1heic";
    expect(await judgePhoto(new TextEncoder().encode(box))).toBe("not-checked");
  });
});
