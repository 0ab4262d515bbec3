import { describe, expect, it } from "vitest";
import { relabelled } from "../../src/knowledge/circuit-labels.ts";
import { drawCircuit, partsOfFault } from "../../src/paper/circuit-picture.ts";
import { circuitRows } from "../../src/paper/circuit-rows.ts";
import { renderPng } from "../../src/paper/png.ts";
import { circuitNamed, shippedCircuits } from "../helpers/circuits.ts";

/** Covers the picture with its rows, symbols, letters and numbers. */
describe("the circuit picture", () => {
  it("puts every part of every circuit into exactly one row, joined end to end", () => {
    for (const circuit of shippedCircuits.values()) {
      const rows = circuitRows(circuit);
      const drawn = rows.flatMap(({ parts }) => parts.map(({ part }) => part.id)).sort();
      const own = circuit.parts.filter(({ hidden }) => !hidden).map(({ id }) => id);
      expect(drawn, circuit.id).toEqual(own.sort());
      for (const { parts } of rows) {
        parts.slice(1).forEach((placed, i) => void expect(placed.from).toBe(parts[i]?.to));
      }
    }
  });

  it("reads supply, control, power; power from the earthed post round to it again", () => {
    for (const circuit of shippedCircuits.values()) {
      const rows = circuitRows(circuit);
      const kinds = rows.map(({ kind }) => kind);
      expect([...new Set(kinds)], circuit.id).toEqual(["supply", "control", "power"]);
      const power = rows.find(({ kind }) => kind === "power")?.parts ?? [];
      expect(power[0]?.from).toBe(circuit.reference);
      expect(power.at(-1)?.to).toBe(circuit.reference);
      expect(power.map(({ part }) => part.sort)).toContain("motor");
      const supply = rows.find(({ kind }) => kind === "supply")?.parts ?? [];
      expect(supply.map(({ part }) => part.sort)).toContain("fuse");
      expect(supply.map(({ part }) => part.sort)).not.toContain("coil");
      const control = rows.find(({ kind }) => kind === "control")?.parts ?? [];
      expect(control.map(({ part }) => part.sort)).toContain("coil");
    }
  });

  it("numbers every place for the red probe once", () => {
    for (const circuit of shippedCircuits.values()) {
      const { points, svg } = drawCircuit(circuit);
      const read = circuit.testPoints.filter(
        ({ quantity }) => quantity === "volts" || quantity === "drop",
      );
      expect(points.flatMap(({ testPoints }) => testPoints).sort()).toEqual(
        read.map(({ id }) => id).sort(),
      );
      expect(points.map(({ number }) => number)).toEqual(points.map((_, i) => i + 1));
      expect(svg.match(/r="9" fill="#000000"/g)).toHaveLength(points.length);
    }
  });

  it("marks what a fault changes, and nothing else", () => {
    const circuit = circuitNamed("compact-tractor");
    expect(partsOfFault(circuit, "solenoid-contacts-burnt")).toEqual(["solenoid-contact"]);
    expect(partsOfFault(circuit, "solenoid-sticking")).toEqual(["solenoid-contact"]);
    expect(partsOfFault(circuit, "engine-seized")).toEqual(["starter"]);
    expect(partsOfFault(circuit, "no-such-fault")).toEqual([]);
    const marks = (svg: string) => svg.match(/stroke-dasharray="7 4"/g)?.length ?? 0;
    expect(marks(drawCircuit(circuit).svg)).toBe(0);
    expect(marks(drawCircuit(circuit, { marked: ["fuse"] }).svg)).toBe(1);
  });

  it("speaks the reader's language and survives any label", () => {
    const odd = relabelled(circuitNamed("garden-tractor"), (key) =>
      key === "circuit-main-fuse" ? 'Sicherung <"&> X' : key,
    );
    const { svg } = drawCircuit(odd, {
      headings: { supply: "Speisung", control: "Steuerung", power: "Last" },
    });
    expect(svg).toContain("Steuerung");
    expect(svg).toContain("&lt;&quot;&amp;&gt;");
  });

  it("is black and white, and can be drawn for every topology", async () => {
    for (const id of ["garden-tractor", "compact-tractor", "old-tractor-6v", "combine-24v"]) {
      const { svg, width, height } = drawCircuit(circuitNamed(id));
      const colours = new Set(svg.match(/#[0-9a-f]{6}/gi));
      expect([...colours].sort()).toEqual(["#000000", "#ffffff"]);
      expect(width).toBeLessThan(1200);
      expect(height).toBeLessThan(1100);
      expect((await renderPng(svg)).length).toBeGreaterThan(5000);
    }
  }, 20_000);
});
