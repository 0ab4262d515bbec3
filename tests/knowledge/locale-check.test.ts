// Also covers locale-compare.ts and locale-limits.ts, which the check is made of.
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import type { Knowledge } from "../../src/domain/knowledge.ts";
import { checkLocales } from "../../src/knowledge/locale-check.ts";
import { readLocaleFile, textDigest } from "../../src/knowledge/locale-entries.ts";
import { smallKnowledge } from "./locale-words.test-data.ts";

const folders: string[] = [];
afterEach(async () => {
  await Promise.all(folders.splice(0).map((folder) => rm(folder, { recursive: true })));
});

async function check(files: Record<string, string>, knowledge: Knowledge = smallKnowledge({})) {
  const folder = await mkdtemp(join(tmpdir(), "locales-"));
  folders.push(folder);
  for (const [name, text] of Object.entries(files)) {
    await mkdir(join(folder, name, ".."), { recursive: true });
    await writeFile(join(folder, name), text);
  }
  return checkLocales(folder, knowledge);
}

/** A translation that is in order: head, marks and all. */
function inOrder(english: string, translate: (text: string) => string = (text) => text): string {
  const { entries } = readLocaleFile("x", english);
  const marks = new Map(entries.map(({ key, digest }) => [key, digest]));
  const body = translate(english).replaceAll(/^([a-z][\w-]*) =/gm, (line, key) => {
    return `# en: ${marks.get(key)}\n${line}`;
  });
  return `# reviewed: nobody yet\n\n${body}`;
}

const english = "hello = Hello, { $name }.\nbye = Bye.\n";

describe("the check of the languages", () => {
  it("finds nothing where everything is in order", async () => {
    const translation = inOrder(english, (text) => text.replace("Hello", "Hola"));
    const report = await check({ "en/chat.ftl": english, "es/chat.ftl": translation });
    expect(report.problems).toEqual([]);
    expect(report.words).toEqual({
      en: { missing: 0, stale: 0 },
      es: { missing: 0, stale: 0 },
    });
  });

  it("finds a message that Fluent would silently drop, with its line", async () => {
    const { problems } = await check({
      "en/chat.ftl": "a = x\n\nb = { $n -> [one] x *[other] y }\n",
    });
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ file: "locales/en/chat.ftl", line: 3 });
    expect(problems[0]?.says).toContain('"b = {');
  });

  it("counts what is missing and names it with the mark it will need", async () => {
    const report = await check({
      "en/chat.ftl": english,
      "de/chat.ftl": inOrder(english, (text) => text.replace(/bye.*\n/, "")),
    });
    expect(report.words).toMatchObject({ de: { missing: 1, stale: 0 } });
    expect(report.problems).toHaveLength(1);
    expect(report.problems[0]?.file).toBe("locales/de/chat.ftl");
    expect(report.problems[0]?.says).toMatch(/^"bye" is missing.*# en: [0-9a-f]{8}/);
  });

  it("finds what was translated from an older English, or from nobody knows what", async () => {
    const old = inOrder(english);
    const report = await check({
      "en/chat.ftl": english.replace("Bye", "Goodbye"),
      "de/chat.ftl": old,
      "es/chat.ftl": old.replace(/# en: .*\n(?=hello)/, ""),
    });
    expect(report.words).toMatchObject({ de: { missing: 0, stale: 1 } });
    expect(report.words).toMatchObject({ es: { missing: 0, stale: 2 } });
    expect(report.problems.map(({ file, line, at }) => [file, line, at])).toEqual([
      ["locales/de/chat.ftl", 6, "bye"],
      ["locales/es/chat.ftl", 3, "hello"],
      ["locales/es/chat.ftl", 5, "bye"],
    ]);
    expect(report.problems[0]?.says).toContain("has changed");
    expect(report.problems[1]?.says).toContain("nothing says");
  });

  it("takes the same text in another layout for the same text", async () => {
    const report = await check({
      "en/chat.ftl": "# A remark that was added later\nhello =\n    Hello, {$name}.\nbye = Bye.\n",
      "de/chat.ftl": inOrder(english),
    });
    expect(report.problems).toEqual([]);
  });

  it("finds left-over keys, doubled keys and references to nothing", async () => {
    const { problems } = await check({
      "en/chat.ftl": "a = A\nb = { c } { -firm }\n",
      "en/more.ftl": "a = Again\n",
      "de/chat.ftl": `${inOrder("a = A\nb = { c } { -firm }\n")}z = Z\n`,
    });
    const says = problems.map(({ file, at, says }) => `${file} ${at}: ${says}`).join("\n");
    expect(says).toContain('locales/en/more.ftl a: "a" stands twice');
    expect(says).toContain('locales/en/chat.ftl b: There is no message "c".');
    expect(says).toContain('locales/en/chat.ftl b: There is no message "-firm".');
    expect(says).toContain("locales/de/chat.ftl z: English has no such text");
  });

  it("lets each language have terms of its own", async () => {
    const { problems } = await check({
      "en/chat.ftl": english,
      "de/chat.ftl": `${inOrder(english)}-firma = Hof\n`,
    });
    expect(problems).toEqual([]);
  });

  it("finds variables and forms that differ", async () => {
    const source = `a = { $one } { $two }
b = { $way ->
    [chat] By chat
    [trip] By a trip
   *[other] Somehow
}
`;
    const { problems } = await check({
      "en/chat.ftl": source,
      "de/chat.ftl": inOrder(source, (text) =>
        text.replace("{ $two }", "{ $three }").replace(/ +\[trip\].*\n/, ""),
      ),
    });
    const says = problems.map((problem) => `${problem.at}: ${problem.says}`);
    expect(says).toEqual([
      "a: It leaves out { $two }.",
      "a: It uses { $three }, which the English does not have.",
      "b: Its forms for { $way } lack [trip].",
    ]);
  });

  it("lets plural forms differ, as languages do", async () => {
    const source = "m = { $n ->\n    [one] one\n   *[other] { $n } more\n}\n";
    const { problems } = await check({
      "en/chat.ftl": source,
      "pl/chat.ftl": inOrder(source, (text) => text.replace("[one] one", "[few] kilka")),
    });
    expect(problems).toEqual([]);
  });

  it("finds texts that are longer than their place", async () => {
    const report = await check({
      "en/chat.ftl": [
        `toast-a = ${"x".repeat(201)}`,
        `button-b = { $n ->\n    [one] ${"x".repeat(65)}\n   *[other] x\n}`,
        `command-c = ${"x".repeat(257)}`,
        `long = ${"x".repeat(4097)}`,
        `fine = ${"x".repeat(4096)}`,
        `toast-fine = ${"x".repeat(200)}`,
        "",
      ].join("\n"),
    });
    expect(report.problems.map(({ at }) => at)).toEqual([
      "toast-a",
      "button-b",
      "command-c",
      "long",
    ]);
    expect(report.problems[1]).toMatchObject({ line: 2, file: "locales/en/chat.ftl" });
  });

  it("wants each translation to say who has reviewed it", async () => {
    const { problems } = await check({
      "en/chat.ftl": english,
      "de/chat.ftl": inOrder(english).replace("# reviewed: nobody yet", "# by hand"),
      "es/chat.ftl": inOrder(english).replace("nobody yet", "Ana, 3 March"),
    });
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ file: "locales/de/chat.ftl", line: 1 });
  });

  it("says so where there is no English", async () => {
    const { problems } = await check({ "de/chat.ftl": "# reviewed: nobody yet\n" });
    expect(problems[0]?.says).toContain("no English");
  });
});

