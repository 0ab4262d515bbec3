import { badRequest } from "../refusal.ts";
import type { Params } from "../wire/params.ts";
import type { World } from "../world/world.ts";

/** One call of the bot while it is carried out. */
export interface Call {
  world: World;
  params: Params;
  /** Aborts when the bot has closed the connection. */
  gone: AbortSignal;
}

/**
 * Carries out a call.
 * @returns what goes into `result`
 * @throws ApiRefusal when the call is refused
 */
export type Method = (call: Call) => unknown;

/** @throws ApiRefusal 400 when the argument is missing or empty */
export function requiredText({ params }: Call, name: string): string {
  const text = params.text(name);
  if (text === "") throw badRequest(`parameter "${name}" is required`);
  return text;
}

/**
 * A structured argument.
 * @param what how the real server names it when it cannot be read, such as "media JSON object"
 */
export function structured({ params }: Call, name: string, what: string): unknown {
  try {
    return params.json(name);
  } catch {
    throw badRequest(`can't parse ${what}`);
  }
}

/** A whole number brought into a range; the default when it is missing. */
export function clamped(
  { params }: Call,
  name: string,
  range: { min: number; max: number; otherwise: number },
): number {
  const value = params.integer(name) ?? range.otherwise;
  return Math.min(range.max, Math.max(range.min, value));
}

/** The `message_id` argument; 0, which no message has, when it is missing or negative. */
export function messageIdOf({ params }: Call, name = "message_id"): number {
  return Math.max(0, params.integer(name) ?? 0);
}
