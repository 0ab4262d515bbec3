import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { LineCounter, parseDocument } from "yaml";
import type { Knowledge } from "../domain/knowledge.ts";
import type { Problem, Result } from "../domain/result.ts";
import { ShopSettings } from "../domain/settings.ts";
import type { StockedPart } from "../domain/stock.ts";
import { checkShape } from "../knowledge/explain-issue.ts";
import { parsePartFile } from "../knowledge/part-file.ts";
import { lineFinder } from "../knowledge/source-file.ts";

/** The example that a new shop starts from. */
const EXAMPLE = join("flows", "demo", "shop.yaml");
/** Stands beside it. Its parts are invented, so a real shop names a file of its own. */
const EXAMPLE_PARTS = "parts.csv";

/** Checks the text of a settings file; every mistake comes back with its line, the first first. */
export function parseShopSettings(text: string, file: string): Result<ShopSettings> {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines });
  const problems: Problem[] = document.errors.map(({ pos }) => ({
    file,
    line: lines.linePos(pos[0]).line,
    says: "This cannot be read; check quotes, colons and indenting.",
  }));
  if (problems.length > 0) return { ok: false, problems };
  const data: unknown = document.toJS();
  const lineOf = lineFinder(document, lines);
  const checked = checkShape({ file, id: "shop", folder: "", data, lineOf }, ShopSettings);
  if (checked.value !== undefined) return { ok: true, value: checked.value };
  const inOrder = [...checked.problems].sort((a, b) => (a.line ?? 0) - (b.line ?? 0));
  return { ok: false, problems: inOrder };
}

/**
 * The shop's part file, which stands beside its settings; nothing where the settings name none.
 * @param folder where the settings file is
 * @param parts ids of the generic parts
 */
export function loadPartFile(
  settings: ShopSettings,
  folder: string,
  parts: ReadonlySet<string>,
): Result<readonly StockedPart[]> {
  const { partFile } = settings;
  if (partFile === undefined) return { ok: true, value: [] };
  const file = join(folder, partFile);
  if (existsSync(file)) return parsePartFile(readFileSync(file, "utf8"), file, parts);
  const says = "it is not there; put it beside shop.yaml, or take the line partFile out of that.";
  return { ok: false, problems: [{ file, says }] };
}

/** Where the example stands. */
export const exampleFolder = (root: string): string => join(root, dirname(EXAMPLE));

/** The knowledge with the shop's own costs in the place of the shipped ones. */
export function withShopRates(knowledge: Knowledge, { rates }: ShopSettings): Knowledge {
  return { ...knowledge, rates: { ...knowledge.rates, ...rates } };
}

/** The example with its invented parts, for the rehearsal room. */
export function exampleSettings(root: string): Result<ShopSettings> {
  const read = parseShopSettings(readFileSync(join(root, EXAMPLE), "utf8"), EXAMPLE);
  return read.ok ? { ok: true, value: { ...read.value, partFile: EXAMPLE_PARTS } } : read;
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
