import { readdirSync, readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import type { Knowledge } from "../../src/domain/knowledge.ts";
import type { Problem } from "../../src/domain/result.ts";
import { checkSafety } from "../../src/knowledge/check-safety.ts";
import type { FlowText } from "../../src/knowledge/flow-texts.ts";
import { gather } from "../../src/knowledge/gather.ts";
import { readKnowledge } from "../../src/knowledge/load.ts";
import { readYaml } from "../../src/knowledge/read-yaml.ts";

const folders = ["systems", "questions", "shared", "machines"];
const texts: readonly FlowText[] = folders.flatMap((folder) =>
  readdirSync(`flows/${folder}`)
    .filter((name) => name.endsWith(".yaml") && !name.startsWith("_"))
    .map((name) => ({
      path: `${folder}/${name}`,
      text: readFileSync(`flows/${folder}/${name}`, "utf8"),
    })),
);
const files = texts.map(({ path, text }) =>
  readYaml(`flows/${path}`, path.split("/")[0] ?? "", text),
);
const sources = files.map(({ source }) => source);

/** What the check of the shipped files says once this system file lies beside them. */
function planted(text: string): readonly Problem[] {
  const file = readYaml("flows/systems/planted.yaml", "systems", text);
  expect(file.problems).toEqual([]);
  const { gathered, problems } = gather([...sources, file.source], []);
  expect(problems).toEqual([]);
  return checkSafety(gathered);
}

interface Check {
  readonly by?: string;
  readonly step?: string;
  readonly finds?: string;
  readonly ask?: string;
  readonly cautions?: string;
  readonly more?: string;
}

const check = (given: Check): string => `title: Planted
source: invented for tests
checks:
  planted-check:
    title: Planted
    finds: ${given.finds ?? "joint-look"}
    step: ${given.step ?? "inspect"}
    by: ${given.by ?? "operator"}
    ask: ${JSON.stringify(given.ask ?? "What do you see?")}
    minutes: 1
    cautions: ${given.cautions ?? "[safe-stop, start-from-seat, live-measuring, ignition-shock]"}
    ${given.more ?? ""}
`;

const says = (given: Check): string =>
  planted(check(given))
    .map((one) => one.says)
    .join("\n");

describe("the check of the shipped rules refuses", () => {
  it("nothing where nothing is forbidden", () => expect(says({})).toBe(""));

  it("what is done by hand without its caution", () => {
    expect(says({ cautions: "[blades]" })).toContain('needs the caution "safe-stop"');
    expect(says({ cautions: "[blades]", step: "try" })).toContain('the caution "start-from-seat"');
    const live = says({ by: "technician", finds: "trigger-start-volts", cautions: "[safe-stop]" });
    expect(live).toContain('needs the caution "live-measuring"');
  });

  it("an operator's readings but battery volts at rest and the display while starting", () => {
    const measure = (finds: string) => says({ finds, step: "measure" });
    for (const finds of [
      "battery-start-volts",
      "starter-amps",
      "cell-spread",
      "compression-lowest",
    ])
      expect(measure(finds), finds).toContain("is a reading with an instrument");
    expect(measure("battery-rest-volts")).toBe("");
    expect(measure("dash-volts-start")).not.toContain("instrument");
  });

  it("an operator's spark test, by what it finds and by its words", () => {
    expect(says({ finds: "spark" })).toContain("An operator makes no spark test.");
    expect(says({ ask: "Please check for spark." })).toContain("An operator makes no spark test.");
  });

  it.each(["plug-out", "glow-plug-rail", "fuel-line-open", "injector-line-open", "under-machine"])(
    "an operator's work with %s",
    (access) => expect(says({ more: `access: ${access}` })).toContain("An operator takes no"),
  );

  it.each([
    "Take out the plug and look.",
    "Tow-start it down the lane.",
    "Push-start it.",
    "Turn the engine by hand with the pulley.",
    "Get the crank handle.",
  ])("asking an operator: %s", (ask) => expect(says({ ask })).toContain("An operator"));

  it.each([
    ["Bridge the two big studs.", "bridge a starter"],
    ["Put a screwdriver across the terminals.", "bridge a starter"],
    ["Bypass the seat switch.", "defeat an interlock"],
    ["Tape down the brake pedal switch.", "defeat an interlock"],
    ["Feel for a leak along the pipe.", "feels for a leak"],
    ["Preheat, then a little starting fluid.", "starting fluid"],
    ["Run it in the shed until it is warm.", "run indoors"],
    ["Charge a frozen battery slowly.", "neither charged nor jumped"],
    ["Jump a frozen battery with long leads.", "neither charged nor jumped"],
  ])("advising anybody: %s", (ask, rule) => {
    expect(says({ ask })).toContain(rule);
    expect(says({ ask, by: "technician" })).toContain(rule);
  });
});

describe("the reason why something is left to the shop", () => {
  const act = (because: string) => `title: Planted
source: invented for tests
acts:
  planted-act:
    title: Planted
    by: operator
    ask: Try it. What happens?
    minutes: 1
    cautions: [start-from-seat]
    left-to-shop: { x: { when: { volts: 24 }, because: ${because} } }
`;

  it("is advice too", () => {
    expect(planted(act("The shop does it.")).map((one) => one.says)).toEqual([]);
    const [problem] = planted(act("Bridge the studs instead."));
    expect(problem?.says).toContain("Nobody is advised to bridge");
    expect(problem?.line).toBe(10);
  });
});

describe("the shipped dangers", () => {
  let knowledge: Knowledge;
  beforeAll(() => {
    const read = readKnowledge(texts, "usable");
    if (!read.ok) throw new Error(read.problems.map((one) => one.says).join("\n"));
    knowledge = read.value;
  }, 60_000);

  it.each([
    ["fire-or-injury", /emergency number/],
    ["fuel-leak", /not turn the key/],
    ["smoke-or-hot-wires", /key out/i],
    ["battery-damaged", /no jump leads/],
    ["battery-frozen", /not charge.*not jump/],
    ["lithium-cold", /not charge/],
    ["leads-reversed", /not try to start/],
    ["wrong-fluid", /not even to ON/],
    ["water-in-engine", /not crank/],
    ["will-not-stop", /isolator off/],
    ["interlock-bridged", /not start it/],
    ["raised-load", /goes under/],
    ["bad-place", /wheels blocked/],
    ["somebody-too-near", /key out/],
    ["ether-sprayed", /not preheat/],
    ["alone-and-far", /tell somebody/i],
    ["nest-or-chaff", /not start/],
  ])("%s say what to do first", (id, first) => {
    expect(knowledge.redFlags.get(id)?.say).toMatch(first);
  });

  it("let no operator try again a starter that does not stop", () => {
    const tries = [
      ...[...knowledge.checks.values()].filter(({ step }) => step === "try"),
      ...knowledge.acts.values(),
    ].filter(({ performers }) => performers.includes("operator"));
    expect(tries.length).toBeGreaterThan(10);
    for (const { id, onlyIf } of tries) {
      const told = onlyIf.find(({ observation }) => observation === "on-start");
      expect(told?.anyOf, id).toBeDefined();
      expect(told?.anyOf, id).not.toContain("keeps-cranking");
    }
  });

  it("are never answered with a jump where it is not allowed", () => {
    const jump = knowledge.acts.get("jump-start");
    expect(jump?.needs.volts).toEqual([12]);
    const said = `${jump?.how} ${knowledge.hazards.get("jump-start")?.caution}`;
    for (const words of [/eye protection/, /aloud/, /negative earth/, /far from the/, /seat/])
      expect(said).toMatch(words);
  });
});