describe("the check of the knowledge's words", () => {
  const knowledge = smallKnowledge({ tools: { meter: "Voltmeter", brush: "Wire brush" } });
  const digest = textDigest("Voltmeter");
  const brush = `\n# en: ${textDigest("Wire brush")}\ntool-brush = Drahtbürste\n`;
  const head = "# reviewed: nobody yet\n";

  it("finds them missing, stale, left over, or with variables nobody gives", async () => {
    const report = await check(
      {
        "en/chat.ftl": "",
        "de/knowledge.ftl": `${head}\n# en: 00000000\ntool-meter = Voltmeter\n\ntool-gone = Weg\n${brush}`,
        "es/knowledge.ftl": `${head}\n# en: ${digest}\ntool-meter = { $what }\n`,
      },
      knowledge,
    );
    expect(report.words).toEqual({
      en: { missing: 0, stale: 0 },
      de: { missing: 0, stale: 1 },
      es: { missing: 1, stale: 0 },
    });
    const says = report.problems.map(({ file, at, says }) => `${file} ${at} ${says}`);
    expect(says).toHaveLength(4);
    expect(says[0]).toContain("locales/de/knowledge.ftl tool-gone English has no such text");
    expect(says[1]).toContain(`de/knowledge.ftl tool-meter`);
    expect(says[1]).toContain(`# en: ${digest}`);
    expect(says[2]).toContain('es/knowledge.ftl tool-brush "tool-brush" is missing ("Wire brush")');
    expect(says[3]).toContain("es/knowledge.ftl tool-meter A word of the knowledge is plain text");
  });

  it("reports a missing file once, however many words it should hold", async () => {
    const report = await check({ "en/chat.ftl": "", "fr/chat.ftl": head }, knowledge);
    expect(report.words).toMatchObject({ fr: { missing: 2, stale: 0 } });
    expect(report.problems).toHaveLength(1);
    expect(report.problems[0]?.says).toContain("2 texts");
  });

  it("refuses a second home for English words", async () => {
    const { problems } = await check(
      { "en/chat.ftl": "", "en/knowledge.ftl": "tool-meter = Voltmeter\n" },
      knowledge,
    );
    expect(problems).toHaveLength(1);
    expect(problems[0]?.file).toBe("locales/en/knowledge.ftl");
  });

  it("finds English titles that are too long for a button", async () => {
    const long = smallKnowledge({ states: { "on-start": { hum: "x".repeat(65) } } });
    const { problems } = await check({ "en/chat.ftl": "" }, long);
    expect(problems.map(({ at }) => at)).toEqual(["state-on-start-hum"]);
  });
});
