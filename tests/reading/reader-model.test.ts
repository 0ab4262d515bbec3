import { describe, expect, it } from "vitest";
import { readerModel } from "../../src/reading/reader-model.ts";
import { shippedKnowledge } from "../helpers/shipped.ts";

const knowledge = await shippedKnowledge();

describe("the reader's part of the knowledge", () => {
  it("holds every observation and every machine with its names", () => {
    const model = readerModel(knowledge);
    expect([...model.observations.keys()]).toEqual([...knowledge.observations.keys()]);
    expect(model.machines.map((machine) => machine.id)).toEqual([...knowledge.machines.keys()]);
    for (const machine of model.machines) expect(machine.synonyms.length).toBeGreaterThan(0);
    expect(model.observations.get("battery-rest-volts")).toMatchObject({ unit: "V" });
    expect(model.observations.get("on-start")?.states.map((state) => state.id)).toContain("starts");
  });
});
