import type { PhotoSize } from "@grammyjs/types";
import { badRequest } from "../refusal.ts";
import { isRecord, type UploadedFile } from "../wire/params.ts";
import type { FileKind, StoredFile } from "../world/files.ts";
import { fileBody, type MediaDetails, photoBody } from "../world/media-body.ts";
import type { Body } from "../world/messages.ts";
import { pictureSize } from "../world/picture-size.ts";
import type { Call } from "./call.ts";
import { captionFields } from "./text-arguments.ts";

const ATTACH = "attach://";

type Source = { upload: UploadedFile } | { stored: StoredFile };

/**
 * Finds the file an argument means: `attach://<part>`, a part of the argument's own name, or the
 * id of a file sent before.
 * @param reference the argument's text; "" when only a part may be meant
 * @returns undefined when there is none
 * @throws ApiRefusal 400 for a web address, since this server fetches nothing, or an unknown id
 */
function sourceOf({ world, params }: Call, field: string, reference: string): Source | undefined {
  const part = reference.startsWith(ATTACH) ? reference.slice(ATTACH.length) : field;
  if (reference === "" || reference.startsWith(ATTACH)) {
    const upload = params.file(part);
    return upload === undefined ? undefined : { upload };
  }
  if (/^https?:\/\//i.test(reference)) throw badRequest("failed to get HTTP URL content");
  const stored = world.files.get(reference);
  if (stored === undefined) throw badRequest("wrong file identifier/HTTP URL specified");
  return { stored };
}

const TITLES: Readonly<Record<FileKind, string>> = {
  photo: "Photo",
  document: "Document",
  voice: "VoiceNote",
  video: "Video",
  audio: "Audio",
  sticker: "Sticker",
};

/** A file keeps the kind it was first sent as. */
function checkKind(stored: StoredFile, kind: FileKind): void {
  if (stored.kind === kind) return;
  throw badRequest(`can't use file of type ${TITLES[stored.kind]} as ${TITLES[kind]}`);
}

/** What a media argument asks for. */
export interface MediaRequest {
  kind: FileKind;
  /** The argument's name, also the name of the part when the file comes without a reference. */
  field: string;
  reference: string;
  details?: MediaDetails;
}

/**
 * Reads a file argument into a message body.
 * @throws ApiRefusal 400 with the wording of the real server
 */
export function mediaBody(call: Call, request: MediaRequest): Body {
  const { kind, field, reference, details } = request;
  const source = sourceOf(call, field, reference);
  if (source === undefined) throw badRequest(`there is no ${kind} in the request`);
  if ("stored" in source) checkKind(source.stored, kind);
  else if (source.upload.bytes.length === 0) throw badRequest("file must be non-empty");
  if (kind === "photo") return photoBody(photoSizes(call, source));
  return fileBody(
    kind,
    "stored" in source ? source.stored : store(call, source.upload, kind),
    details,
  );
}

function store({ world }: Call, upload: UploadedFile, kind: FileKind): StoredFile {
  if (upload.bytes.length > world.limits.uploadBytes) throw badRequest("file is too big");
  return world.files.add({ kind, name: upload.name, bytes: upload.bytes });
}

function photoSizes({ world }: Call, source: Source): PhotoSize[] {
  if ("stored" in source) return world.photos.sizesOf(source.stored.fileId) ?? [];
  const { limits } = world;
  const { bytes, name } = source.upload;
  if (bytes.length > limits.photoBytes) throw badRequest("file is too big for a photo");
  const size = pictureSize(bytes);
  if (size === undefined) throw badRequest("IMAGE_PROCESS_FAILED");
  const [shorter, longer] = [size.width, size.height].sort((left, right) => left - right);
  const ratio = (longer ?? 0) / Math.max(1, shorter ?? 0);
  if (size.width + size.height > limits.photoSideSum || ratio > limits.photoSideRatio) {
    throw badRequest("PHOTO_INVALID_DIMENSIONS");
  }
  return world.photos.add(bytes, name, size);
}

/** The kinds an `InputMedia` object can have here. */
const INPUT_MEDIA_KINDS = ["photo", "video", "audio", "document"] as const;

export type InputMediaKind = (typeof INPUT_MEDIA_KINDS)[number];

/**
 * Reads an `InputMedia` object with its caption.
 * @throws ApiRefusal 400 `can't parse InputMedia: …`
 */
export function inputMedia(call: Call, value: unknown): { kind: InputMediaKind; body: Body } {
  if (!isRecord(value)) throw badRequest("can't parse InputMedia: expected an Object");
  const text = (name: string) => {
    const found = value[name];
    return typeof found === "string" ? found : "";
  };
  const caption = captionFields(call, {
    text: text("caption"),
    parseMode: text("parse_mode"),
    entities: value["caption_entities"],
  });
  if (text("media") === "") throw badRequest("can't parse InputMedia: media not found");
  const kind = INPUT_MEDIA_KINDS.find((known) => known === value["type"]);
  if (kind === undefined) {
    throw badRequest(`can't parse InputMedia: type "${text("type")}" is unsupported`);
  }
  const body = mediaBody(call, { kind, field: "media", reference: text("media") });
  return { kind, body: { ...body, ...caption } };
}
