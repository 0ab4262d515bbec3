import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, it } from "vitest";
import { type Knowledge, type Row, wordKey } from "../../src/domain/knowledge.ts";
import { causeGroups, machineKinds, reporters } from "../../src/domain/vocabulary.ts";
import { loadKnowledge } from "../../src/knowledge/load.ts";
import { expectedWords } from "../../src/knowledge/locale-words.ts";

let knowledge: Knowledge;
beforeAll(async () => {
  const read = await loadKnowledge(fileURLToPath(new URL("../../flows", import.meta.url)));
  if (!read.ok) throw new Error(read.problems.map(({ says }) => says).join("\n"));
  knowledge = read.value;
}, 60_000);

const states = (id: string) => knowledge.observations.get(id)?.states.map((state) => state.id);
const sum = (row: Row) => row.reduce((total, value) => total + value, 0);
const words = (text: string) => text.split(" ");

/** Where a reading falls, at 12 V. */
function band(id: string, value: number): string | undefined {
  return knowledge.observations
    .get(id)
    ?.states.find(({ from = -Infinity, to = Infinity }) => value >= from && value < to)?.id;
}

describe("the observations that other parts rely on", () => {
  it.each([
    ["engine-turns", "normal slow part-turn no"],
    ["pattern", "every-time sometimes only-hot only-cold only-wet after-standing"],
    ["battery-goes-flat", "no overnight days weeks"],
    ["lights-on", "dead dim normal"],
    ["lights-at-start", "stay-bright dim go-out"],
    ["jump-start", "not-tried cured helped-but-slow ran-then-died no-change"],
    ["last-use", "hours days weeks months"],
    ["how-stopped", "switched-off-normally died-at-once faded under-load would-not-stop"],
    ["fuel-level", "seen-enough said-enough low empty"],
    ["fuel-age", "fresh months over-winter years"],
    ["fuel-reaches-engine", "yes weak no"],
    ["water-or-wax", "none water wax"],
    ["spark", "good weak none"],
    ["smoke", "none white black blue"],
    ["preheat-lamp", "normal never stays"],
    ["controls-moved", "no-change then-started"],
    ["joint-look", "clean corroded loose hot"],
    ["outdoors", "hot mild frost hard-frost"],
    ["at-machine", "yes can-go no for-someone-else"],
  ])("has %s with its states", (id, expected) => {
    expect(states(id)).toEqual(expect.arrayContaining(words(expected)));
  });

  it("has the lists, and every reading in its unit", () => {
    const events =
      "battery-removed jump-started charged pressure-washed welded hit-something tipped ran-dry refuelled flooded rodents-seen parts-replaced";
    expect(states("recent-event")).toEqual(expect.arrayContaining(words(events)));
    expect(knowledge.observations.get("recent-work")?.kind).toBe("list");
    const volts =
      "battery-rest-volts battery-start-volts dash-volts-start stud-start-volts trigger-start-volts starter-start-volts key-feed-volts key-start-volts ground-drop-volts minus-clamp-drop-volts plus-clamp-drop-volts charging-volts";
    for (const id of words(volts)) {
      expect(knowledge.observations.get(id), id).toMatchObject({
        kind: "number",
        unit: "V",
        scalesWithVolts: true,
      });
    }
    expect(knowledge.observations.get("starter-amps")?.unit).toBe("A");
  });

  it("has a file for every machine kind, each with names and its own place in the list", () => {
    expect([...knowledge.machines.keys()].sort()).toEqual([...machineKinds].sort());
    const offers = [...knowledge.machines.values()].map(({ offer }) => offer);
    expect(new Set(offers).size).toBe(offers.length);
    for (const { id, synonyms } of knowledge.machines.values()) {
      expect(synonyms.length, id).toBeGreaterThan(4);
      expect(
        synonyms.every((name) => name === name.toLowerCase() || /hp/.test(name)),
        id,
      ).toBe(true);
    }
    const all = [...knowledge.machines.values()].flatMap(({ synonyms }) => synonyms);
    expect(new Set(all).size).toBe(all.length);
  });

  it("has faults of nearly every cause group", () => {
    const groups = new Set([...knowledge.faults.values()].map(({ group }) => group));
    expect(causeGroups.filter((group) => !groups.has(group))).toEqual(["other"]);
  });
});

describe("every word", () => {
  it("has a key of its own", () => {
    const keys = [...knowledge.observations.values()].flatMap((observation) =>
      observation.states.map((state) => wordKey("state", `${observation.id}.${state.id}`)),
    );
    expect(new Set(keys).size).toBe(keys.length);
    expect(expectedWords(knowledge).size).toBeGreaterThan(keys.length);
  });
});

