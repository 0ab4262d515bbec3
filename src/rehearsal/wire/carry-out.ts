import type { Call } from "../methods/call.ts";
import { findMethod } from "../methods/method-table.ts";
import { ApiRefusal, forbidden, methodNotFound, migrated, tooManyRequests } from "../refusal.ts";
import type { CallRecord } from "../world/calls.ts";
import type { Fault } from "../world/faults.ts";
import type { World } from "../world/world.ts";
import { isRecord, Params } from "./params.ts";

/** How a call ends: with an answer, with a web page, or with a broken connection. */
export type Outcome =
  | { kind: "result"; result: unknown; delayMilliseconds: number }
  | { kind: "refusal"; refusal: ApiRefusal }
  | { kind: "webPage"; status: number }
  | { kind: "reset" };

/**
 * Carries out a call, with whatever shall go wrong with it, and writes it into the record.
 * @param name the method as it was asked for, in any case
 * @param gone aborts when the caller has closed the connection
 */
export async function carryOut(
  world: World,
  name: string,
  { params, gone }: Pick<Call, "params" | "gone">,
): Promise<Outcome> {
  const method = findMethod(name);
  if (method === undefined) return { kind: "refusal", refusal: methodNotFound() };
  const chatId = params.integer("chat_id");
  const place = chatId === undefined ? {} : { chatId };
  const at = world.time.clock();
  const record: CallRecord = { method: method.name, at, ...place, params: params.plain() };
  world.calls.begin(record);
  world.feed.emit({ kind: "calling", method: method.name, ...place });
  try {
    const fault = world.faults.take(method.name, chatId);
    const outcome =
      struckBefore(fault) ?? (await run(() => method.run({ world, params, gone }), fault));
    record.outcome = recorded(outcome);
    return outcome;
  } finally {
    world.calls.end(record);
    world.feed.emit({ kind: "called", method: method.name, ...place });
  }
}

async function run(work: () => unknown, fault: Fault | undefined): Promise<Outcome> {
  try {
    const result = await work();
    if (fault?.kind === "resetAfter") return { kind: "reset" };
    const delayMilliseconds = fault?.kind === "slow" ? fault.milliseconds : 0;
    return { kind: "result", result, delayMilliseconds };
  } catch (error) {
    if (error instanceof ApiRefusal) return { kind: "refusal", refusal: error };
    throw error;
  }
}

/** What a fault does instead of the call; undefined when the call is carried out after all. */
export function struckBefore(fault: Fault | undefined): Outcome | undefined {
  switch (fault?.kind) {
    case "tooManyRequests":
      return { kind: "refusal", refusal: tooManyRequests(fault.retryAfterSeconds) };
    case "blocked":
      return { kind: "refusal", refusal: forbidden("bot was blocked by the user") };
    case "migrated":
      return { kind: "refusal", refusal: migrated(fault.toChatId) };
    case "refusal":
      return { kind: "refusal", refusal: new ApiRefusal(fault.errorCode, fault.description) };
    case "webPage":
      return { kind: "webPage", status: fault.status };
    case "resetBefore":
      return { kind: "reset" };
    default:
      return undefined;
  }
}

function recorded(outcome: Outcome): NonNullable<CallRecord["outcome"]> {
  switch (outcome.kind) {
    case "result":
      return { kind: "done" };
    case "refusal": {
      const { errorCode, description } = outcome.refusal;
      return { kind: "refused", errorCode, description };
    }
    case "webPage":
      return { kind: "webPage", status: outcome.status };
    case "reset":
      return { kind: "reset" };
  }
}

/** Methods a webhook reply may not call (server): those that answer and those about the webhook. */
const NOT_FROM_WEBHOOK = /^(get|deletewebhook$|setwebhook$|close$|logout$)/i;

/**
 * Carries out the call that a bot sent as the body of its reply to a webhook. As on the real
 * server nobody learns how it ended; the record of calls does.
 */
export async function carryOutFromWebhook(world: World, body: string): Promise<void> {
  let parsed: unknown;
  try {
    parsed = JSON.parse(body);
  } catch {
    return;
  }
  const method = isRecord(parsed) ? parsed["method"] : undefined;
  if (!isRecord(parsed) || typeof method !== "string" || NOT_FROM_WEBHOOK.test(method)) return;
  const params = new Params(new Map(Object.entries(parsed)));
  await carryOut(world, method, { params, gone: new AbortController().signal });
}
