import { decodeReferences } from "./html-reference.ts";

/** A start tag as it is written: `<name attribute="value">`. */
export interface StartTag {
  /** In lower case. */
  name: string;
  attributes: ReadonlyMap<string, string>;
  /** Where the text goes on behind the tag. */
  end: number;
}

/** The tags of the Bot API's HTML style (Bot API reference, "HTML style"). */
const KNOWN_TAGS: ReadonlySet<string> = new Set(
  (
    "a b strong i em u ins s strike del span tg-spoiler tg-emoji tg-time " + "code pre blockquote"
  ).split(" "),
);

/** An attribute with a quoted value, a bare token, or no value at all. */
const ATTRIBUTE = /\s+([^\s=>]+)(?:(\s*=\s*)(?:"([^"]*)"|'([^']*)'|([\w.-]+))?)?/y;

/** Attributes that stand alone. All others need an equal sign and a value. */
const WITHOUT_VALUE: ReadonlySet<string> = new Set(["expandable"]);

/**
 * Reads a start tag.
 * @param source the whole text
 * @param at where its `<` stands
 * @param fail makes the error to throw from a reason
 */
export function readStartTag(
  source: string,
  at: number,
  fail: (reason: string) => Error,
): StartTag {
  const where = `at byte offset ${Buffer.byteLength(source.slice(0, at), "utf8")}`;
  const nameEnd = matchEnd(/[^\s>]*/y, source, at + 1);
  if (nameEnd === source.length) throw fail(`Unclosed start tag ${where}`);
  const name = source.slice(at + 1, nameEnd).toLowerCase();
  if (!KNOWN_TAGS.has(name)) throw fail(`Unsupported start tag "${name}" ${where}`);

  const attributes = new Map<string, string>();
  let end = nameEnd;
  ATTRIBUTE.lastIndex = end;
  for (let match = ATTRIBUTE.exec(source); match !== null; match = ATTRIBUTE.exec(source)) {
    const [, key = "", equals] = match;
    const value = match[3] ?? match[4] ?? match[5];
    if (equals === undefined && !WITHOUT_VALUE.has(key)) {
      throw fail(
        `Expected equal sign in declaration of an attribute of the tag "${name}" ${where}`,
      );
    }
    if (equals !== undefined && value === undefined) {
      throw fail(`Unclosed start tag "${name}" ${where}`);
    }
    attributes.set(key, decodeReferences(value ?? ""));
    end = ATTRIBUTE.lastIndex;
  }
  const close = matchEnd(/\s*>/y, source, end);
  if (close === end) throw fail(`Unclosed start tag ${where}`);
  return { name, attributes, end: close };
}

function matchEnd(pattern: RegExp, source: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.test(source) ? pattern.lastIndex : at;
}
