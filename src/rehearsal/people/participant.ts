import { unixSeconds } from "../time.ts";
import type { MediaDetails } from "../world/media-body.ts";
import { type Body, type Post, toPost } from "../world/messages.ts";
import { tellBotOfEdit } from "../world/posting.ts";
import {
  type AlbumItem,
  albumItemOf,
  type Card,
  contactOf,
  fileOf,
  locationOf,
  type PickedFile,
  type Place,
  photoOf,
} from "./attachments.ts";
import { type ButtonChoice, dataOf, findButton, type PressOptions, sendPress } from "./pressing.ts";
import {
  messageAt,
  RehearsalError,
  type Speaker,
  type SpeakOptions,
  speak,
  spokenCaption,
  spokenText,
} from "./speaker.ts";

type Captioned = SpeakOptions & { caption?: string };
type Recorded = Captioned & PickedFile & Pick<MediaDetails, "durationSeconds">;

/**
 * What a person can do in one chat. Everything takes effect at once; the bot gets the update when
 * it next asks. Whatever the app would not allow throws a RehearsalError with a plain sentence.
 */
export interface Participant {
  readonly chatId: number;
  say(text: string, options?: SpeakOptions): Post;
  /** Presses a button by label or place; fails with the list of buttons when it is not there. */
  press(choice: ButtonChoice, options?: PressOptions): void;
  /** The last press once more, under a new update id and a new query id, as a bad line causes. */
  pressAgain(): void;
  /** A press with any data, on any message that ever was here; the newest of the bot if missing. */
  forge(data: string, messageId?: number): void;
  sendPhoto(picture: Buffer, options?: Captioned): Post;
  /** Several messages with one album id; the caption is on the first. */
  sendAlbum(items: readonly AlbumItem[], options?: Captioned): Post[];
  sendVoice(bytes: Buffer, options?: Recorded): Post;
  sendVideo(bytes: Buffer, options?: Recorded): Post;
  sendDocument(bytes: Buffer, options?: Captioned & PickedFile): Post;
  sendSticker(emoji: string): Post;
  sendLocation(place: Place): Post;
  sendVenue(place: Place & { title: string; address: string }): Post;
  /** A card from the address book, somebody else's unless it names the person's own user id. */
  sendContact(card: Card): Post;
  /** The person's own phone number, as the button that asks for it sends it. */
  sendOwnContact(phone: string): Post;
  /** Changes the text or caption of an own message. */
  edit(messageId: number, text: string): Post;
  /** Passes a message on into this chat. @param fromChatId this chat when missing */
  forward(messageId: number, fromChatId?: number): Post;
  /** Presses the bot has not answered: their buttons still show that they wait. */
  waitingButtons(): string[];
}

/** Makes the actions of a person in a chat. */
export function createParticipant(speaker: Speaker): Participant {
  const { world, record, user } = speaker;
  return {
    chatId: record.chat.id,
    say: (text, options) => speak(speaker, spokenText(text), options),
    ...pressingOf(speaker),
    ...filesOf(speaker),
    sendLocation: (place) => speak(speaker, locationOf(place)),
    sendVenue: ({ title, address, ...place }) => {
      const { latitude, longitude } = place;
      const venue = { location: { latitude, longitude }, title, address };
      return speak(speaker, { ...locationOf(place), venue });
    },
    sendContact: (card) => speak(speaker, contactOf(card)),
    sendOwnContact: (phone) => speak(speaker, contactOf(ownCard(speaker, phone))),
    edit: (messageId, text) => editOwn(speaker, messageId, text),
    forward: (messageId, fromChatId = record.chat.id) => passOn(speaker, messageId, fromChatId),
    waitingButtons: () =>
      world.presses
        .unanswered()
        .filter(({ userId, chatId }) => userId === user.id && chatId === record.chat.id)
        .map(({ data }) => data),
  };
}

function ownCard({ user }: Speaker, phone: string): Card {
  return { phone, firstName: user.first_name, userId: user.id };
}

