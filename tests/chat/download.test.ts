import { describe, expect, it } from "vitest";
import { createDownload } from "../../src/chat/download.ts";
import { openChat } from "./chat-stage.ts";

const MEGABYTE = 1024 * 1024;
const file = (id: string, bytes?: number) => ({
  id,
  kind: "document" as const,
  ...(bytes === undefined ? {} : { bytes }),
});

describe("downloading", () => {
  it("brings the bytes a person sent", async () => {
    const { server, chat } = await openChat();
    const ann = server.person({ id: 11, name: "Ann" });
    ann.start();
    const id = ann.sendDocument(Buffer.from("the plate")).document?.file_id ?? "";
    const got = await chat.download(file(id));
    expect(got.ok && Buffer.from(got.bytes).toString()).toBe("the plate");
  });

  it("says what is too big, from whatever tells first", async () => {
    const { server, chat } = await openChat();
    expect(await chat.download(file("x", 21 * MEGABYTE))).toEqual({ ok: false, why: "too-big" });
    expect(server.calls("getFile")).toEqual([]);
    const lying = createDownload({
      locate: async () => ({ path: "p" }),
      address: (path) => `http://localhost/${path}`,
      fetch: async () =>
        new Response(
          new ReadableStream({
            pull: (controller) => controller.enqueue(new Uint8Array(8 * MEGABYTE)),
          }),
        ),
    });
    expect(await lying(file("x"))).toEqual({ ok: false, why: "too-big" });
    const honest = createDownload({
      locate: async () => ({ path: "p", bytes: 21 * MEGABYTE }),
      address: (path) => path,
    });
    expect(await honest(file("x"))).toEqual({ ok: false, why: "too-big" });
  });

  it("tells a file that is gone from trouble on the way", async () => {
    const answers = (status: number) =>
      createDownload({
        locate: async () => ({ path: "p" }),
        address: (path) => path,
        fetch: async () => new Response("x", { status }),
      })(file("x"));
    expect(await answers(404)).toEqual({ ok: false, why: "gone" });
    expect(await answers(502)).toEqual({ ok: false, why: "trouble" });
    const nowhere = createDownload({ locate: async () => ({}), address: (path) => path });
    expect(await nowhere(file("x"))).toEqual({ ok: false, why: "gone" });
    const { chat, server } = await openChat();
    server.faults.add({ kind: "resetBefore" }, { method: "getFile" });
    expect(await chat.download(file("x"))).toEqual({ ok: false, why: "trouble" });
  });

  it("never lets the address out", async () => {
    const failing = createDownload({
      locate: async () => ({ path: "p" }),
      address: () => "http://localhost/bot-with-token",
      fetch: (address) => Promise.reject(new Error(String(address))),
    });
    expect(JSON.stringify(await failing(file("x")))).not.toContain("token");
  });
});
