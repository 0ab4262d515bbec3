/** A file that came with a request. */
export interface UploadedFile {
  name: string;
  contentType?: string;
  bytes: Buffer;
}

/** True for a plain JSON object: neither null nor an array. */
export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/**
 * The arguments of one call, however they came: query string, form, multipart or JSON. As on the
 * real server every argument may be given as text, and structured ones as JSON text or as JSON.
 */
export class Params {
  readonly #values: ReadonlyMap<string, unknown>;
  readonly #files: ReadonlyMap<string, UploadedFile>;

  constructor(
    values: ReadonlyMap<string, unknown>,
    files: ReadonlyMap<string, UploadedFile> = new Map(),
  ) {
    this.#values = values;
    this.#files = files;
  }

  has(name: string): boolean {
    const value = this.#values.get(name);
    return value !== undefined && value !== null;
  }

  /** The argument as text; "" when it is missing or structured. */
  text(name: string): string {
    const value = this.#values.get(name);
    if (typeof value === "string") return value;
    return typeof value === "number" || typeof value === "boolean" ? String(value) : "";
  }

  /** The argument as a whole number; undefined when it is missing or none. */
  integer(name: string): number | undefined {
    const text = this.text(name).trim();
    return /^-?\d+$/.test(text) ? Number(text) : undefined;
  }

  /** The argument as a number; undefined when it is missing or none. */
  number(name: string): number | undefined {
    const text = this.text(name).trim();
    const value = Number(text);
    return text === "" || Number.isNaN(value) ? undefined : value;
  }

  /** The real server takes `true`, `yes` and `1`, in any case, for yes. */
  flag(name: string): boolean {
    return ["true", "yes", "1"].includes(this.text(name).toLowerCase());
  }

  /**
   * The argument as JSON; undefined when it is missing or empty.
   * @throws SyntaxError when text is given that is not JSON
   */
  json(name: string): unknown {
    const value = this.#values.get(name);
    if (typeof value !== "string") return value ?? undefined;
    return value === "" ? undefined : JSON.parse(value);
  }

  file(name: string): UploadedFile | undefined {
    return this.#files.get(name);
  }

  /** Everything as plain data for the record of calls; files become `{file, bytes}`. */
  plain(): Record<string, unknown> {
    const files = [...this.#files].map(
      ([name, file]) => [name, { file: file.name, bytes: file.bytes.length }] as const,
    );
    return Object.fromEntries([...this.#values, ...files]);
  }
}
