import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
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

/** The example as it is, for the rehearsal room. */
export function exampleSettings(root: string): Result<ShopSettings> {
  return parseShopSettings(readFileSync(join(root, EXAMPLE), "utf8"), EXAMPLE);
}

/**
 * Reads `shop.yaml` of the data folder. Where there is none yet, the example is put there to be
 * filled in; as long as it is the example, it is refused: an operator must never be shown the
 * emergency number of an invented shop.
 */
export function loadShopSettings(root: string, dataFolder: string): Result<ShopSettings> {
  const file = join(dataFolder, "shop.yaml");
  const example = readFileSync(join(root, EXAMPLE), "utf8");
  if (!existsSync(file)) {
    mkdirSync(dataFolder, { recursive: true });
    writeFileSync(file, example);
  }
  const text = readFileSync(file, "utf8");
  if (text === example) {
    const says =
      "these are the settings of an invented shop; put your own name, phone and emergency number " +
      "into this file, then start again";
    return { ok: false, problems: [{ file, says }] };
  }
  return parseShopSettings(text, file);
}
