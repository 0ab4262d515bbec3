import type { Api } from "grammy";
import type { Call, Keyboard } from "./plan-calls.ts";

interface FileOptions {
  readonly message_thread_id?: number;
  readonly disable_notification?: boolean;
  readonly reply_markup?: Keyboard;
}

/** Sends a file again by its id, as what it was; answers the message's id. */
export async function sendFile(
  api: Api,
  chat: string,
  call: Extract<Call, { send: "file" }>,
  options: FileOptions,
): Promise<number> {
  const { id, kind } = call.file;
  const words =
    call.words.text === ""
      ? options
      : { ...options, caption: call.words.text, caption_entities: [...call.words.entities] };
  const sent = await (() => {
    switch (kind) {
      case "photo":
        return api.sendPhoto(chat, id, words);
      case "voice":
        return api.sendVoice(chat, id, words);
      case "audio":
        return api.sendAudio(chat, id, words);
      case "video":
        return api.sendVideo(chat, id, words);
      case "animation":
        return api.sendAnimation(chat, id, words);
      case "document":
        return api.sendDocument(chat, id, words);
      case "video-note":
        return api.sendVideoNote(chat, id, options);
      case "sticker":
        return api.sendSticker(chat, id, options);
    }
  })();
  return sent.message_id;
}
