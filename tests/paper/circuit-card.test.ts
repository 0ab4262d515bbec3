import { describe, expect, it } from "vitest";
import { circuitCardSvg, numberedReadings, wishedCircuit } from "../../src/paper/circuit-card.ts";
import { createPrinter, isPicture } from "../../src/paper/print-paper.ts";
import { circuitNamed, shippedCircuits } from "../helpers/circuits.ts";

const wish = {
  ...{ title: "Starting circuit", kind: "compact-tractor", fault: "solenoid-contacts-burnt" },
  readings: [{ point: "starter-start-volts", words: "Motor terminal – healthy 10.4 V" }],
};

describe("the circuit with its readings", () => {
  it("gives every number of every drawing its reading or its place", () => {
    for (const circuit of shippedCircuits.values()) {
      const drawn = wishedCircuit(circuit, wish);
      const lines = numberedReadings(circuit, drawn, wish);
      const numbers = lines.map((text) => Number(/^\d+/.exec(text)?.[0]));
      expect(new Set(numbers), circuit.id).toEqual(new Set(drawn.points.map((one) => one.number)));
      expect(lines.filter((text) => text.includes("10.4 V")).length).toBeLessThanOrEqual(1);
    }
  });

  it("is one picture in black and white, from the right where the language runs so", async () => {
    const circuit = circuitNamed("compact-tractor");
    const svg = circuitCardSvg(circuit, wish, false);
    expect(svg).toContain("Motor terminal – healthy 10.4 V");
    expect(circuitCardSvg(circuit, wish, true)).toContain('text-anchor="end"');
    const print = createPrinter(() => circuit);
    const card = { kind: "circuit", name: "circuit-1", circuit: wish } as const;
    const file = await print({ paper: card, language: "en", rightToLeft: false });
    expect(isPicture(file)).toBe(true);
    // PNG signature and IHDR: W3C PNG Specification, 5.2 and 11.2.2.
    const bytes = Buffer.from(file.bytes);
    expect(bytes.subarray(1, 4).toString()).toBe("PNG");
    const [width, height] = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
    // Bot API, sendPhoto: width and height together at most 10000, at most 20 to 1.
    expect(width + height).toBeLessThan(10_000);
    expect(width).toBeGreaterThan(900);
  }, 20_000);

  it("is answered in words for a machine whose circuit is not known", async () => {
    const card = { kind: "circuit", name: "circuit-1", circuit: wish } as const;
    const file = await createPrinter()({ paper: card, language: "en", rightToLeft: false });
    expect(isPicture(file)).toBe(true);
  });
});
