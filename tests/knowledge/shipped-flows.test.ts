import { describe, expect, it } from "vitest";
import { type Row, wordKey } from "../../src/domain/knowledge.ts";
import { causeGroups, machineKinds, reporters } from "../../src/domain/vocabulary.ts";
import { expectedWords } from "../../src/knowledge/locale-words.ts";
import { shippedKnowledge } from "../helpers/shipped.ts";

const knowledge = await shippedKnowledge();

const states = (id: string) => knowledge.observations.get(id)?.states.map((state) => state.id);
const sum = (row: Row) => row.reduce((total, value) => total + value, 0);
const words = (text: string) => text.split(" ");

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

  it.each([
    "starter",
    "solenoid",
    "battery",
    "spark-plug",
    "key-switch",
    "ignition-coil",
    "carburettor",
    "fuel-pump",
    "injectors",
    "injection-pump",
    "glow-plugs",
    "controller",
    "alternator",
  ])("warns of buying a %s before a check", (part) => {
    const warnings = [...knowledge.faults.values()].flatMap(({ notYet }) =>
      notYet.filter((one) => one.part === part),
    );
    expect(warnings.length).toBeGreaterThan(3);
    for (const { before } of warnings) expect(knowledge.checks.has(before), before).toBe(true);
  });

  it("names for every fault at least one part that is bought in vain", () => {
    const silent = [...knowledge.faults.values()].filter(({ notYet }) => notYet.length === 0);
    expect(silent.map(({ id }) => id)).toEqual([]);
  });

  it("knows what an operator can safely do, and what it cures", () => {
    const acts = [...knowledge.acts.values()].filter((act) => act.performers.includes("operator"));
    for (const id of words(
      "move-controls renew-fuse open-tap add-fuel charge-battery cold-start wait-flooded jump-start clean-and-tighten-clamps",
    )) {
      const act = acts.find((one) => one.id === id);
      expect((act?.cures.size ?? 0) + (act?.masks.size ?? 0), id).toBeGreaterThan(0);
      expect(act?.ask, id).toMatch(/What happens/);
      expect(act?.hazards, id).toContain("start-from-seat");
    }
    const cables = knowledge.checks.get("look-at-joints");
    expect(cables?.photo).toBe(true);
    expect(cables?.ask).toMatch(/both ends of both/i);
  });
});
