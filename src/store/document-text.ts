import { z } from "zod";
import type { DocumentKind, DocumentOf } from "../cases/ports.ts";
import type { TurnrowDocument } from "../domain/documents.ts";
import { FORMAT } from "../domain/documents.ts";
import { TurnrowError } from "../domain/result.ts";
import { documentSchemas } from "./document-schema.ts";

type Raw = Readonly<Record<string, unknown>>;

/** From each older format the step to the next one. */
export type Migrations = Readonly<Record<number, (raw: Raw) => Raw>>;

/** Which formats can be read, and how. */
export interface FormatRules {
  readonly current: number;
  readonly migrations: Migrations;
}

/** Format 1 is the first one. */
export const formatRules: FormatRules = { current: FORMAT, migrations: {} };

/** The data folder was written by a newer version of this program. */
export class NewerFormat extends TurnrowError {
  override readonly name = "NewerFormat";
  constructor(format: number, known: number) {
    super(
      `the data was written in format ${format}, this version knows formats up to ${known}; ` +
        "start the newer version again, or use another data folder",
    );
  }
}

/** A document that could not be read back was about to be written. */
export class InvalidDocument extends TurnrowError {
  override readonly name = "InvalidDocument";
  constructor(kind: string, id: string, why: string) {
    super(`${kind} ${id} would not be readable: ${why}`);
  }
}

/** What was read, or why it cannot be used. */
export type ReadDocument<K extends DocumentKind> =
  | { readonly ok: true; readonly document: DocumentOf<K> }
  | { readonly ok: false; readonly why: string };

const isRaw = (value: unknown): value is Raw =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Checks, and lets through as it is: keys that this version does not know are kept. */
function isDocument<K extends DocumentKind>(kind: K, raw: unknown): raw is DocumentOf<K> {
  return documentSchemas[kind].safeParse(raw).success;
}

/** Names the places that are wrong, not what stands there: it may be somebody's phone number. */
function whyNot(kind: DocumentKind, raw: unknown): string {
  const issues = documentSchemas[kind].safeParse(raw).error?.issues ?? [];
  return issues
    .slice(0, 3)
    .map((issue) => `${z.core.toDotPath(issue.path) || "the whole"}: ${issue.code}`)
    .join("; ");
}

/**
 * Reads a stored document: parses, brings it up to the present format, checks it.
 *
 * @throws NewerFormat where a newer version has written it; it is not damaged then
 */
export function readDocument<K extends DocumentKind>(
  kind: K,
  text: string,
  rules: FormatRules = formatRules,
): ReadDocument<K> {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return { ok: false, why: "it is not JSON" };
  }
  if (!isRaw(parsed)) return { ok: false, why: "it is not an object" };
  const { format } = parsed;
  if (typeof format !== "number" || !Number.isInteger(format) || format < 1) {
    return { ok: false, why: "it has no format number" };
  }
  if (format > rules.current) throw new NewerFormat(format, rules.current);
  let raw: Raw = parsed;
  for (let from = format; from < rules.current; from++) {
    const migrate = rules.migrations[from];
    if (migrate === undefined) return { ok: false, why: `nothing leads on from format ${from}` };
    raw = { ...migrate(raw), format: from + 1 };
  }
  if (isDocument(kind, raw)) return { ok: true, document: raw };
  return { ok: false, why: whyNot(kind, raw) };
}

/**
 * The text to store, and the document as it will be read back from it.
 *
 * @throws InvalidDocument where it could not be read back (a number that is not one, a wrong type)
 */
export function provenDocument(document: TurnrowDocument): {
  readonly text: string;
  readonly document: TurnrowDocument;
} {
  const text = `${JSON.stringify(document)}\n`;
  const back = readDocument(document.kind, text);
  if (!back.ok) throw new InvalidDocument(document.kind, document.id, back.why);
  return { text, document: back.document };
}

/** The text to store; throws as `provenDocument` does. */
export const writeDocument = (document: TurnrowDocument): string => provenDocument(document).text;
