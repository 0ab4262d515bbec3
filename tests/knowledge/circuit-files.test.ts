import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { assemble } from "../../src/circuit/assembly.ts";
import { keyStart } from "../../src/circuit/attempt.ts";
import { openSimulator } from "../../src/circuit/bank.ts";
import { HEALTHY_SHARE, healthyShare } from "../../src/circuit/check-circuit.ts";
import { loadCircuits, readCircuits } from "../../src/knowledge/circuit-files.ts";
import { machineWith, voltsOf } from "../helpers/circuits.ts";

/** Covers circuit files from text to network: layers, shape, figures, parts, changes and sense. */
const folder = "flows/circuits";
const shipped = readdirSync(folder)
  .filter((name) => name.endsWith(".yaml"))
  .map((name) => ({
    file: `${folder}/${name}`,
    text: readFileSync(`${folder}/${name}`, "utf8"),
  }));

/** Reads the shipped circuits with one file written anew. */
function withFile(name: string, change: (text: string) => string) {
  const file = `${folder}/${name}.yaml`;
  const known = shipped.some((one) => one.file === file);
  const others = known ? shipped : [...shipped, { file, text: "" }];
  return readCircuits(
    others.map((one) => (one.file === file ? { file, text: change(one.text) } : one)),
  );
}

const problemsOf = (name: string, change: (text: string) => string) =>
  withFile(name, change).problems.map(({ file, line, says }) => `${file}:${line} ${says}`);

/** Line on which a text stands in a shipped file, from 1. */
const lineWith = (name: string, part: string) => {
  const text = shipped.find(({ file }) => file === `${folder}/${name}.yaml`)?.text ?? "";
  return text.split("\n").findIndex((line) => line.includes(part)) + 1;
};

describe("the shipped circuits", () => {
  it("are free of problems and every network can be assembled", () => {
    const { circuits, problems } = loadCircuits(process.cwd());
    expect(problems).toEqual([]);
    expect(circuits.size).toBeGreaterThanOrEqual(20);
    for (const circuit of circuits.values()) {
      expect(assemble(circuit).plan.points, circuit.id).toBeGreaterThan(14);
      for (const { id, changes } of circuit.faults) expect(changes.length, id).toBeGreaterThan(0);
    }
  });

  it("stand for three topologies, 6, 12 and 24 V, both earths, one and two batteries", () => {
    const all = [...loadCircuits(process.cwd()).circuits.values()];
    expect(new Set(all.map(({ volts }) => volts))).toEqual(new Set([6, 12, 24]));
    expect(new Set(all.map(({ earth }) => earth))).toEqual(new Set(["negative", "positive"]));
    const batteries = (id: string) =>
      all
        .find((one) => one.id === id)
        ?.parts.filter(({ sort, hidden }) => sort === "battery" && !hidden).length;
    expect(batteries("row-crop-tractor")).toBe(2);
    expect(batteries("garden-tractor")).toBe(1);
    expect(new Set(all.map(({ actuators }) => actuators.length))).toEqual(new Set([1, 2]));
  });

  it("put the interlocks in the order of the file, with a test point behind each", () => {
    const zero = loadCircuits(process.cwd()).circuits.get("zero-turn");
    const order = zero?.parts.filter(({ sort }) => sort === "interlock").map(({ id }) => id);
    expect(order).toEqual(["brake-switch", "neutral-switch", "pto-switch", "seat-switch"]);
    expect(zero?.testPoints.map(({ id }) => id)).toContain("pto-switch-out-volts");
    expect(zero?.faults.map(({ id }) => id)).not.toContain("clutch-switch-failed");
  });

  it("let a machine differ in a few lines from what it is based on", () => {
    const { circuits } = withFile("tiny-tractor", () =>
      [
        "id: tiny-tractor",
        "title: A very small tractor",
        "based-on: compact-tractor",
        "interlocks: [seat]",
        "parts:",
        "  battery: { cca: 300 to 400 A }",
      ].join("\n"),
    );
    const tiny = circuits.get("tiny-tractor");
    const parent = circuits.get("compact-tractor");
    const cca = tiny?.parts.find(({ id }) => id === "battery")?.figures["cca"];
    expect(cca).toEqual({ kind: "even", low: 300, high: 400 });
    expect(tiny?.uses).toEqual([]);
    expect(tiny?.parts.length).toBeLessThan(parent?.parts.length ?? 0);
    expect(tiny?.engine).toEqual(parent?.engine);
  });
});

describe("raw parts for the unusual", () => {
  it("take an interlock on the earth side of the coil", () => {
    const { circuits, problems } = withFile("odd-mower", () =>
      [
        "id: odd-mower",
        "title: A mower with an earth-switched seat interlock",
        "based-on: ride-on-mower",
        "interlocks: [brake]",
        "parts:",
        "  contactor-coil: { to: seat-side }",
        "  seat-switch: { is: interlock, from: seat-side, to: frame, label: seat switch, resistance: 10 mohm }",
        "test-points:",
        "  seat-side-volts: { label: earth side of the coil, key: start, at: seat-side }",
      ].join("\n"),
    );
    expect(problems).toEqual([]);
    const odd = circuits.get("odd-mower");
    if (odd === undefined) throw new Error("no circuit");
    expect(odd.faults.map(({ id }) => id)).toContain("seat-switch-failed");
    const healthy = machineWith(odd, {});
    expect(keyStart(healthy).symptom).toBe("normal");
    const open = machineWith(odd, { "seat-switch.resistance": 1e9 });
    const outcome = keyStart(open);
    expect(outcome.symptom).toBe("silent");
    // With its earth open the far side of the coil carries battery volts.
    expect(voltsOf(open, outcome.volts, "seat-side")).toBeGreaterThan(12);
  });
});

