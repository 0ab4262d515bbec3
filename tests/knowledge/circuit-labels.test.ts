import { describe, expect, it } from "vitest";
import { openSpeech } from "../../src/commands/speech.ts";
import { labelKey, relabelled, withCircuitLabels } from "../../src/knowledge/circuit-labels.ts";
import { drawCircuit } from "../../src/paper/circuit-picture.ts";
import { missingGlyphs } from "../../src/paper/glyphs.ts";
import { shippedCircuits } from "../helpers/circuits.ts";
import { workshop } from "../helpers/dialog.ts";

const knowledge = withCircuitLabels(workshop.knowledge, shippedCircuits.values());
const speech = openSpeech(process.cwd(), knowledge, { timeZone: "UTC" });
const drawnLabels = [
  ...new Set(
    [...shippedCircuits.values()].flatMap(({ parts }) =>
      parts.filter(({ hidden }) => !hidden).map(({ label }) => label),
    ),
  ),
];

/** The words of a drawing, each label put together again from its lines. */
const textsOf = (svg: string) =>
  [...svg.matchAll(/<text [^>]*>([^<]*)<\/text>/g)].map((found) =>
    (found[1] ?? "").replaceAll(/[\u2066-\u2069]/g, ""),
  );

describe("what a drawing calls its parts", () => {
  it("has a key of its own for every label", () => {
    expect(new Set(drawnLabels.map(labelKey)).size).toBe(drawnLabels.length);
    expect(knowledge.circuitLabels?.size).toBe(drawnLabels.length);
    expect(labelKey("key START")).toBe("circuit-key-start");
  });

  it.each(["de", "es"])("has words in %s that the pictures can draw", (language) => {
    const words = drawnLabels.map((label) => speech.word(labelKey(label), language));
    expect(words.filter((word) => word.startsWith("circuit-"))).toEqual([]);
    expect(words.filter((word) => missingGlyphs(word).length > 0)).toEqual([]);
    // "contactor" is Spanish as well.
    const same = drawnLabels.filter((label) => speech.word(labelKey(label), language) === label);
    expect(same).toEqual(language === "es" ? ["contactor"] : []);
  });

  it.each(["en", "de", "es"])("stands whole in every drawing in %s", (language) => {
    for (const own of shippedCircuits.values()) {
      const circuit = relabelled(own, (key) => speech.word(key, language));
      const texts = textsOf(drawCircuit(circuit).svg);
      expect(texts.filter((text) => text.includes("…"))).toEqual([]);
      const whole = texts.join(" ");
      for (const { hidden, label } of circuit.parts) {
        if (!hidden) expect(whole, `${own.id} ${label}`).toContain(label);
      }
    }
  });

  it("leaves helpers and everything else as they are", () => {
    for (const circuit of shippedCircuits.values()) {
      const other = relabelled(circuit, () => "x");
      expect(other.parts.filter(({ hidden }) => hidden)).toEqual(
        circuit.parts.filter(({ hidden }) => hidden),
      );
      expect({ ...other, parts: [] }).toEqual({ ...circuit, parts: [] });
    }
  });
});
