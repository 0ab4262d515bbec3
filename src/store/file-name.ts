import { createHash } from "node:crypto";

/** Longer names than this some file systems refuse (255 bytes), with room for an ending. */
const LONGEST = 180;

/**
 * A file name for an id: without separators or leading dots, and different for different ids, even
 * where the system does not tell capital letters from small ones.
 */
export function fileNameFor(id: string): string {
  const safe = [...Buffer.from(id, "utf8")]
    .map((byte) => {
      const letter = String.fromCharCode(byte);
      if (/[a-z0-9-]/.test(letter)) return letter;
      if (/[A-Z]/.test(letter)) return `_${letter.toLowerCase()}`;
      return `=${byte.toString(16).padStart(2, "0")}`;
    })
    .join("");
  if (safe === "") return "=.json";
  if (safe.length <= LONGEST) return `${safe}.json`;
  const digest = createHash("sha256").update(id).digest("hex");
  return `${safe.slice(0, 80)}==${digest}.json`;
}
