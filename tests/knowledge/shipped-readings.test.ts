import { describe, expect, it } from "vitest";
import { shippedKnowledge } from "../helpers/shipped.ts";

const knowledge = await shippedKnowledge();

/** Where a reading falls, at 12 V. */
function band(id: string, value: number): string | undefined {
  return knowledge.observations
    .get(id)
    ?.states.find(({ from = -Infinity, to = Infinity }) => value >= from && value < to)?.id;
}

describe("bands against published figures", () => {
  // Battery Council table of open-circuit volts and specific gravity at 26.7 °C.
  it.each([
    [12.65, "good"],
    [12.45, "good"],
    [12.24, "low"],
    [12.06, "low"],
    [11.89, "flat"],
  ])("calls a battery at %f V at rest %s", (volts, expected) => {
    expect(band("battery-rest-volts", volts)).toBe(expected);
  });

  it("does not take a battery over 12.9 V for rested, nor one with a dead cell for flat", () => {
    expect(band("battery-rest-volts", 13.2)).toBe("not-rested"); // above the table's full charge
    // five sound cells of 2.108 V (the same table, 12.65 / 6)
    expect(band("battery-rest-volts", (5 * 12.65) / 6)).toBe("cell-down");
  });

  it("takes the cell spread of golf-car service guides: 0.050 is suspect", () => {
    const spread = (cells: readonly number[]) => Math.max(...cells) - Math.min(...cells);
    expect(band("cell-spread", spread([1.265, 1.26, 1.255, 1.265, 1.21, 1.26]))).toBe("one-low");
    expect(band("cell-spread", spread([1.18, 1.19, 1.2, 1.185, 1.195, 1.19]))).toBe("even");
    expect(band("cell-spread", 0.05)).toBe("one-low");
  });

  it("looks into cranking volts where sources differ", () => {
    // US Army TM 10-3930-671-24: more than 9.6 V; TM 5-3895-382-24: 8 to 10 V at 10 to 27 °C.
    expect(band("battery-start-volts", 9.7)).toBe("holds");
    expect(band("battery-start-volts", 8.5)).toBe("sags");
    expect(band("battery-start-volts", 7)).toBe("collapses");
  });

  it("looks into an earth drop between 0.2 and 0.7 V", () => {
    // US Army TM 5-3820-256-24-4: 0.2 V; TM 5-3895-382-24, engines over 2,000 h: 0.7 V.
    expect(band("ground-drop-volts", 0.19)).toBe("good");
    expect(band("ground-drop-volts", 0.3)).toBe("look-into"); // a tester maker's 0.3 V lies between
    expect(band("ground-drop-volts", 0.71)).toBe("bad");
    // TM 5-3820-256-24-4: no drop at a connection; a car maker's manual: 0.1 V.
    expect(band("plus-clamp-drop-volts", 0.05)).toBe("good");
    expect(band("minus-clamp-drop-volts", 0.2)).toBe("look-into");
  });

  it("accepts the charging volts of two engine makers and refuses less than 13 V", () => {
    // Small diesel 14.4 ± 0.3 V at 20 °C and −0.1 V per 10 °C; small petrol twin 13.8 to 15.0 V.
    for (const volts of [13.8, 14.1, 14.4, 14.7, 14.99])
      expect(band("charging-volts", volts)).toBe("good");
    expect(band("charging-volts", 12.6)).toBe("none");
    // The same diesel at −10 °C: 14.7 ± 0.3 V, so 15.0 V is no overcharge there; 15.5 V is one anywhere.
    expect(band("charging-volts", 15)).toBe("cold-only");
    expect(band("charging-volts", 15.5)).toBe("high");
  });

  it("asks 8 V of the start command", () => {
    // Data sheet of a 1.4 kW starter: pulls in at 8 V or more.
    expect(band("trigger-start-volts", 8)).toBe("good");
    expect(band("trigger-start-volts", 7.9)).toBe("weak");
  });

  it("takes over 35 mA at rest for more than normal", () => {
    // Training module of a car maker: over 35 mA excessive; trade figures 20 to 120 mA.
    expect(band("resting-draw", 0.02)).toBe("normal");
    expect(band("resting-draw", 0.05)).toBe("look-into");
    expect(band("resting-draw", 0.3)).toBe("high");
  });

  // Car makers' service manuals, load test at half the cold cranking amps for 15 s, 12 V battery.
  it.each([
    [20, 9.6],
    [10, 9.4],
    [-1, 9.1],
    [-7, 8.9],
    [-12, 8.7],
    [-18, 8.5],
  ])("at %d °C does not call the limit of %f V a failure", (celsius, limit) => {
    expect(band("load-volts", limit)).toBe(celsius >= 20 ? "passes" : "by-temperature");
    expect(band("load-volts", 8.5 - 0.01)).toBe("fails"); // below every limit of the table
    expect(band("load-volts", 9.6)).toBe("passes"); // at or above every limit
  });

  it("tells the load limits of the table to whoever has to judge by temperature", () => {
    const verdicts = knowledge.checks.get("read-load-volts")?.verdicts ?? [];
    const judge =
      verdicts.find(
        ({ states, onlyIf }) => states.includes("by-temperature") && onlyIf.length === 0,
      )?.text ?? "";
    for (const limit of ["9.6", "9.4", "9.1", "8.9", "8.7", "8.5"]) expect(judge).toContain(limit);
  });

  it("allows at most 15 seconds on the starter and two minutes of rest", () => {
    // US Army TM 10-3930-671-24: 30 s at most, then at least 2 minutes; a car manual: 15 s.
    const caution = knowledge.hazards.get("cranking")?.caution ?? "";
    expect(caution).toMatch(/15 seconds/);
    expect(caution).toMatch(/two minutes/);
  });

  it("takes a glow plug of 8 to 9 A for sound and one of 5 A for open or weak", () => {
    // Service manuals of small diesels: 8 to 9 A a plug, 1.0 to 1.5 ohms.
    for (const amps of [8, 8.5, 9]) expect(band("glow-amps", amps)).toBe("all");
    expect(band("glow-amps", 5)).toBe("some");
    expect(band("glow-amps", 0)).toBe("none");
  });

  it("judges compression by limit and by spread", () => {
    // A 3-cylinder mower diesel: 32 kgf/cm2 (31.4 bar), limit 26 (25.5 bar), spread 2.5 (2.45 bar);
    // another: 29 bar, limit 26 bar, spread 2.9 bar. One kgf/cm2 is 0.980665 bar.
    const bar = (kgf: number) => kgf * 0.980665;
    expect(band("compression-lowest", bar(32))).toBe("within");
    expect(band("compression-lowest", bar(26) - 0.1)).toBe("under");
    expect(band("compression-lowest", 26)).toBe("look-into");
    expect(band("compression-spread", 1)).toBe("even");
    expect(band("compression-spread", bar(2.5) + 0.1)).toBe("look-into");
    expect(band("compression-spread", 3.5)).toBe("uneven");
  });
});
