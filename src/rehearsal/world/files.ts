import { createHash } from "node:crypto";
import type { Clock } from "../time.ts";

/** What a file was sent as. It keeps that for life: a document cannot be sent as a photo. */
export type FileKind = "photo" | "document" | "voice" | "video" | "audio" | "sticker";

/** A file the server keeps. */
export interface StoredFile {
  fileId: string;
  /** The same for the same bytes. */
  uniqueId: string;
  kind: FileKind;
  name: string;
  mimeType: string;
  bytes: Buffer;
  /** Size in bytes as shown; differs from `bytes` only when a test claims a size. */
  size: number;
  /** Counts from 1; part of its link. */
  number: number;
}

export interface NewFile {
  kind: FileKind;
  name: string;
  bytes: Buffer;
  mimeType?: string;
  /** Tells apart several files with the same bytes, such as the sizes of one photo. */
  variant?: string;
  /** Claims this size instead of the true one, to test limits without large buffers. */
  claimedSize?: number;
}

interface Link {
  file: StoredFile;
  /** Milliseconds since 1970. */
  expiresAt: number;
}

/** Types by file name ending; everything else is application/octet-stream. */
const MIME_TYPES: ReadonlyMap<string, string> = new Map([
  ["jpg", "image/jpeg"],
  ["jpeg", "image/jpeg"],
  ["png", "image/png"],
  ["gif", "image/gif"],
  ["webp", "image/webp"],
  ["pdf", "application/pdf"],
  ["ics", "text/calendar"],
  ["csv", "text/csv"],
  ["txt", "text/plain"],
  ["ogg", "audio/ogg"],
  ["mp3", "audio/mpeg"],
  ["mp4", "video/mp4"],
]);

/** The type a file's name stands for. */
export function mimeTypeOf(name: string): string {
  const ending = /\.([^.]+)$/.exec(name)?.[1]?.toLowerCase() ?? "";
  return MIME_TYPES.get(ending) ?? "application/octet-stream";
}

/** All files by id, and the links handed out for them. */
export class FileBook {
  readonly #files = new Map<string, StoredFile>();
  readonly #links = new Map<string, Link>();
  readonly #clock: Clock;
  readonly #prefix: string;

  /** @param owner the bot's token: a file id is good for one bot only */
  constructor(clock: Clock, owner: string) {
    this.#clock = clock;
    this.#prefix = digest(Buffer.from(owner), 6);
  }

  add(file: NewFile): StoredFile {
    const number = this.#files.size + 1;
    const stored: StoredFile = {
      fileId: `AgAC${this.#prefix}${digest(Buffer.from(String(number)), 18)}`,
      uniqueId: `AQAD${digest(Buffer.concat([file.bytes, Buffer.from(file.variant ?? "")]), 12)}`,
      kind: file.kind,
      name: file.name,
      mimeType: file.mimeType ?? mimeTypeOf(file.name),
      bytes: file.bytes,
      size: file.claimedSize ?? file.bytes.length,
      number,
    };
    this.#files.set(stored.fileId, stored);
    return stored;
  }

  get(fileId: string): StoredFile | undefined {
    return this.#files.get(fileId);
  }

  /** True when the id looks like one of this bot's, so that only the file itself is missing. */
  hasMade(fileId: string): boolean {
    return fileId.startsWith(`AgAC${this.#prefix}`);
  }

  /**
   * Makes a link for a file.
   * @param seconds how long it works
   * @returns the path behind `/file/bot<token>/`
   */
  link(file: StoredFile, seconds: number): string {
    const ending = /\.[A-Za-z0-9]+$/.exec(file.name)?.[0] ?? "";
    const path = `${file.kind}s/file_${file.number}${ending}`;
    this.#links.set(path, { file, expiresAt: this.#clock() + seconds * 1000 });
    return path;
  }

  /** The file behind a link; undefined when there is none or it has run out. */
  atPath(path: string): StoredFile | undefined {
    const link = this.#links.get(path);
    return link !== undefined && this.#clock() <= link.expiresAt ? link.file : undefined;
  }
}

function digest(bytes: Buffer, length: number): string {
  return createHash("sha256").update(bytes).digest("base64url").slice(0, length);
}
