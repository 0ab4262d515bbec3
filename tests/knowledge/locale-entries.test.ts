import { describe, expect, it } from "vitest";
import { readLocaleFile } from "../../src/knowledge/locale-entries.ts";

describe("reading a locale file", () => {
  it("gives each message its line, its variables, its longest form and its mark", () => {
    const { entries, problems, reviewed } = readLocaleFile(
      "chat.ftl",
      `# reviewed: Ana Ruiz, 3 March

# en: 0123abcd
# Said first.
hello = Hi { $name }, { NUMBER($count) } { other }

-firm = Farm
choice = { $n ->
    [one] a
   *[other] four
} { -firm }
`,
    );
    expect(problems).toEqual([]);
    expect(reviewed).toBe("Ana Ruiz, 3 March");
    const [hello, firm, choice] = entries;
    expect(hello).toMatchObject({ key: "hello", line: 5, madeFrom: "0123abcd", plain: null });
    expect([...(hello?.variables ?? [])]).toEqual(["name", "count"]);
    expect(hello?.references).toEqual(["other"]);
    expect(firm).toMatchObject({ key: "-firm", plain: "Farm", madeFrom: null });
    expect(choice?.length).toBe("four ".length);
    expect(choice?.references).toEqual(["-firm"]);
  });

  it("says what it cannot read, and reads the rest", () => {
    const { entries, problems } = readLocaleFile(
      "f.ftl",
      "a = A\nb = { $x\nc = C\nd = { NUM(1) }\n",
    );
    expect(entries.map(({ key }) => key)).toEqual(["a", "c", "d"]);
    expect(problems.map(({ line }) => line)).toEqual([2, 4]);
    expect(problems[0]?.says).toContain('"b = { $x" cannot be read');
    expect(problems[1]?.says).toBe("There is no function NUM().");
  });

  it("gives the same digest to the same text, whatever its comment", () => {
    const digest = (text: string) => readLocaleFile("f", text).entries[0]?.digest;
    expect(digest("a = Same\n")).toBe(digest("# New remark\na   = Same"));
    expect(digest("a = Same\n")).not.toBe(digest("a = Other\n"));
    expect(digest("a = Same\n")).toMatch(/^[0-9a-f]{8}$/);
  });
});
