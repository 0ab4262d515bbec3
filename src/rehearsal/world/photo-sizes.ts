import type { PhotoSize } from "@grammyjs/types";
import type { FileBook, StoredFile } from "./files.ts";
import type { PictureSize } from "./picture-size.ts";

/** The longer sides, in pixels, that the platform makes of a photo (from memory). */
const LONGER_SIDES = [90, 320, 800, 1280];

/**
 * The sizes in which a photo is offered, smallest first, the picture itself last. This server
 * cannot shrink pictures: each size is a file of its own id, but holds the bytes of the original.
 */
export class PhotoShelf {
  readonly #sizes = new Map<string, PhotoSize[]>();
  readonly #files: FileBook;

  constructor(files: FileBook) {
    this.#files = files;
  }

  /** Stores a picture as a photo. */
  add(bytes: Buffer, name: string, size: PictureSize): PhotoSize[] {
    const longer = Math.max(size.width, size.height);
    const smaller = LONGER_SIDES.filter((side) => side < longer).map((side) => ({
      width: Math.max(1, Math.round((size.width * side) / longer)),
      height: Math.max(1, Math.round((size.height * side) / longer)),
    }));
    const sizes = [...smaller, size].map(({ width, height }) => {
      const variant = `${width}x${height}`;
      const file = this.#files.add({ kind: "photo", name, bytes, variant });
      return photoSize(file, { width, height });
    });
    for (const { file_id: id } of sizes) this.#sizes.set(id, sizes);
    return sizes;
  }

  /** All sizes of the photo that has a size of this file id. */
  sizesOf(fileId: string): PhotoSize[] | undefined {
    return this.#sizes.get(fileId);
  }
}

function photoSize(file: StoredFile, { width, height }: PictureSize): PhotoSize {
  return {
    file_id: file.fileId,
    file_unique_id: file.uniqueId,
    width,
    height,
    file_size: file.size,
  };
}
