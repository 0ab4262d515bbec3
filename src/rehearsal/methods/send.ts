import { badRequest } from "../refusal.ts";
import type { FileKind } from "../world/files.ts";
import { toPost } from "../world/messages.ts";
import { post } from "../world/posting.ts";
import { type Call, type Method, requiredText, structured } from "./call.ts";
import { destinationOf, sendAndShow } from "./destination.ts";
import { inputMedia, mediaBody } from "./media-arguments.ts";
import { captionBody, textBody } from "./text-arguments.ts";

function sendMessage(call: Call): unknown {
  const body = textBody(call);
  return sendAndShow(call, destinationOf(call), body);
}

/** sendPhoto, sendDocument and so on: the argument is named like the kind of file. */
function sendFile(kind: FileKind): Method {
  return (call) => {
    const { params } = call;
    const details = {
      durationSeconds: params.integer("duration") ?? 0,
      width: params.integer("width") ?? 640,
      height: params.integer("height") ?? 360,
    };
    const reference = params.text(kind);
    const body = mediaBody(call, { kind, field: kind, reference, details });
    const caption = kind === "sticker" ? {} : captionBody(call);
    return sendAndShow(call, destinationOf(call), { ...body, ...caption });
  };
}

function sendMediaGroup(call: Call): unknown {
  const { world } = call;
  const media = structured(call, "media", "media JSON object");
  if (media === undefined) throw badRequest(`parameter "media" is required`);
  if (!Array.isArray(media)) throw badRequest("expected an Array of InputMedia");
  const items = media.map((item) => inputMedia(call, item));
  const { albumMin, albumMax } = world.limits;
  if (items.length > albumMax) throw badRequest("too many messages to send as an album");
  if (items.length < albumMin) throw badRequest("too few messages to send as an album");
  const kinds = new Set(items.map(({ kind }) => kind));
  for (const kind of ["document", "audio"] as const) {
    if (kinds.has(kind) && kinds.size > 1) {
      throw badRequest(`${kind} can't be mixed with other media types`);
    }
  }
  const to = destinationOf(call);
  world.rate.count(to.record.chat.id, items.length);
  const albumId = world.messages.nextAlbumId();
  return items.map(({ body }) => toPost(post(world, to.record, { ...to.draft, albumId, body })));
}

function locationOf({ params }: Call): { latitude: number; longitude: number } {
  for (const name of ["latitude", "longitude"]) {
    if (params.text(name) === "") throw badRequest(`${name} is empty`);
  }
  const latitude = params.number("latitude") ?? 0;
  const longitude = params.number("longitude") ?? 0;
  if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180) {
    throw badRequest("wrong location specified");
  }
  return { latitude, longitude };
}

function sendLocation(call: Call): unknown {
  const location = locationOf(call);
  return sendAndShow(call, destinationOf(call), { location });
}

function sendVenue(call: Call): unknown {
  const location = locationOf(call);
  const title = requiredText(call, "title");
  const address = requiredText(call, "address");
  const body = { location, venue: { location, title, address } };
  return sendAndShow(call, destinationOf(call), body);
}

function sendContact(call: Call): unknown {
  const lastName = call.params.text("last_name");
  const contact = {
    phone_number: requiredText(call, "phone_number"),
    first_name: requiredText(call, "first_name"),
    ...(lastName === "" ? {} : { last_name: lastName }),
  };
  return sendAndShow(call, destinationOf(call), { contact });
}

/** The methods that put something new into a chat. */
export const SEND_METHODS: Readonly<Record<string, Method>> = {
  sendMessage,
  sendPhoto: sendFile("photo"),
  sendDocument: sendFile("document"),
  sendVoice: sendFile("voice"),
  sendVideo: sendFile("video"),
  sendAudio: sendFile("audio"),
  sendSticker: sendFile("sticker"),
  sendMediaGroup,
  sendLocation,
  sendVenue,
  sendContact,
};