describe("every row", () => {
  it("is a distribution, without impossible states", () => {
    for (const fault of knowledge.faults.values()) {
      const rows = [...fault.rows].filter(
        ([id]) => knowledge.observations.get(id)?.kind !== "list",
      );
      for (const row of [fault.cranking, fault.firing, ...rows.map(([, row]) => row)]) {
        expect(sum(row), fault.id).toBeCloseTo(1, 9);
        expect(Math.min(...row), fault.id).toBeGreaterThan(0);
      }
    }
    for (const { id, usual, kind, confusion, states: all } of knowledge.observations.values()) {
      if (kind !== "list") expect(sum(usual), id).toBeCloseTo(1, 9);
      expect(usual).toHaveLength(all.length);
      for (const who of reporters)
        for (const row of confusion[who]) expect(sum(row), id).toBeCloseTo(1, 9);
    }
  });

  it("is as long as its observation has states", () => {
    for (const { id, rows } of knowledge.faults.values()) {
      for (const [observation, row] of rows)
        expect(row, `${id} ${observation}`).toHaveLength(states(observation)?.length ?? -1);
    }
  });

  it("lets no row tell anything about a jump start that was not tried", () => {
    const row = knowledge.observations.get("jump-start")?.usual;
    for (const { id, rows } of knowledge.faults.values()) {
      expect(rows.get("jump-start")?.[0] ?? row?.[0], id).toBeCloseTo(row?.[0] ?? 0, 12);
    }
  });
});

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
    expect(band("charging-volts", 15.2)).toBe("high");
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
});

describe("what the rows mean", () => {
  const likeliest = (fault: string, observation: string) => {
    const row = knowledge.faults.get(fault)?.rows.get(observation) ?? [];
    return states(observation)?.[row.indexOf(Math.max(...row))];
  };

  it("puts each measured fault at its own test point", () => {
    expect(likeliest("plus-clamp-corroded", "plus-clamp-drop-volts")).toBe("bad");
    expect(likeliest("minus-clamp-corroded", "minus-clamp-drop-volts")).toBe("bad");
    expect(likeliest("minus-clamp-corroded", "plus-clamp-drop-volts")).toBe("good");
    expect(likeliest("earth-strap-corroded", "ground-drop-volts")).toBe("bad");
    expect(likeliest("plus-cable-bad", "stud-start-volts")).toBe("low");
    expect(likeliest("solenoid-contacts-burnt", "trigger-start-volts")).toBe("good");
    expect(likeliest("solenoid-contacts-burnt", "starter-start-volts")).toBe("none");
    expect(likeliest("key-switch-start-contact", "key-start-volts")).toBe("none");
    expect(likeliest("fuse-blown", "fuse-out-volts")).toBe("none");
    expect(likeliest("battery-sulphated", "battery-rest-volts")).toBe("good");
    expect(likeliest("battery-shorted-cell", "battery-rest-volts")).toBe("cell-down");
  });

  it("believes whoever names a bad part, a technician more than an operator", () => {
    const found = knowledge.observations.get("found-bad");
    const named = (by: "operator" | "technician") => {
      const [present, absent] = found?.confusion[by] ?? [];
      return (present?.[0] ?? 0) / (absent?.[0] ?? 1);
    };
    expect(named("technician")).toBeGreaterThan(10 * named("operator"));
    for (const state of found?.states ?? []) {
      const at = found?.states.indexOf(state) ?? -1;
      const faults = [...knowledge.faults.values()].filter(
        ({ rows }) => (rows.get("found-bad")?.[at] ?? 0) > 0.5,
      );
      expect(faults.length, state.id).toBeGreaterThan(0);
    }
  });

  it("gives low current with slow turning for resistance, high for drag", () => {
    // US Army TM 10-3930-671-24: low current and slow means resistance, high current and slow drag.
    const amps = states("starter-amps") ?? [];
    const high = (fault: string) =>
      knowledge.faults.get(fault)?.rows.get("starter-amps")?.[amps.indexOf("high")] ?? 0;
    for (const drag of ["engine-seized", "starter-dragging", "hydrolock"]) {
      for (const resistance of ["earth-strap-corroded", "plus-clamp-corroded", "plus-cable-bad"]) {
        expect(high(drag)).toBeGreaterThan(10 * high(resistance));
      }
    }
  });

  it("never sends an operator to more than two readings, to a spark test or to anything opened", () => {
    const operator = [...knowledge.checks.values()].filter(({ performers }) =>
      performers.includes("operator"),
    );
    const readings = operator.filter(
      ({ yields }) => knowledge.observations.get(yields)?.unit !== undefined,
    );
    expect(readings.map(({ yields }) => yields).sort()).toEqual([
      "battery-rest-volts",
      "dash-volts-start",
    ]);
    expect(operator.map(({ yields }) => yields)).not.toContain("spark");
    const doors = operator.map(({ access }) => access ?? "none");
    expect([...new Set(doors)].sort()).toEqual(["battery-cover", "bonnet", "none"]);
  });
});
