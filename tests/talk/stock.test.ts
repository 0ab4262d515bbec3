import { describe, expect, it } from "vitest";
import type { StockedPart } from "../../src/domain/stock.ts";
import { jobSheet } from "../../src/talk/job-sheet.ts";
import { kitPart, stockedFor } from "../../src/talk/stock.ts";
import { Dialog, speech } from "../helpers/dialog.ts";

const line = (more: Partial<StockedPart>): StockedPart => ({
  ...{ part: "battery", number: "B-1", stock: 1, kinds: [] },
  ...more,
});
const numbers = (stock: readonly StockedPart[], machine = {}) =>
  stockedFor("battery", machine, stock).map((one) => one.number);

describe("what the shop keeps of a part", () => {
  it("is what fits the machine's kind and volts; what is on the shelf comes first", () => {
    const stock = [
      line({ number: "none", stock: 0 }),
      line({ number: "any" }),
      line({ number: "24 V", volts: 24 }),
      line({ number: "mower", kinds: ["ride-on-mower"] }),
      line({ number: "strap", part: "earth-strap" }),
    ];
    expect(numbers(stock, { kind: "combine", volts: 12 })).toEqual(["any", "none"]);
    expect(numbers(stock, { kind: "ride-on-mower" })).toEqual(["any", "24 V", "mower", "none"]);
    expect(numbers(stock)).toEqual(["any", "24 V", "none"]);
  });
});

describe("a part of the kit", () => {
  const said = (stock: readonly StockedPart[] | undefined, part: string) => {
    const dialog = new Dialog("en", stock === undefined ? {} : { stock });
    const item = { part, chance: 0.4, carry: true, adds: 0.1 };
    return speech.wording.phrase(kitPart(item, dialog.state, dialog.desk), "en");
  };

  it("names the shop's own number, its stock and shelf", () => {
    expect(said([line({ number: "LH-7", stock: 3, shelf: "A2" })], "battery")).toBe(
      "Starter battery – needed in 40% of such cases · our number LH-7, in stock: 3, shelf A2",
    );
    expect(said([line({ number: "LH-7", stock: 0 })], "battery")).toContain("none in stock");
  });

  it("without a number of the shop says how the right one is found, where not any fits", () => {
    expect(said([], "battery")).toContain("look it up by the serial number");
    expect(said(undefined, "battery")).toContain("look it up by the serial number");
    expect(said([], "fuses")).toBe("Assorted fuses – needed in 40% of such cases");
  });

  it("stands on the slip, the sheet and the printed sheet alike", () => {
    const stock = [line({ part: "solenoid", number: "LH-S" }), line({ number: "LH-B" })];
    const dialog = new Dialog("en", { stock })
      .say("petrol garden tractor, one click, lights stay bright")
      .press("All is safe")
      .press("More …")
      .press("Talk to a person")
      .press("Hand to a technician", "2")
      .press("Ilse", "2");
    const slip = dialog.shown.find((one) => one.slot === "slip-2")?.rendered.text ?? "";
    const sheet = dialog.shown.find((one) => one.slot === "sheet-3")?.rendered.text ?? "";
    const paper = JSON.stringify(jobSheet(dialog.state, dialog.desk));
    for (const text of [slip, sheet, paper]) expect(text).toContain("LH-S");
  });
});
