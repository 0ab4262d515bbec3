import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { introductionOf } from "../../src/commands/introduction.ts";
import { openSpeech } from "../../src/commands/speech.ts";
import { members, speech, workshop } from "../helpers/dialog.ts";

let root: string;
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), "turnrow-speech-"));
  for (const [language, file, text] of [
    ["en", "chat.ftl", "hello = Hello"],
    ["sv", "chat.ftl", "hello = Hej"],
    ["sv", "knowledge.ftl", "fault-battery-flat = Tomt batteri"],
    ["fi", "phrases.yaml", "{}"],
  ] as const) {
    mkdirSync(join(root, "locales", language), { recursive: true });
    writeFileSync(join(root, "locales", language, file), text);
  }
});
afterAll(() => rmSync(root, { recursive: true }));

describe("the words of a chat", () => {
  const small = () => openSpeech(root, workshop.knowledge, { timeZone: "UTC" });

  it("are there for every language with a folder of chat words, English first", () =>
    expect(small().languages).toEqual(["en", "sv"]));

  it("fall back to English, and to the key, rather than to nothing", () => {
    const { word, wording } = small();
    expect(wording.phrase({ key: "hello" }, "sv")).toBe("Hej");
    expect(word("fault-battery-flat", "sv")).toBe("Tomt batteri");
    expect(word("fault-battery-dead", "sv")).toBe(word("fault-battery-dead", "en"));
    expect(word("fault-nonsense", "sv")).toBe("fault-nonsense");
  });
});

describe("what the bot says of itself", () => {
  const introduction = introductionOf(speech, ["en"], members);

  it("has a description and the operator's commands in every language", () => {
    const [english] = introduction.texts;
    expect(english?.language).toBeNull();
    expect(english?.description.length).toBeGreaterThan(20);
    expect(english?.shortDescription.length).toBeLessThanOrEqual(120);
    expect(english?.commands.map((one) => one.command)).toContain("new");
  });

  it("gives each member of the shop the commands of their place, each with words", () => {
    expect(introduction.people.map((one) => one.chat)).toEqual(["2", "3"]);
    const [dispatcher, technician] = introduction.people;
    expect(dispatcher?.commands.map((one) => one.command)).toContain("calls");
    expect(technician?.commands.map((one) => one.command)).toContain("jobs");
    for (const { commands } of introduction.people) {
      for (const { command, description } of commands) {
        expect(command).toMatch(/^[a-z0-9_]{1,32}$/);
        expect(description).not.toContain("command-");
      }
    }
  });
});
