import { copyFileSync, existsSync, mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { LineCounter, parseDocument } from "yaml";
import type { Problem, Result } from "../domain/result.ts";
import { ShopSettings } from "../domain/settings.ts";

/** The example that a new shop starts from. */
const EXAMPLE = join("flows", "demo", "shop.yaml");

/** Checks the text of a settings file; every mistake comes back with its line. */
export function parseShopSettings(text: string, file: string): Result<ShopSettings> {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines });
  const problems: Problem[] = document.errors.map((error) => ({
    file,
    line: lines.linePos(error.pos[0]).line,
    says: `this is not readable: ${error.message.split("\n")[0] ?? ""}`,
  }));
  if (problems.length > 0) return { ok: false, problems };
  const data: unknown = document.toJS();
  const parsed = ShopSettings.safeParse(data);
  if (parsed.success) return { ok: true, value: parsed.data };
  for (const { path, message } of parsed.error.issues) {
    const node = document.getIn(path.map(String), true);
    const at = typeof node === "object" && node !== null && "range" in node ? node.range : null;
    const start = Array.isArray(at) && typeof at[0] === "number" ? at[0] : 0;
    const name = path.map(String).join(".");
    problems.push({ file, line: lines.linePos(start).line, at: name, says: `${name}: ${message}` });
  }
  return { ok: false, problems };
}

/** Reads `shop.yaml` of the data folder; puts the example there where there is none yet. */
export function loadShopSettings(root: string, dataFolder: string): Result<ShopSettings> {
  const file = join(dataFolder, "shop.yaml");
  if (!existsSync(file)) {
    mkdirSync(dataFolder, { recursive: true });
    copyFileSync(join(root, EXAMPLE), file);
  }
  return parseShopSettings(readFileSync(file, "utf8"), file);
}
