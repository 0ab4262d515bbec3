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
});
