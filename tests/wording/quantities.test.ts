import { describe, expect, it } from "vitest";
import type { Unit } from "../../src/domain/effects.ts";
import { createLanguagePack } from "../../src/wording/language-pack.ts";
import { formatQuantity } from "../../src/wording/quantities.ts";

function shown(quantity: number, unit: Unit, { language = "en", digits }: Options = {}): string {
  const pack = createLanguagePack(language, "", () => {});
  const value = { quantity, unit, ...(digits !== undefined && { digits }) };
  return formatQuantity(value, pack.forms, (key) => key.replace("unit-", "")).replaceAll(
    /\s/g,
    " ",
  );
}
interface Options {
  readonly language?: string;
  readonly digits?: number;
}

describe("quantities", () => {
  it("show as many digits as the unit needs", () => {
    expect(shown(12, "V")).toBe("12.0 volt");
    expect(shown(0.35, "V")).toBe("0.35 volt");
    expect(shown(1.265, "SG")).toBe("1.265 gravity");
    expect(shown(35.4, "min")).toBe("35 minute");
    expect(shown(12, "V", { digits: 2 })).toBe("12.00 volt");
  });

  it("use the decimal mark of the language", () => {
    expect(shown(12.4, "V", { language: "de" })).toBe("12,4 volt");
    expect(shown(12.4, "V", { language: "es" })).toBe("12,4 volt");
  });

  it("show the digits of a meter in every language", () => {
    expect(shown(12.4, "V", { language: "ar-EG" })).toMatch(/^12[.,٫]4 volt$/);
    expect(shown(12.4, "V", { language: "fa" })).toMatch(/^12[.,٫]4 volt$/);
  });

  it("do not split a thousand turns, where dot and comma could be mistaken", () => {
    expect(shown(1200, "rpm")).toBe("1200 rpm");
    expect(shown(1200, "rpm", { language: "de" })).toBe("1200 rpm");
  });

  it("never break between number and unit", () => {
    const pack = createLanguagePack("en", "", () => {});
    expect(formatQuantity({ quantity: 5, unit: "A" }, pack.forms, () => "A")).toBe("5\u00A0A");
  });

  it("show percents as the language does", () => {
    expect(shown(37, "percent")).toBe("37%");
    expect(shown(37, "percent", { language: "de" })).toBe("37 %");
    expect(shown(37.25, "percent", { digits: 1 })).toMatch(/^37\.[23]%$/);
  });

  it("never call anything certain or impossible that is not", () => {
    expect(shown(0.2, "percent")).toBe("<1%");
    expect(shown(99.8, "percent")).toBe(">99%");
    expect(shown(0, "percent")).toBe("0%");
    expect(shown(100, "percent")).toBe("100%");
    expect(shown(0.5, "percent")).toBe("1%");
    expect(shown(99.5, "percent")).toMatch(/^(99|100)%$/);
  });

  it("show a dash for what is no number", () => {
    expect(shown(Number.NaN, "V")).toBe("–");
    expect(shown(Number.POSITIVE_INFINITY, "percent")).toBe("–");
  });
});
