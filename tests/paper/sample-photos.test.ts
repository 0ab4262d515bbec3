import { expect, it } from "vitest";
import { inspectPhoto } from "../../src/paper/photo.ts";
import { drawSamplePhotos } from "../../src/paper/sample-photos.ts";

it("the pictures for demonstrations look to us as their titles say", async () => {
  const photos = await drawSamplePhotos();
  expect(new Set(photos.map(({ id }) => id)).size).toBe(photos.length);
  for (const { id, bytes } of photos) {
    const findings = await inspectPhoto(bytes);
    expect(findings, id).toEqual({
      readable: true,
      format: "jpeg",
      tiny: false,
      blurred: id === "blurred",
      tooDark: id === "dark",
    });
  }
});
