import { crc32, deflateSync } from "node:zlib";

export interface SamplePictureOptions {
  /** Pixels; 640 × 480 when missing. */
  width?: number;
  height?: number;
  /** Brightness 0 (black) to 255 (white); pictures of different shades are different files. */
  shade?: number;
}

const PNG_SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
/** Eight bits per pixel, shades of grey, no interlacing (PNG specification, IHDR). */
const GREY_8_BIT = [8, 0, 0, 0, 0];

/** A real PNG picture in one shade of grey, for tests and demonstrations that need a photo. */
export function samplePicture(options: SamplePictureOptions = {}): Buffer {
  const { width = 640, height = 480, shade = 128 } = options;
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set(GREY_8_BIT, 8);
  // Each line starts with its filter type; 0 is none.
  const line = Buffer.alloc(width + 1, shade);
  line.writeUInt8(0, 0);
  const pixels = deflateSync(Buffer.concat(Array.from({ length: height }, () => line)));
  return Buffer.concat([
    PNG_SIGNATURE,
    chunk("IHDR", header),
    chunk("IDAT", pixels),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
}
