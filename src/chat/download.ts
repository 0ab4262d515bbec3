import type { FileRef } from "../domain/effects.ts";

/** Bot API, getFile: bots can download files of up to 20 MB. */
const MOST_BYTES = 20 * 1024 * 1024;
const PATIENCE_MILLISECONDS = 60_000;

export type Downloaded =
  | { readonly ok: true; readonly bytes: Uint8Array }
  /** `gone`: the file cannot be had any more; `trouble`: it may work later. */
  | { readonly ok: false; readonly why: "too-big" | "gone" | "trouble" };

export type Download = (file: FileRef) => Promise<Downloaded>;

export interface DownloadParts {
  /** Where a file's bytes are now, or null where there are none to be had; may reject. */
  readonly locate: (fileId: string) => Promise<{ path?: string; bytes?: number } | null>;
  /** The address for a path; it holds the token, so it is never written down. */
  readonly address: (path: string) => string;
  readonly fetch?: typeof fetch;
}

/** Fetches a file's bytes, up to 20 MB. Never rejects. */
export function createDownload(parts: DownloadParts): Download {
  const get = parts.fetch ?? fetch;
  return async (file) => {
    if ((file.bytes ?? 0) > MOST_BYTES) return { ok: false, why: "too-big" };
    try {
      const place = await parts.locate(file.id);
      if (place?.path === undefined) return { ok: false, why: "gone" };
      if ((place.bytes ?? 0) > MOST_BYTES) return { ok: false, why: "too-big" };
      const signal = AbortSignal.timeout(PATIENCE_MILLISECONDS);
      const answer = await get(parts.address(place.path), { signal });
      if (!answer.ok || answer.body === null) {
        await answer.body?.cancel();
        return { ok: false, why: answer.status === 404 ? "gone" : "trouble" };
      }
      return await readCapped(answer.body);
    } catch {
      return { ok: false, why: "trouble" };
    }
  };
}

/** Reads to the end, but no further than allowed, whatever was announced. */
async function readCapped(body: AsyncIterable<Uint8Array>): Promise<Downloaded> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of body) {
    size += chunk.length;
    if (size > MOST_BYTES) return { ok: false, why: "too-big" };
    chunks.push(chunk);
  }
  return { ok: true, bytes: Buffer.concat(chunks) };
}