type FileActs = Pick<
  Participant,
  "sendPhoto" | "sendAlbum" | "sendVoice" | "sendVideo" | "sendDocument" | "sendSticker"
>;

function filesOf(speaker: Speaker): FileActs {
  const { world } = speaker;
  const captioned = (body: Body, { caption = "", ...options }: Captioned = {}) =>
    speak(speaker, { ...body, ...spokenCaption(caption) }, options);
  const sendFile =
    (kind: "voice" | "video" | "document") =>
    (bytes: Buffer, { caption = "", replyTo, ...picked }: Recorded = {}) =>
      captioned(fileOf(world, kind, { bytes, ...picked }), {
        caption,
        ...(replyTo === undefined ? {} : { replyTo }),
      });
  return {
    sendPhoto: (picture, options) => captioned(photoOf(world, picture), options),
    sendAlbum: (items, { caption = "", ...options } = {}) => {
      const albumId = world.messages.nextAlbumId();
      return items.map((item, index) => {
        const words = spokenCaption(index === 0 ? caption : "");
        return speak(speaker, { ...albumItemOf(world, item), ...words }, { ...options, albumId });
      });
    },
    sendVoice: sendFile("voice"),
    sendVideo: sendFile("video"),
    sendDocument: sendFile("document"),
    sendSticker: (emoji) =>
      speak(speaker, fileOf(world, "sticker", { bytes: Buffer.from(emoji), emoji })),
  };
}

/** The number a person's app gives when a button asks for it. Made up. */
const USUAL_PHONE = "+100200300";

function pressingOf(speaker: Speaker): Pick<Participant, "press" | "pressAgain" | "forge"> {
  const { world, record, user } = speaker;
  return {
    press: (choice, options = {}) => {
      const found = findButton(speaker, choice, options);
      if (found.kind === "inline") {
        const isInaccessible = options.isInaccessible === true;
        const { message_id: messageId } = found.message.head;
        sendPress(speaker, { messageId, data: dataOf(found.button), isInaccessible });
      } else if ("request_contact" in found.button) {
        speak(speaker, contactOf(ownCard(speaker, USUAL_PHONE)));
      } else if ("request_location" in found.button) {
        throw new RehearsalError(`"${found.button.text}" asks for a place; call sendLocation().`);
      } else speak(speaker, spokenText(found.button.text));
    },
    pressAgain: () => {
      const last = world.presses.last(user.id, record.chat.id);
      if (last === undefined)
        throw new RehearsalError(`${user.first_name} has pressed nothing yet.`);
      sendPress(speaker, last);
    },
    forge: (data, messageId) => {
      const newest = world.messages.visible(record.chat.id).findLast(({ isByBot }) => isByBot);
      const target = messageId ?? newest?.head.message_id;
      if (target === undefined) throw new RehearsalError("The bot has written nothing here yet.");
      sendPress(speaker, { messageId: target, data, isInaccessible: false });
    },
  };
}

function editOwn(speaker: Speaker, messageId: number, text: string): Post {
  const { world, record, user } = speaker;
  const message = messageAt(speaker, messageId);
  if (message.head.from.id !== user.id) {
    throw new RehearsalError(`Message ${messageId} is not by ${user.first_name}.`);
  }
  const { caption: _caption, caption_entities: _marks, ...rest } = message.body;
  message.body =
    message.body.text === undefined ? { ...rest, ...spokenCaption(text) } : spokenText(text);
  message.editedAt = unixSeconds(world.time.clock);
  world.feed.emit({ kind: "edited", chatId: record.chat.id, messageId });
  tellBotOfEdit(world, record, message);
  return toPost(message);
}

function passOn(speaker: Speaker, messageId: number, fromChatId: number): Post {
  const source = speaker.world.chats.require(fromChatId);
  const { head, body } = messageAt({ ...speaker, record: source }, messageId);
  const origin = head.forward_origin ?? {
    type: "user",
    sender_user: head.from,
    date: head.date,
  };
  return speak(speaker, body, { forwardOrigin: origin });
}
