import type { Limits } from "../limits.ts";

/** Where a keyboard shall appear. */
export interface MarkupPlace {
  isPrivate: boolean;
  limits: Limits;
}

/** The colours a button can have besides the app's own. */
const STYLES = ["danger", "success", "primary"] as const;

/** The optional look of a button. */
export interface ButtonLook {
  style?: (typeof STYLES)[number];
}

/** Reads the style of a button; an unknown one is dropped. */
export function buttonLook(value: Record<string, unknown>): ButtonLook {
  const style = STYLES.find((known) => known === value["style"]);
  return style === undefined ? {} : { style };
}

/**
 * Reads a text a button cannot do without. Stricter than the real server, which leaves a button
 * with an empty label out of the keyboard without a word.
 * @param fail makes the error to throw from a reason
 */
export function requiredText(
  value: Record<string, unknown>,
  field: string,
  fail: (reason: string) => Error,
): string {
  const found = value[field];
  if (found === undefined) throw fail(`Can't find field "${field}"`);
  if (typeof found !== "string") throw fail(`Field "${field}" must be of type String`);
  if (found.trim() === "") throw fail(`Field "${field}" must be non-empty`);
  return found;
}
