import { describe, expect, it } from "vitest";
import type { Knowledge } from "../../src/domain/knowledge.ts";
import { expectedWords } from "../../src/knowledge/locale-words.ts";
import { smallKnowledge } from "./locale-words.test-data.ts";

const small: Knowledge = {
  ...smallKnowledge({
    tools: { meter: "Voltmeter" },
    states: { "on-start": { "one-click": "One click" } },
  }),
  parts: new Map([
    [
      "battery",
      {
        id: "battery",
        title: "Battery",
        alternates: [],
        universal: false,
        fit: ["Volts", "Cold cranking amps"],
        needs: {},
        price: [1, 2],
        carryMinutes: 1,
        source: "test",
      },
    ],
  ]),
  hazards: new Map([
    [
      "acid",
      {
        id: "acid",
        title: "Acid",
        caution: "Wear goggles.",
        safeState: ["Key off"],
        source: "test",
      },
    ],
  ]),
  redFlags: new Map([
    [
      "smoke",
      {
        id: "smoke",
        title: "Smoke",
        say: "Go away.",
        emergency: true,
        offer: true,
        seenAs: [],
        source: "test",
      },
    ],
  ]),
  machines: new Map([
    [
      "ride-on-mower",
      {
        id: "ride-on-mower",
        title: "Ride-on mower",
        synonyms: ["mower"],
        fuels: { petrol: 1 },
        volts: [],
        systems: [],
        features: new Map(),
        circuits: {},
        offer: 1,
        family: "garden-machines",
        source: "test",
      },
    ],
  ]),
};

describe("the words a language must have", () => {
  it("are those of every piece of the knowledge, by kind and id", () => {
    expect([...expectedWords(small)]).toEqual([
      ["observation-on-start", "on-start"],
      ["state-on-start-one-click", "One click"],
      ["part-battery", "Battery"],
      ["part-battery-fit-1", "Volts"],
      ["part-battery-fit-2", "Cold cranking amps"],
      ["hazard-acid", "Acid"],
      ["hazard-acid-caution", "Wear goggles."],
      ["hazard-acid-safe-1", "Key off"],
      ["flag-smoke", "Smoke"],
      ["flag-smoke-say", "Go away."],
      ["tool-meter", "Voltmeter"],
      ["machine-ride-on-mower", "Ride-on mower"],
      ["machine-garden-machines-family", "Garden machines"],
    ]);
  });

  it("are keys that Fluent can read", () => {
    for (const key of expectedWords(small).keys()) expect(key).toMatch(/^[a-zA-Z][\w-]*$/);
  });
});
