import { describe, expect, it } from "vitest";
import { loadKnowledge } from "../../src/knowledge/load.ts";
import { readerModel } from "../../src/reading/reader-model.ts";

describe("the reader's part of the knowledge", () => {
  it("holds every observation and every machine with its names", async () => {
    const loaded = await loadKnowledge("flows");
    if (!loaded.ok) throw new Error(loaded.problems[0]?.says);
    const model = readerModel(loaded.value);
    expect([...model.observations.keys()]).toEqual([...loaded.value.observations.keys()]);
    expect(model.machines.map((machine) => machine.id)).toEqual([...loaded.value.machines.keys()]);
    for (const machine of model.machines) expect(machine.synonyms.length).toBeGreaterThan(0);
    expect(model.observations.get("battery-rest-volts")).toMatchObject({ unit: "V" });
    expect(model.observations.get("on-start")?.states.map((state) => state.id)).toContain("starts");
  });
});
