import type { IncomingMessage } from "node:http";
import { badRequest, entityTooLarge } from "../refusal.ts";
import { boundaryOf, MultipartError, parseMultipart } from "./multipart.ts";
import { isRecord, Params, type UploadedFile } from "./params.ts";

/** Where a request path leads. */
export type Route =
  | { kind: "method"; token: string; method: string }
  | { kind: "file"; token: string; path: string }
  | { kind: "other" };

/**
 * Reads `/bot<token>/<method>` and `/file/bot<token>/<path>`.
 * @param path the request path without its query
 * @returns the method in lower case, since methods are case-insensitive
 */
export function routeOf(path: string): Route {
  const file = /^\/file\/bot([^/]+)\/(.+)$/.exec(path);
  if (file?.[1] !== undefined && file[2] !== undefined) {
    return { kind: "file", token: decode(file[1]), path: decode(file[2]) };
  }
  const call = /^\/bot([^/]+)\/([^/]+)$/.exec(path);
  if (call?.[1] !== undefined && call[2] !== undefined) {
    return { kind: "method", token: decode(call[1]), method: call[2].toLowerCase() };
  }
  return { kind: "other" };
}

function decode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/**
 * Collects a request body.
 * @param limitBytes the largest body that is taken
 * @throws ApiRefusal 413 when the limit is passed, after the rest was read and thrown away, so that
 * the client gets the answer instead of a broken connection
 */
export async function readBody(request: IncomingMessage, limitBytes: number): Promise<Buffer> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request) {
    const bytes = Buffer.isBuffer(chunk) ? chunk : Buffer.from(String(chunk));
    size += bytes.length;
    if (size <= limitBytes) chunks.push(bytes);
  }
  if (size > limitBytes) throw entityTooLarge();
  return Buffer.concat(chunks);
}

/**
 * Reads the arguments of a call from its query string and its body.
 * @throws ApiRefusal 400 when the body is not what its content type says
 */
export function readParams(query: URLSearchParams, contentType: string, body: Buffer): Params {
  const values = new Map<string, unknown>(query);
  const files = new Map<string, UploadedFile>();
  const type = contentType.toLowerCase();
  if (body.length === 0) return new Params(values, files);
  if (type.startsWith("application/json")) addJson(body, values);
  else if (type.startsWith("multipart/form-data")) addForm(contentType, body, { values, files });
  else if (type.startsWith("application/x-www-form-urlencoded")) {
    for (const [name, value] of new URLSearchParams(body.toString("utf8"))) values.set(name, value);
  }
  return new Params(values, files);
}

function addJson(body: Buffer, values: Map<string, unknown>): void {
  let parsed: unknown;
  try {
    parsed = JSON.parse(body.toString("utf8"));
  } catch (cause) {
    throw Object.assign(badRequest("can't parse the request body as JSON"), { cause });
  }
  if (!isRecord(parsed)) throw badRequest("the request body must be a JSON object");
  for (const [name, value] of Object.entries(parsed)) values.set(name, value);
}

function addForm(
  contentType: string,
  body: Buffer,
  into: { values: Map<string, unknown>; files: Map<string, UploadedFile> },
): void {
  const boundary = boundaryOf(contentType);
  if (boundary === undefined) throw badRequest("the multipart body has no boundary");
  try {
    for (const part of parseMultipart(body, boundary)) {
      if (part.fileName === undefined) into.values.set(part.name, part.bytes.toString("utf8"));
      else {
        const { fileName: name, contentType: type, bytes } = part;
        into.files.set(part.name, {
          name,
          bytes,
          ...(type === undefined ? {} : { contentType: type }),
        });
      }
    }
  } catch (error) {
    if (error instanceof MultipartError) throw badRequest(error.message);
    throw error;
  }
}
