import { createHash } from "node:crypto";
import { deserialize, serialize } from "node:v8";

/** First bytes of a kept file. */
const MARK = Buffer.from("turnrow-kept\n");
const DIGEST_BYTES = 32;

/**
 * Names what follows from some texts; any text changed, moved, added or left out gives another key.
 * @returns 32 bytes
 */
export function keptKey(texts: readonly string[]): Buffer {
  const hash = createHash("sha256");
  for (const text of texts) hash.update(`${Buffer.byteLength(text)}\n`).update(text);
  return hash.digest();
}

/** Packs plain data, Maps and Sets among it: mark, key, digest of the rest, then the data. */
export function packKept(key: Buffer, value: unknown): Buffer {
  const body = serialize(value);
  return Buffer.concat([MARK, key, createHash("sha256").update(body).digest(), body]);
}

/**
 * Unpacks what `packKept` packed under the same key.
 * @returns nothing where the key is another one, or the bytes are cut short or changed
 */
export function unpackKept(key: Buffer, bytes: Buffer): unknown {
  const start = MARK.length + 2 * DIGEST_BYTES;
  const [head, digest] = [Buffer.concat([MARK, key]), bytes.subarray(start - DIGEST_BYTES, start)];
  if (bytes.length <= start || !bytes.subarray(0, head.length).equals(head)) return undefined;
  const body = bytes.subarray(start);
  if (!createHash("sha256").update(body).digest().equals(digest)) return undefined;
  const value: unknown = deserialize(body);
  return value;
}
