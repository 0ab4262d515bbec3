/** One part of a `multipart/form-data` body. A part with a file name is a file. */
export interface FormPart {
  name: string;
  fileName?: string;
  contentType?: string;
  bytes: Buffer;
}

/** A body that is not well-formed multipart. */
export class MultipartError extends Error {
  override readonly name = "MultipartError";
}

const CRLF = Buffer.from("\r\n");
const HEADER_END = Buffer.from("\r\n\r\n");

/** The boundary named by a content type, quoted or not; undefined when there is none. */
export function boundaryOf(contentType: string): string | undefined {
  const match = /;\s*boundary=(?:"([^"]+)"|([^;\s]+))/i.exec(contentType);
  return match?.[1] ?? match?.[2];
}

/**
 * Reads a multipart body.
 *
 * Written by hand because bot clients write headers that general parsers refuse or damage: the
 * unmodified grammY client sends `content-disposition:form-data;name="x";filename=two words.pdf`,
 * with no space after the colon and a raw UTF-8 file name without quotes.
 *
 * @param body the whole request body
 * @param boundary the boundary of the content type, without the leading dashes
 * @returns the parts in order
 * @throws MultipartError when the body is cut off or has a part without a name
 */
export function parseMultipart(body: Buffer, boundary: string): FormPart[] {
  const delimiter = Buffer.from(`--${boundary}`);
  const parts: FormPart[] = [];
  let at = body.indexOf(delimiter);
  if (at < 0) throw new MultipartError("The boundary does not occur in the body.");
  for (;;) {
    const start = at + delimiter.length;
    if (body.toString("latin1", start, start + 2) === "--") return parts;
    const end = body.indexOf(Buffer.concat([CRLF, delimiter]), start);
    if (end < 0) throw new MultipartError("The last part is not closed by the boundary.");
    parts.push(readPart(body.subarray(start + CRLF.length, end)));
    at = end + CRLF.length;
  }
}

function readPart(part: Buffer): FormPart {
  const headerEnd = part.indexOf(HEADER_END);
  if (headerEnd < 0) throw new MultipartError("A part has no empty line after its headers.");
  const headers = part.toString("utf8", 0, headerEnd).split("\r\n");
  const disposition = headerValue(headers, "content-disposition") ?? "";
  const name = /;\s*name=(?:"([^"]*)"|([^;]*))/i.exec(disposition);
  if (name === null) throw new MultipartError("A part has no name.");
  const fileName = fileNameOf(disposition);
  const contentType = headerValue(headers, "content-type");
  return {
    name: name[1] ?? name[2] ?? "",
    bytes: part.subarray(headerEnd + HEADER_END.length),
    ...(fileName === undefined ? {} : { fileName }),
    ...(contentType === undefined ? {} : { contentType }),
  };
}

function headerValue(headers: readonly string[], name: string): string | undefined {
  const line = headers.find((header) => header.toLowerCase().startsWith(`${name}:`));
  return line?.slice(name.length + 1).trim();
}

/** An unquoted file name runs to the end of the line, since it may hold blanks and semicolons. */
function fileNameOf(disposition: string): string | undefined {
  const match = /;\s*filename=(?:"((?:[^"\\]|\\.)*)"|(.*))/i.exec(disposition);
  if (match === null) return undefined;
  return match[1]?.replace(/\\(.)/g, "$1") ?? match[2]?.trim();
}
