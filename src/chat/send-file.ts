import { type Api, InputFile } from "grammy";
import { drawDrawing } from "../paper/drawings.ts";
import { isPicture, type PrintPaper } from "../paper/print-paper.ts";
import type { Call, Keyboard } from "./plan-calls.ts";

interface FileOptions {
  readonly message_thread_id?: number;
  readonly disable_notification?: boolean;
  readonly reply_markup?: Keyboard;
}

function captioned({ words }: Pick<MadeCall, "words">, options: FileOptions) {
  return words.text === ""
    ? options
    : { ...options, caption: words.text, caption_entities: [...words.entities] };
}

type MadeCall = Extract<Call, { send: "picture" | "attachment" | "paper" }>;

/** Sends a picture or a text file that is made at this moment; answers the message's id. */
export async function sendMade(
  api: Api,
  chat: string,
  call: MadeCall,
  options: FileOptions & { readonly print: PrintPaper },
): Promise<number> {
  const { print, ...plain } = options;
  const words = captioned(call, plain);
  if (call.send === "paper") {
    const printed = await print(call.paper);
    const { name, bytes } = printed;
    if (isPicture(printed)) {
      return (await api.sendPhoto(chat, new InputFile(bytes, name), words)).message_id;
    }
    return (await api.sendDocument(chat, new InputFile(bytes, name), words)).message_id;
  }
  if (call.send === "attachment") {
    const { name, text } = call.attachment;
    const file = new InputFile(Buffer.from(text, "utf8"), name);
    return (await api.sendDocument(chat, file, words)).message_id;
  }
  const { drawing, machine } = call.picture;
  const file = new InputFile(await drawDrawing(drawing, machine), `${drawing}.png`);
  return (await api.sendPhoto(chat, file, words)).message_id;
}

/** Sends a file again by its id, as what it was; answers the message's id. */
export async function sendFile(
  api: Api,
  chat: string,
  call: Extract<Call, { send: "file" }>,
  options: FileOptions,
): Promise<number> {
  const { id, kind } = call.file;
  const words = captioned(call, options);
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
