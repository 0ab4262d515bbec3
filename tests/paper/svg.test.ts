import { describe, expect, it } from "vitest";
import { escapeXml, svgBox, svgText } from "../../src/paper/svg.ts";

describe("SVG", () => {
  it("holds any text as text", () => {
    expect(escapeXml('<b>&"\u0000\uD800\uFFFE🚜')).toBe("&lt;b&gt;&amp;&quot;🚜");
    expect(svgText("</text><script>", { x: 1, y: 2, size: 3 })).not.toContain("<script>");
  });

  it("gives each line its direction", () => {
    const place = { x: 0, y: 0, size: 10 };
    expect(svgText("a", place)).toContain(">\u2066a\u2069<");
    expect(svgText("ע", { ...place, rightToLeft: true })).toContain(">\u2067ע\u2069<");
  });

  it("draws no box of less than nothing", () => {
    expect(svgBox({ x: 0, y: 0, width: -5, height: 1 })).toContain('width="0"');
  });
});
