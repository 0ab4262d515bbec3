/** The named references the Bot API knows (Bot API reference, "HTML style"). */
const NAMED: ReadonlyMap<string, string> = new Map([
  ["lt", "<"],
  ["gt", ">"],
  ["amp", "&"],
  ["quot", '"'],
]);

const REFERENCE = /&(?:#x([0-9a-f]{1,6})|#(\d{1,7})|([a-z]+));?/iy;

/**
 * Reads a character reference such as `&lt;` or `&#8364;`.
 * @param at where its `&` stands
 * @returns what it stands for and how many characters it takes; undefined when it is none, so
 * that the `&` stays as it is written
 */
export function readReference(
  source: string,
  at: number,
): { stands: string; length: number } | undefined {
  REFERENCE.lastIndex = at;
  const match = REFERENCE.exec(source);
  if (match === null) return undefined;
  const [whole, hex, decimal, name] = match;
  const stands = name === undefined ? numbered(hex, decimal) : NAMED.get(name);
  return stands === undefined ? undefined : { stands, length: whole.length };
}

function numbered(hex: string | undefined, decimal: string | undefined): string | undefined {
  const code = hex === undefined ? Number(decimal) : Number.parseInt(hex, 16);
  return code > 0 && code < 0x10_ffff ? String.fromCodePoint(code) : undefined;
}

/** Replaces every character reference in a text. */
export function decodeReferences(source: string): string {
  return source.replace(/&[^&]*/g, (part) => {
    const found = readReference(part, 0);
    return found === undefined ? part : found.stands + part.slice(found.length);
  });
}
