import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { chatText, readLocales } from "../../src/knowledge/locale-files.ts";

it("the locales are read, English first, messages apart from the knowledge's words", async () => {
  const folder = await mkdtemp(join(tmpdir(), "locales-"));
  const write = async (name: string, text: string) => {
    await mkdir(join(folder, name, ".."), { recursive: true });
    await writeFile(join(folder, name), text);
  };
  await write("de/units.ftl", "u = U");
  await write("de/chat.ftl", "c = C\r\n");
  await write("de/knowledge.ftl", "k = K");
  await write("de/phrases.yaml", "x: y");
  await write("en/chat.ftl", "e = E");
  await write("README.md", "no language");
  const locales = await readLocales(folder);
  expect(locales).toEqual([
    { language: "en", chat: { "chat.ftl": "e = E" }, knowledge: null },
    { language: "de", chat: { "chat.ftl": "c = C\n", "units.ftl": "u = U" }, knowledge: "k = K" },
  ]);
  expect(locales[1] && chatText(locales[1])).toBe("c = C\n\nu = U");
  await rm(folder, { recursive: true });
});
