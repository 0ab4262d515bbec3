import type { Contact } from "@grammyjs/types";
import type { FileKind, NewFile } from "../world/files.ts";
import { fileBody, type MediaDetails, photoBody } from "../world/media-body.ts";
import type { Body } from "../world/messages.ts";
import { pictureSize } from "../world/picture-size.ts";
import type { World } from "../world/world.ts";
import { RehearsalError } from "./speaker.ts";

/** A file as a person picks it. */
export interface PickedFile {
  /** The file's name; a usual one for its kind when missing. */
  name?: string;
  mimeType?: string;
  /** Claims this size in bytes instead of the true one. */
  claimedSize?: number;
}

const USUAL_NAMES: Readonly<Record<FileKind, string>> = {
  photo: "photo.jpg",
  document: "document.pdf",
  voice: "voice.ogg",
  video: "video.mp4",
  audio: "audio.mp3",
  sticker: "sticker.webp",
};

/** A photo as the app sends it. @throws RehearsalError when the bytes are no picture */
export function photoOf(world: World, picture: Buffer): Body {
  const size = pictureSize(picture);
  if (size === undefined) {
    throw new RehearsalError(
      "The bytes are no JPEG, PNG, GIF or WebP picture; see samplePicture().",
    );
  }
  return photoBody(world.photos.add(picture, USUAL_NAMES.photo, size));
}

/** Any other file as the app sends it. */
export function fileOf(
  world: World,
  kind: Exclude<FileKind, "photo">,
  { bytes, ...picked }: PickedFile & MediaDetails & { bytes: Buffer },
): Body {
  const { name = USUAL_NAMES[kind], mimeType, claimedSize } = picked;
  const file: NewFile = {
    kind,
    name,
    bytes,
    ...(mimeType === undefined ? {} : { mimeType }),
    ...(claimedSize === undefined ? {} : { claimedSize }),
  };
  return fileBody(kind, world.files.add(file), picked);
}

/** One item of an album. */
export type AlbumItem = { photo: Buffer } | { video: Buffer } | { document: Buffer; name?: string };

export function albumItemOf(world: World, item: AlbumItem): Body {
  if ("photo" in item) return photoOf(world, item.photo);
  if ("video" in item) return fileOf(world, "video", { bytes: item.video });
  const { document: bytes, name } = item;
  return fileOf(world, "document", { bytes, ...(name === undefined ? {} : { name }) });
}

/** A place on the map. */
export interface Place {
  latitude: number;
  longitude: number;
  /** Seconds for which a live location is shared. */
  livePeriod?: number;
}

export function locationOf({ latitude, longitude, livePeriod }: Place): Body {
  const live = livePeriod === undefined ? {} : { live_period: livePeriod };
  return { location: { latitude, longitude, ...live } };
}

/** A card from the address book. */
export interface Card {
  phone: string;
  firstName: string;
  lastName?: string;
  /** The user the card belongs to, when they use the platform. */
  userId?: number;
}

export function contactOf({ phone, firstName, lastName, userId }: Card): Body {
  const contact: Contact = {
    phone_number: phone,
    first_name: firstName,
    ...(lastName === undefined ? {} : { last_name: lastName }),
    ...(userId === undefined ? {} : { user_id: userId }),
  };
  return { contact };
}
