/** A word or a number of the text, with its place. Punctuation is kept as a break before it. */
export interface RawToken {
  /** Lower case, without accents, invisible marks and surrounding apostrophes. */
  readonly text: string;
  readonly number: boolean;
  readonly from: number;
  readonly to: number;
  /** What stands between it and the token before. */
  readonly gap: Gap;
  /** Signs that matter to numbers, directly before or after: `-`, `°`, `%`, `/`, `<`. */
  readonly before: string;
  readonly after: string;
}

/** `clause` for commas and dashes, `colon` for colons, `sentence` for full stops and line ends. */
export type Gap = "none" | "clause" | "colon" | "sentence";

/** Text beyond this is not read: more than Telegram can send in one message. */
export const LONGEST_TEXT = 20_000;

/** Words that need no folding. */
const PLAIN = /^[a-z]+$/;
const LETTER = /[\p{L}\p{M}]/u;
const DIGIT = /[0-9]/;
const INVISIBLE = /[\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]|\ufe0f/;
const APOSTROPHE = /['’ʼ`´]/;
const SENTENCE_END = /[.!?;\n\r…¿¡。！？]/;
const CLAUSE_END = /[,()–—"“”„«»]/;
const MARK = /[.,]/;
const EXPONENT = /[eE]/;
const SIGN = /[-+]/;
const NUMBER_SIGN = /[-−+°%/<>≈~½¼¾]/;

/** Splits a text into words and numbers in one pass; every offset is a UTF-16 offset. */
export function tokenise(text: string): readonly RawToken[] {
  const tokens: RawToken[] = [];
  const end = Math.min(text.length, LONGEST_TEXT);
  let gap: Gap = "none";
  let signs = "";
  let at = 0;
  while (at < end) {
    const char = charAt(text, at);
    const isNumber = DIGIT.test(char);
    if (isNumber || LETTER.test(char)) {
      const to = isNumber ? numberEnd(text, at, end) : wordEnd(text, at, end);
      const after = text.slice(to, Math.min(end, to + 1));
      tokens.push({
        text: isNumber ? text.slice(at, to) : fold(text.slice(at, to)),
        number: isNumber,
        from: at,
        to,
        gap,
        before: signs,
        after: NUMBER_SIGN.test(after) ? after : "",
      });
      gap = "none";
      signs = "";
      at = to;
      continue;
    }
    gap = widen(gap, gapOf(text, at));
    signs = NUMBER_SIGN.test(char) ? char : "";
    at += char.length;
  }
  return tokens;
}

/** Lower case without accents, apostrophe variants made one, invisible marks dropped. */
export function fold(word: string): string {
  const lower = word.toLowerCase();
  if (PLAIN.test(lower)) return lower;
  const plain = lower.normalize("NFKD");
  let out = "";
  for (const char of plain) {
    if (INVISIBLE.test(char) || /\p{M}/u.test(char)) continue;
    out += APOSTROPHE.test(char) ? "'" : char === "ß" ? "ss" : char;
  }
  return out.replace(/^'+/, "").replace(/'+$/, "");
}

function charAt(text: string, at: number): string {
  return String.fromCodePoint(text.codePointAt(at) ?? 0);
}

function gapOf(text: string, at: number): Gap {
  const char = charAt(text, at);
  if (SENTENCE_END.test(char)) return "sentence";
  if (char === ":") return "colon";
  if (CLAUSE_END.test(char)) return "clause";
  // A dash between blanks separates; inside a word it only joins.
  const spaced = text[at - 1] === " " && text[at + 1] === " ";
  return char === "-" && spaced ? "clause" : "none";
}

const widths: readonly Gap[] = ["none", "clause", "colon", "sentence"];

function widen(one: Gap, other: Gap): Gap {
  return widths.indexOf(one) > widths.indexOf(other) ? one : other;
}

function wordEnd(text: string, from: number, end: number): number {
  let at = from;
  while (at < end) {
    const char = charAt(text, at);
    const next = at + char.length < end ? charAt(text, at + char.length) : "";
    const inside =
      LETTER.test(char) ||
      INVISIBLE.test(char) ||
      (APOSTROPHE.test(char) && LETTER.test(next) && at > from);
    if (!inside) break;
    at += char.length;
  }
  return at;
}

/** Digits with inner points and commas, and an exponent: `12,4`, `1.265`, `1e309`. */
function numberEnd(text: string, from: number, end: number): number {
  const isDigit = (at: number): boolean => at < end && DIGIT.test(text[at] ?? "");
  let at = from;
  while (isDigit(at) || (isDigit(at + 1) && MARK.test(text[at] ?? ""))) at += 1;
  if (!EXPONENT.test(text[at] ?? "")) return at;
  const sign = SIGN.test(text[at + 1] ?? "") ? 1 : 0;
  if (!isDigit(at + 1 + sign)) return at;
  at += 1 + sign;
  while (isDigit(at)) at += 1;
  return at;
}