describe("the page for technicians", () => {
  it("shows an example that loads and cranks", () => {
    const page = readFileSync(`${folder}/README.md`, "utf8");
    const example = page
      .split("\n")
      .filter((line) => line.startsWith("    "))
      .map((line) => line.slice(4))
      .join("\n");
    const { circuits, problems } = withFile("vineyard-tractor", () => example);
    expect(problems).toEqual([]);
    const circuit = circuits.get("vineyard-tractor");
    if (circuit === undefined) throw new Error("no circuit");
    expect(healthyShare(openSimulator(circuit), 20, 1).normal).toBeGreaterThan(HEALTHY_SHARE);
  });
});

describe("a bad circuit file is told with file, line and a plain sentence", () => {
  it("a floating point", () => {
    const found = problemsOf("base", (text) => text.replace("to: fuse-in,", "to: fuse-inn,"));
    const line = lineWith("base", "feed-wire: {");
    expect(found.join("\n")).toContain(
      `${folder}/base.yaml:${line} the point "fuse-inn" floats: only the feed wire is joined to it`,
    );
  });

  it("a loop of zero ohms", () => {
    const found = problemsOf("garden-tractor", (text) =>
      text.replace(
        "parts:\n",
        "parts:\n  one: { is: joint, from: stud, to: dash, label: one, resistance: 0 ohm }\n" +
          "  two: { is: joint, from: dash, to: stud, label: two, resistance: 0 ohm }\n",
      ),
    );
    expect(found.join("\n")).toMatch(/garden-tractor\.yaml:\d+ the two closes a loop of zero ohms/);
  });

  it("a missing unit", () => {
    const found = problemsOf("atv", (text) => text.replace("cca: 140 to 280 A", "cca: 140 to 280"));
    const line = lineWith("atv", "cca: 140");
    expect(found).toEqual([`${folder}/atv.yaml:${line} "140 to 280" has no unit; write it in A`]);
  });

  it("a contact that no key position closes", () => {
    const found = problemsOf("base", (text) => text.replace(", closed: [start]", ""));
    expect(found.join("\n")).toMatch(
      /base\.yaml:\d+ nothing ever closes the contact "key START": no key position does/,
    );
  });

  it("a negative length", () => {
    const found = problemsOf("sprayer", (text) => text.replace("length: 2.5 m", "length: -2.5 m"));
    expect(found).toEqual([
      `${folder}/sprayer.yaml:${lineWith("sprayer", "length: 2.5 m")} "-2.5 m": the length of a cable cannot be below zero`,
    ]);
  });

  it("an unknown figure, key, interlock, basis, and a name that is not the file's", () => {
    const wrong = (from: string, to: string) =>
      problemsOf("zero-turn", (text) => text.replace(from, to)).join("\n");
    expect(wrong("cca:", "caa:")).toMatch(/a battery has no "caa"; it has nominal, cca, charge/);
    expect(wrong("interlocks:", "interlock:")).toMatch(/interlock/);
    expect(wrong("[brake,", "[brakes,")).toMatch(/there is no interlock "brakes"/);
    expect(wrong("based-on: garden-tractor", "based-on: lawn")).toMatch(
      /based-on names "lawn", which is no circuit file of its own/,
    );
    expect(wrong("based-on: garden-tractor", "based-on: zero-turn")).toMatch(/of its own/);
    expect(wrong("id: zero-turn", "id: zero")).toMatch(/the id must be the file's name/);
  });

  it("a test point in the air, an actuator's missing coil, a fault nobody has", () => {
    expect(
      problemsOf("base", (text) => text.replace("at: key-feed }", "at: key-food }")).join("\n"),
    ).toMatch(/there is no point "key-food"/);
    expect(
      problemsOf("shift-relay", (text) =>
        text.replace("coils: [relay-coil]", "coils: [coil]"),
      ).join("\n"),
    ).toMatch(/names "coil", which is no part of the circuit/);
    expect(
      problemsOf("faults", (text) =>
        text.replace("fuse-blown:\n  - { weight: 1, fuse.", "fuse-blown:\n  - { weight: 1, fuze."),
      ).join("\n"),
    ).toMatch(/faults\.yaml:\d+ no circuit has all the parts that "fuse-blown" changes/);
  });

  it("a change of something that is not there, or in the wrong unit", () => {
    const wrong = (to: string) =>
      problemsOf(
        "ride-on-mower",
        (text) => `${text}\nfaults:\n  hydrolock: [{ weight: 1, ${to} }]\n`,
      );
    expect(wrong("engine.water: becomes 1").join()).toMatch(/"engine" has no "water"/);
    expect(wrong("fuse.resistance: becomes 3 V").join()).toMatch(/must be in ohm or mohm or loop/);
  });

  it("broken YAML, and everything else wrong at once", () => {
    const broken = problemsOf("atv", () => "id: [atv\ntitle: x");
    expect(broken.join("\n")).toMatch(/atv\.yaml:\d+/);
    const both = problemsOf("atv", (text) =>
      text.replace("cca: 140 to 280 A", "cca: 140 to 280").replace("length: 0.5 m", "length: -1 m"),
    );
    expect(both).toHaveLength(2);
  });
});
