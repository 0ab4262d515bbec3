// Covers also: src/rehearsal/text/html-tag.ts, src/rehearsal/text/html-reference.ts
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseHtml } from "../../../src/rehearsal/text/html.ts";

/** Why the text was refused, without the part all these refusals share. */
function reasonFor(source: string): string {
  try {
    parseHtml(source);
  } catch (error) {
    return String(error).replace("ApiRefusal: 400 Bad Request: can't parse entities: ", "");
  }
  throw new Error(`"${source}" was not refused.`);
}

describe("HTML texts", () => {
  // Tags and nesting: Bot API reference text in @grammyjs/types, "HTML style".
  it.each([
    ["<b>bold</b>", "bold", [{ type: "bold", offset: 0, length: 4 }]],
    ["<strong>x</strong>", "x", [{ type: "bold", offset: 0, length: 1 }]],
    ["a <i>x</i>", "a x", [{ type: "italic", offset: 2, length: 1 }]],
    ["<em>x</em>", "x", [{ type: "italic", offset: 0, length: 1 }]],
    [
      "<u>x</u><ins>y</ins>",
      "xy",
      [
        { type: "underline", offset: 0, length: 1 },
        { type: "underline", offset: 1, length: 1 },
      ],
    ],
    ["<s>x</s>", "x", [{ type: "strikethrough", offset: 0, length: 1 }]],
    ['<span class="tg-spoiler">x</span>', "x", [{ type: "spoiler", offset: 0, length: 1 }]],
    ["<tg-spoiler>x</tg-spoiler>", "x", [{ type: "spoiler", offset: 0, length: 1 }]],
    ["<code>x</code>", "x", [{ type: "code", offset: 0, length: 1 }]],
    ["<pre>x</pre>", "x", [{ type: "pre", offset: 0, length: 1 }]],
    [
      '<pre><code class="language-c">x</code></pre>',
      "x",
      [{ type: "pre", offset: 0, length: 1, language: "c" }],
    ],
    ["<blockquote>x</blockquote>", "x", [{ type: "blockquote", offset: 0, length: 1 }]],
    [
      "<blockquote expandable>x</blockquote>",
      "x",
      [{ type: "expandable_blockquote", offset: 0, length: 1 }],
    ],
    [
      '<a href="https://farm.example/a?b=1&amp;c=2">x</a>',
      "x",
      [{ type: "text_link", offset: 0, length: 1, url: "https://farm.example/a?b=1&c=2" }],
    ],
    [
      '<tg-time unix="1647531900" format="wDT">x</tg-time>',
      "x",
      [
        {
          type: "date_time",
          offset: 0,
          length: 1,
          unix_time: 1_647_531_900,
          date_time_format: "wDT",
        },
      ],
    ],
    [
      '<tg-emoji emoji-id="53">x</tg-emoji>',
      "x",
      [{ type: "custom_emoji", offset: 0, length: 1, custom_emoji_id: "53" }],
    ],
    ["<B>x</b>", "x", [{ type: "bold", offset: 0, length: 1 }]],
    ["<b></b>x", "x", []],
  ])("%s", (source, text, entities) => {
    expect(parseHtml(source)).toEqual({ text, entities });
  });

  it("counts offsets in UTF-16 units and puts the longer entity first", () => {
    // 🚜 is one character of two UTF-16 units.
    expect(parseHtml("🚜 <b>a <i>b</i></b>")).toEqual({
      text: "🚜 a b",
      entities: [
        { type: "bold", offset: 3, length: 3 },
        { type: "italic", offset: 5, length: 1 },
      ],
    });
  });

  it("a user link names the person", () => {
    expect(parseHtml('<a href="tg://user?id=42">x</a>').entities[0]).toMatchObject({
      type: "text_mention",
      user: { id: 42 },
    });
  });

  it("reads the four named references and numeric ones, and leaves others alone", () => {
    expect(parseHtml("5 &lt; 6 &gt; &amp; &quot; &#8364; &#x20AC; &euro; & &nbsp;").text).toBe(
      '5 < 6 > & " € € &euro; & &nbsp;',
    );
  });

  // Wordings: source of the library under the Bot API server, public repository tdlib/td.
  it.each([
    ["5 <6", "Unclosed start tag at byte offset 2"],
    ["5 < 6", 'Unsupported start tag "" at byte offset 2'],
    ["5 < 6 > 4", 'Unsupported start tag "" at byte offset 2'],
    ["größer <als", "Unclosed start tag at byte offset 9"],
    ["<br/>", 'Unsupported start tag "br/" at byte offset 0'],
    ["a <table>x</table>", 'Unsupported start tag "table" at byte offset 2'],
    ["<b>x", 'Can\'t find end tag corresponding to start tag "b"'],
    ["x</b>", "Unexpected end tag at byte offset 1"],
    ["<b>x</i>", 'Unmatched end tag at byte offset 4, expected "</b>", found "</i>"'],
    ["<b>x</b", "Unclosed end tag at byte offset 4"],
    [
      "<a href>x</a>",
      'Expected equal sign in declaration of an attribute of the tag "a" at byte offset 0',
    ],
    ["<span>x</span>", 'Tag "span" must have class "tg-spoiler" at byte offset 0'],
  ])("%s is refused", (source, reason) => {
    expect(reasonFor(source)).toBe(reason);
  });

  it("gives back any text that was escaped", () => {
    const escaped = (text: string) =>
      text.replace(/[&<>]/g, (char) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;" })[char] ?? char);
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (text) => {
        expect(parseHtml(`<b>${escaped(text)}</b>`).text).toBe(text);
      }),
      { seed: 20_261_125 },
    );
  });
});
