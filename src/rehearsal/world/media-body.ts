import type { PhotoSize } from "@grammyjs/types";
import type { FileKind, StoredFile } from "./files.ts";
import type { Body } from "./messages.ts";

/** What is told about a recording or a film besides its bytes. */
export interface MediaDetails {
  durationSeconds?: number;
  width?: number;
  height?: number;
  title?: string;
  performer?: string;
  emoji?: string;
}

/** The body of a message that shows a photo. */
export function photoBody(photo: PhotoSize[]): Body {
  return { photo };
}

/** The body of a message that carries a file of any kind but a photo. */
export function fileBody(
  kind: Exclude<FileKind, "photo">,
  file: StoredFile,
  details: MediaDetails = {},
): Body {
  const base = { file_id: file.fileId, file_unique_id: file.uniqueId, file_size: file.size };
  const named = { ...base, file_name: file.name, mime_type: file.mimeType };
  const duration = details.durationSeconds ?? 0;
  const { width = 640, height = 360 } = details;
  switch (kind) {
    case "document":
      return { document: named };
    case "voice":
      return { voice: { ...base, mime_type: file.mimeType, duration } };
    case "video":
      return { video: { ...named, width, height, duration } };
    case "audio": {
      const { title, performer } = details;
      const tags = {
        ...(title === undefined ? {} : { title }),
        ...(performer === undefined ? {} : { performer }),
      };
      return { audio: { ...named, duration, ...tags } };
    }
    case "sticker": {
      const { emoji } = details;
      const look = { type: "regular", width: 512, height: 512 } as const;
      const motion = { is_animated: false, is_video: false };
      return {
        sticker: { ...base, ...look, ...motion, ...(emoji === undefined ? {} : { emoji }) },
      };
    }
  }
}
