import { expect, it } from "vitest";
import { openChat } from "./chat-stage.ts";

const texts = (language: "de" | null, word: string) => ({
  language,
  description: word,
  shortDescription: word,
  commands: [{ command: "new", description: word }],
});

it("menus follow language and role", async () => {
  const { server, chat } = await openChat();
  for (const id of [11, 12]) server.person({ id, name: "Ann" }).start();
  await chat.introduce({
    texts: [texts(null, "A new call"), texts("de", "Neuer Anruf")],
    people: [{ chat: "12", commands: [{ command: "cases", description: "Open cases" }] }],
  });
  const shown = (id: number, language: string) =>
    server.commandsShown(id, language).map(({ description }) => description);
  expect(shown(11, "en")).toEqual(["A new call"]);
  expect(shown(11, "de")).toEqual(["Neuer Anruf"]);
  expect(shown(12, "de")).toEqual(["Open cases"]);
});

it("a menu that cannot be set stops nothing", async () => {
  const { server, chat, log } = await openChat();
  server.faults.add({ kind: "tooManyRequests", retryAfterSeconds: 9 }, { times: 2 });
  await chat.introduce({ texts: [texts(null, "A new call")], people: [] });
  expect(log.filter((line) => line.includes("introduction-failed"))).toHaveLength(2);
  expect(server.calls("setMyShortDescription")).toHaveLength(1);
});
