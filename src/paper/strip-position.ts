import sharp from "sharp";

/** The picture without what was noted in it; null where it is no picture of a known format. */
type Stripped = Uint8Array | null;

/**
 * Takes out of a photo where and when it was taken, with what, and everything else that was noted
 * beside the picture (EXIF, XMP, IPTC, comments, thumbnails, films hung on behind). The picture
 * itself is not touched: it decodes to the same pixels, and a JPEG stays the right way up.
 * @returns null for what is no JPEG, PNG or WebP, or is damaged
 */
export async function stripPosition(bytes: Uint8Array): Promise<Stripped> {
  try {
    const { format, orientation } = await sharp(bytes).metadata();
    if (format === "jpeg") return stripJpeg(bytes, orientation ?? 1);
    if (format === "png") return stripPng(bytes);
    return format === "webp" ? stripWebp(bytes) : null;
  } catch {
    return null;
  }
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

function textAt(bytes: Uint8Array, at: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + length));
}

const START_OF_SCAN = 0xda;
const END_OF_IMAGE = 0xd9;
const COMMENT = 0xfe;
const APP0 = 0xe0;
const APP2 = 0xe2;
const APP15 = 0xef;
/** Says how the colours are coded; without it they come out wrong. */
const APP14 = 0xee;

/** Keeps tables, scans, JFIF, the colour profile and the colour coding. ITU-T T.81, annex B. */
function stripJpeg(bytes: Uint8Array, orientation: number): Stripped {
  const view = viewOf(bytes);
  const parts = [bytes.subarray(0, 2)];
  let oriented = orientation === 1;
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    if (marker === END_OF_IMAGE) return Buffer.concat([...parts, bytes.subarray(at, at + 2)]);
    const length = marker === 0xff ? -1 : view.getUint16(at + 2);
    if (!oriented && marker !== APP0) {
      parts.push(orientationSegment(orientation));
      oriented = true;
    }
    const end = marker === START_OF_SCAN ? scanEnd(bytes, at + 2 + length) : at + 2 + length;
    if (keepsSegment(bytes, at)) parts.push(bytes.subarray(at, end));
    at = end;
  }
  const closed = at + 2 <= bytes.length && view.getUint8(at + 1) === END_OF_IMAGE;
  return closed ? Buffer.concat([...parts, bytes.subarray(at, at + 2)]) : null;
}

function keepsSegment(bytes: Uint8Array, at: number): boolean {
  const marker = bytes[at + 1] ?? 0;
  if (marker === COMMENT) return false;
  if (marker < APP0 || marker > APP15) return true;
  if (marker === APP2) return textAt(bytes, at + 4, 11) === "ICC_PROFILE";
  return marker === APP0 || marker === APP14;
}

/** Where the coded picture ends: at the next marker that does not belong to it. */
function scanEnd(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.length; at++) {
    if (bytes[at] !== 0xff) continue;
    const next = bytes[at + 1] ?? 0;
    const insideScan = next === 0 || next === 0xff || (next >= 0xd0 && next <= 0xd7);
    if (!insideScan) return at;
  }
  return bytes.length;
}

/** An EXIF block that holds nothing but which way is up. EXIF 2.32, 4.6. */
function orientationSegment(orientation: number): Uint8Array {
  const tiff = [0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation];
  const payload = [...Buffer.from("Exif\0\0", "latin1"), ...tiff, 0, 0, 0, 0, 0, 0];
  return Uint8Array.from([0xff, 0xe1, 0, payload.length + 2, ...payload]);
}

/** Chunks that hold notes instead of picture. PNG third edition, 11.3. */
const pngNotes = new Set(["eXIf", "tEXt", "zTXt", "iTXt", "tIME"]);
const PNG_HEAD = 8;

function stripPng(bytes: Uint8Array): Stripped {
  const parts = [bytes.subarray(0, PNG_HEAD)];
  let at = PNG_HEAD;
  while (at + 12 <= bytes.length) {
    const end = at + 12 + viewOf(bytes).getUint32(at);
    const kind = textAt(bytes, at + 4, 4);
    if (!pngNotes.has(kind)) parts.push(bytes.subarray(at, end));
    if (kind === "IEND") return Buffer.concat(parts);
    at = end;
  }
  return null;
}

const webpNotes = new Set(["EXIF", "XMP "]);
const WEBP_HEAD = 12;
/** Bits of the VP8X header that announce EXIF and XMP. WebP container specification. */
const WEBP_NOTE_BITS = 0x08 | 0x04;

function stripWebp(bytes: Uint8Array): Stripped {
  const view = viewOf(bytes);
  const parts: Uint8Array[] = [];
  const last = Math.min(bytes.length, 8 + view.getUint32(4, true));
  for (let at = WEBP_HEAD; at + 8 <= last; ) {
    const length = view.getUint32(at + 4, true);
    const end = at + 8 + length + (length % 2);
    const kind = textAt(bytes, at, 4);
    const chunk = Uint8Array.from(bytes.subarray(at, end));
    if (kind === "VP8X") chunk[8] = (chunk[8] ?? 0) & ~WEBP_NOTE_BITS;
    if (!webpNotes.has(kind)) parts.push(chunk);
    at = end;
  }
  const head = Uint8Array.from(bytes.subarray(0, WEBP_HEAD));
  const size = parts.reduce((sum, part) => sum + part.length, 4);
  viewOf(head).setUint32(4, size, true);
  return Buffer.concat([head, ...parts]);
}
