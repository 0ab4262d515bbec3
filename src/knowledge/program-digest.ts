import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { dirname, extname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** Folders whose code decides what is made of the texts. */
const FOLDERS = ["domain", "circuit", "knowledge", "reading"] as const;

const own = fileURLToPath(import.meta.url);
const root = join(dirname(own), "..");

/** Ending of the running code: `ts` as written, `js` as built; each keeps its own files. */
export const codeForm: string = extname(own).slice(1);

/**
 * Changes whenever the code that understands texts changes, or a package or the language it runs on.
 * @returns hexadecimal digits
 */
export function programDigest(): string {
  const hash = createHash("sha256").update(`${process.version} ${process.arch}\n`);
  const paths = FOLDERS.flatMap((folder) =>
    readdirSync(join(root, folder))
      .filter((name) => name.endsWith(`.${codeForm}`))
      .sort()
      .map((name) => join(folder, name)),
  );
  for (const path of paths) hash.update(`${path}\n`).update(readFileSync(join(root, path)));
  return hash.update(packages()).digest("hex");
}

function packages(): string {
  try {
    return readFileSync(join(root, "..", "package-lock.json"), "utf8");
  } catch {
    return "";
  }
}
