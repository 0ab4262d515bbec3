/** Size of a picture in pixels. */
export interface PictureSize {
  width: number;
  height: number;
}

const PNG_SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/**
 * Reads the size of a JPEG, PNG, GIF or WebP picture from its header.
 * Sources: PNG and GIF89a specifications, ITU-T T.81 B.2.2 (JPEG frame header), RFC 9649 (WebP).
 * @returns undefined when the bytes are no such picture
 */
export function pictureSize(bytes: Buffer): PictureSize | undefined {
  if (bytes.subarray(0, 8).equals(PNG_SIGNATURE) && bytes.length >= 24) {
    return { width: bytes.readUInt32BE(16), height: bytes.readUInt32BE(20) };
  }
  if (/^GIF8[79]a/.test(bytes.toString("latin1", 0, 6)) && bytes.length >= 10) {
    return { width: bytes.readUInt16LE(6), height: bytes.readUInt16LE(8) };
  }
  if (bytes.length > 4 && bytes.readUInt16BE(0) === 0xffd8) return jpegSize(bytes);
  const isWebp = bytes.toString("latin1", 0, 4) === "RIFF" && bytes.length >= 30;
  return isWebp && bytes.toString("latin1", 8, 12) === "WEBP" ? webpSize(bytes) : undefined;
}

/** Walks the segments up to a start-of-frame marker (C0 to CF without C4, C8 and CC). */
function jpegSize(bytes: Buffer): PictureSize | undefined {
  let at = 2;
  while (at + 9 < bytes.length) {
    if (bytes.readUInt8(at) !== 0xff) return undefined;
    const marker = bytes.readUInt8(at + 1);
    const isFrame =
      marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
    if (isFrame) return { height: bytes.readUInt16BE(at + 5), width: bytes.readUInt16BE(at + 7) };
    at += marker === 0xff ? 1 : 2 + bytes.readUInt16BE(at + 2);
  }
  return undefined;
}

function webpSize(bytes: Buffer): PictureSize | undefined {
  switch (bytes.toString("latin1", 12, 16)) {
    case "VP8 ":
      return { width: bytes.readUInt16LE(26) & 0x3fff, height: bytes.readUInt16LE(28) & 0x3fff };
    case "VP8L": {
      const bits = bytes.readUInt32LE(21);
      return { width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 };
    }
    case "VP8X":
      return { width: bytes.readUIntLE(24, 3) + 1, height: bytes.readUIntLE(27, 3) + 1 };
    default:
      return undefined;
  }
}
