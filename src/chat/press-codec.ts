import { createHash, createHmac, timingSafeEqual } from "node:crypto";
import type { Press } from "../domain/effects.ts";

/** Bot API, InlineKeyboardButton.callback_data: 1-64 bytes. */
const MOST_BYTES = 64;
/** 48 bits: a guess is right once in 2.8e14, and each costs the guesser a request. */
const SEAL_CHARACTERS = 8;
/** Shorter words gain nothing by being replaced. */
const LEAST_REPLACED = 9;
const CODE_CHARACTERS = 6;

/** Turns what a button means into its data and back; what comes back is believed only if sealed. */
export interface PressCodec {
  /** The button's data, at most 64 bytes; null where even shortened it does not fit. */
  encode(press: Press): string | null;
  /** What was encoded by a codec of the same secret; null for anything else. */
  decode(data: string): Press | null;
}

/**
 * @param secret the shop's; data of another installation is refused
 * @param words the ids that values are made of; long ones are replaced by a code of six characters
 * where the data would not fit otherwise, so the button must be decoded with the same words known
 */
export function createPressCodec(secret: string, words: Iterable<string> = []): PressCodec {
  const wordOf = new Map<string, string>();
  for (const word of words) {
    const code = codeOf(word);
    // Of two words with one code (once in 69 billion pairs) only the first is ever replaced.
    if (!wordOf.has(code)) wordOf.set(code, word);
  }
  const seal = (body: string) =>
    createHmac("sha256", secret).update(body).digest("base64url").slice(0, SEAL_CHARACTERS);
  const shorten = (value: string) =>
    value.replace(/[A-Za-z0-9_-]+/g, (word) => {
      const code = codeOf(word);
      return word.length >= LEAST_REPLACED && wordOf.get(code) === word ? `~${code}` : word;
    });
  const lengthen = (value: string) =>
    value.replace(/~~|~([A-Za-z0-9_-]{6})/g, (all, code) =>
      all === "~~" ? "~" : (wordOf.get(code) ?? all),
    );

  return {
    encode({ case: id = "", revision, act, value }) {
      if (!isPlain(id) || !isPlain(act)) return null;
      const head = `${revision.toString(36)}.${id}.${act}`;
      const escaped = value?.replaceAll("~", "~~");
      const bodies =
        escaped === undefined ? [head] : [`${head}.${escaped}`, `${head}.${shorten(escaped)}`];
      const body = bodies.find(
        (candidate) => Buffer.byteLength(candidate) <= MOST_BYTES - SEAL_CHARACTERS,
      );
      return body === undefined ? null : seal(body) + body;
    },
    decode(data) {
      const body = data.slice(SEAL_CHARACTERS);
      const given = Buffer.from(data.slice(0, SEAL_CHARACTERS));
      const right = Buffer.from(seal(body));
      if (given.length !== right.length || !timingSafeEqual(given, right)) return null;
      const [, count = "", id = "", act = "", value] =
        /^(-?[0-9a-z]+)\.([^.]*)\.([^.]*)(?:\.(.*))?$/s.exec(body) ?? [];
      const revision = Number.parseInt(count, 36);
      if (!Number.isSafeInteger(revision)) return null;
      return {
        ...(id === "" ? {} : { case: id }),
        revision,
        act,
        ...(value === undefined ? {} : { value: lengthen(value) }),
      };
    },
  };
}

const isPlain = (text: string) => /^[A-Za-z0-9_:-]*$/.test(text);

const codeOf = (word: string) =>
  createHash("sha256").update(word).digest("base64url").slice(0, CODE_CHARACTERS);
