import { describe, expect, it } from "vitest";
import { layOut, type WordedLine } from "../../src/wording/lay-out.ts";

const marks = { caution: () => "Caution:", number: String };
const lay = (...lines: WordedLine[]) => layOut(lines, marks);

describe("lines", () => {
  it("stand below one another, with an empty line where a gap is wanted", () => {
    expect(lay({ text: "a" }, { text: "b" }, { text: "c", gap: true }).text).toBe("a\nb\n\nc");
  });

  it("leave nothing behind where they hold no text, but keep the gap they asked for", () => {
    const { text } = lay({ text: "a" }, { text: " ", gap: true }, { text: "b" });
    expect(text).toBe("a\n\nb");
  });

  it("never begin a message with an empty line", () => {
    expect(lay({ text: "a", gap: true }).text).toBe("a");
  });

  it("show a heading in bold and a quote as one", () => {
    expect(
      lay({ text: "🚜 Case 7", style: "heading" }, { text: "just clicks", style: "quote" }),
    ).toEqual({
      text: "🚜 Case 7\njust clicks",
      entities: [
        { type: "bold", offset: 0, length: 9 },
        { type: "blockquote", offset: 10, length: 11 },
      ],
    });
  });

  it("begin bullets with a dot and warnings with a word, in bold", () => {
    const { text, entities } = lay(
      { text: "one", style: "bullet" },
      { text: "two", style: "caution" },
    );
    expect(text).toBe("• one\nCaution: two");
    expect(entities).toEqual([{ type: "bold", offset: 6, length: 8 }]);
  });

  it("number several steps, anew under each heading, and mark a step that stands alone", () => {
    const step = (text: string): WordedLine => ({ text, style: "step" });
    const heading: WordedLine = { text: "H", style: "heading" };
    expect(lay(step("a"), { text: "note" }, step("b"), heading, step("c")).text).toBe(
      "1. a\nnote\n2. b\nH\n▸ c",
    );
  });
});
