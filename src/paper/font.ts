/** What we need to know of a TrueType font: which characters it draws, and how wide. */
export interface Font {
  /** Whether the font has a picture of its own for the character. */
  has(codePoint: number): boolean;
  /** Width of a text on one line, in parts of the type size; letters are taken as they stand alone. */
  width(text: string): number;
}

/** A font file that is none, or that lacks the tables every font has. */
export class UnreadableFont extends Error {
  override readonly name = "UnreadableFont";
}

type Glyphs = ReadonlyMap<number, number>;

/**
 * Reads the character map and the widths of a TrueType font.
 * Source of the layout: OpenType specification 1.9, chapters `cmap` (formats 4 and 12), `head`, `hhea`,
 * `hmtx`.
 */
export function openFont(bytes: Uint8Array): Font {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tables = readTables(view);
  const unitsPerEm = view.getUint16(tableAt(tables, "head") + 18);
  const wideGlyphs = view.getUint16(tableAt(tables, "hhea") + 34);
  const metrics = tableAt(tables, "hmtx");
  const glyphs = readCharacterMap(view, tableAt(tables, "cmap"));
  const advance = (glyph: number) =>
    view.getUint16(metrics + 4 * Math.min(glyph, wideGlyphs - 1)) / unitsPerEm;
  return {
    has: (codePoint) => glyphs.has(codePoint),
    width: (text) => {
      let width = 0;
      for (const character of text)
        width += advance(glyphs.get(character.codePointAt(0) ?? 0) ?? 0);
      return width;
    },
  };
}

function readTables(view: DataView): Map<string, number> {
  const tables = new Map<string, number>();
  if (view.byteLength < 12) throw new UnreadableFont("this is no font file");
  const count = view.getUint16(4);
  if (view.byteLength < 12 + 16 * count) throw new UnreadableFont("the font file is cut short");
  for (let index = 0; index < count; index++) {
    const at = 12 + 16 * index;
    const letters = [0, 1, 2, 3].map((place) => view.getUint8(at + place));
    tables.set(String.fromCharCode(...letters), view.getUint32(at + 8));
  }
  return tables;
}

function tableAt(tables: ReadonlyMap<string, number>, name: string): number {
  const at = tables.get(name);
  if (at === undefined) throw new UnreadableFont(`the font has no table "${name}"`);
  return at;
}

/** All maps of the font laid over one another; later ones are the fuller ones. */
function readCharacterMap(view: DataView, at: number): Glyphs {
  const glyphs = new Map<number, number>();
  for (let index = 0; index < view.getUint16(at + 2); index++) {
    const platform = view.getUint16(at + 4 + 8 * index);
    const table = at + view.getUint32(at + 8 + 8 * index);
    const isUnicode = platform === 0 || platform === 3;
    const format = view.getUint16(table);
    if (isUnicode && format === 4) readSegments(view, table, glyphs);
    if (isUnicode && format === 12) readGroups(view, table, glyphs);
  }
  return glyphs;
}

/** Format 4: segments of the first 65,536 characters. */
function readSegments(view: DataView, table: number, glyphs: Map<number, number>): void {
  const segments = view.getUint16(table + 6) / 2;
  for (let index = 0; index < segments; index++) {
    const end = view.getUint16(table + 14 + 2 * index);
    const start = view.getUint16(table + 16 + 2 * (segments + index));
    const delta = view.getUint16(table + 16 + 2 * (2 * segments + index));
    const rangeAt = table + 16 + 2 * (3 * segments + index);
    const range = view.getUint16(rangeAt);
    for (let code = start; code <= end && code < 0xffff; code++) {
      const found = range === 0 ? code : view.getUint16(rangeAt + range + 2 * (code - start));
      const glyph = found === 0 ? 0 : (found + delta) & 0xffff;
      if (glyph !== 0) glyphs.set(code, glyph);
    }
  }
}

/** Format 12: groups of characters of all of Unicode. */
function readGroups(view: DataView, table: number, glyphs: Map<number, number>): void {
  for (let index = 0; index < view.getUint32(table + 12); index++) {
    const at = table + 16 + 12 * index;
    const start = view.getUint32(at);
    const first = view.getUint32(at + 8);
    for (let code = start; code <= view.getUint32(at + 4); code++) {
      const glyph = first + code - start;
      if (glyph !== 0) glyphs.set(code, glyph);
    }
  }
}
