import { Api } from "grammy";
import { describe, expect, it } from "vitest";
import { sendFile } from "../../src/chat/send-file.ts";
import type { FileRef } from "../../src/domain/effects.ts";

/** Sends a file of a kind and tells which call of the Bot API it became. */
async function callFor(kind: FileRef["kind"]) {
  const calls: { method: string; payload: object }[] = [];
  const api = new Api("1:made-up", {
    fetch: async (address: unknown, init?: { body?: unknown }) => {
      const method = String(address).split("/").at(-1) ?? "";
      calls.push({ method, payload: JSON.parse(String(init?.body)) });
      const result = { message_id: 5, date: 1, chat: { id: 1, type: "private" } };
      return Response.json({ ok: true, result });
    },
  });
  const words = { text: "hi", entities: [] };
  const call = { send: "file", main: true, file: { id: "f", kind }, words } as const;
  expect(await sendFile(api, "1", call, { disable_notification: true })).toBe(5);
  return calls[0];
}

describe("sendFile", () => {
  it.each([
    ["photo", "sendPhoto"],
    ["voice", "sendVoice"],
    ["audio", "sendAudio"],
    ["video", "sendVideo"],
    ["animation", "sendAnimation"],
    ["document", "sendDocument"],
  ] as const)("sends a %s with its words by %s", async (kind, method) => {
    const call = await callFor(kind);
    expect(call?.method).toBe(method);
    expect(call?.payload).toMatchObject({ caption: "hi", disable_notification: true });
    expect(Object.values(call?.payload ?? {})).toContain("f");
  });

  it.each([
    ["video-note", "sendVideoNote"],
    ["sticker", "sendSticker"],
  ] as const)("sends a %s by %s, without words, which it cannot carry", async (kind, method) => {
    const call = await callFor(kind);
    expect(call?.method).toBe(method);
    expect(call?.payload).not.toHaveProperty("caption");
  });
});
