import { describe, expect, it } from "vitest";
import { lineOfText, problemsOf } from "./small-flows.ts";

const shared = "shared/all.yaml";

describe("ids that lead nowhere", () => {
  it.each([
    [
      "remedies: charge-it",
      "remedies: charge-itt",
      'There is no remedy "charge-itt". Did you mean "charge-it"?',
    ],
    [
      "cured-by: { charge: 0.8 }",
      "cured-by: { charg: 0.8 }",
      'There is no act "charg". Did you mean "charge"?',
    ],
    [
      "hidden-by: { charge: 0.2 }",
      "hidden-by: { jump: 0.2 }",
      'There is no act "jump". Known: charge.',
    ],
    [
      "not-yet: { pump: read-rest }",
      "not-yet: { pomp: read-rest }",
      'There is no part "pomp". Did you mean "pump"?',
    ],
    [
      "not-yet: { pump: read-rest }",
      "not-yet: { pump: read-test }",
      'There is no check "read-test". Did you mean "read-rest"?',
    ],
    [
      "    like: flat\n",
      "    like: flat\n    brings: { flatt: often }\n",
      'There is no fault "flatt".',
    ],
    [
      "    like: flat\n",
      "    like: flat\n    cannot-be-told-from: warn\n",
      'There is no fault "warn". Did you mean "worn"?',
    ],
    ["features: choke }", "features: chok }", 'There is no feature "chok". Did you mean "choke"?'],
    [
      "needs: { features: lights }",
      "needs: { features: light }",
      'There is no feature "light". Did you mean "lights"?',
    ],
    ["finds: lamps,", "finds: lamp,", 'There is no observation "lamp". Did you mean "lamps"?'],
    [
      "tools: meter, access",
      "tools: metre, access",
      'There is no tool "metre". Did you mean "meter"?',
    ],
    ["access: cover", "access: covr", 'There is no way of access "covr". Did you mean "cover"?'],
    ["cautions: [gas, seated]", "cautions: [gas, seated, fire]", 'There is no hazard "fire".'],
    ["reports: tried", "reports: tryed", 'There is no observation "tryed". Did you mean "tried"?'],
    ["cured-means: gone", "cured-means: went", 'There is no state of "tried" called "went".'],
    ["says-nothing: not-tried", "says-nothing: nottried", 'Did you mean "not-tried"?'],
    [
      "ask-again: [on-start, rest-volts]",
      "ask-again: [on-start, rest]",
      'There is no observation "rest".',
    ],
    ["parts: battery", "parts: batery", 'There is no part "batery". Did you mean "battery"?'],
    [
      "minutes: 2, cautions: safe-stop",
      "minutes: 2, only-if: { season: winters }, cautions: safe-stop",
      'Did you mean "winter"?',
    ],
    [
      "minutes: 2, cautions: safe-stop",
      "minutes: 2, after: haer, cautions: safe-stop",
      'There is no check "haer". Did you mean "hear"?',
    ],
    [
      "minutes: 2, cautions: safe-stop",
      "minutes: 2, verdicts: { v: { states: dimm, text: T } }, cautions: safe-stop",
      'Did you mean "dim"?',
    ],
  ])("finds %s", (from, to, says) => {
    const found = problemsOf({ from, to });
    expect(found.map((one) => one.says).join("\n")).toContain(says);
    const problem = found.find((one) => one.says.includes(says));
    expect(problem?.file).toBe("flows/systems/starting.yaml");
    expect(problem?.line).toBeGreaterThanOrEqual(lineOfText(to, { from, to }));
  });

  it.each([
    [
      shared,
      "battery: { title: Battery,",
      "battery: { title: Battery, alternates: pumpe,",
      'There is no part "pumpe".',
    ],
    [
      shared,
      "charger: { title: Charger, cautions: [gas] }",
      "charger: { title: Charger, cautions: [gaz] }",
      'There is no hazard "gaz".',
    ],
    [shared, "steps: inspect }", "steps: inspect, finds: lampz }", 'Did you mean "lamps"?'],
    [shared, "allowed: [rest-volts]", "allowed: [rest-volt]", 'Did you mean "rest-volts"?'],
    [
      "machines/atv.yaml",
      "systems: all",
      "systems: [startin]",
      'There is no system "startin". Did you mean "starting"?',
    ],
    [
      "machines/atv.yaml",
      "systems: all",
      "systems: all\nwithout: startin",
      'There is no system "startin".',
    ],
    ["machines/atv.yaml", "lights: always", "light: always", 'There is no feature "light".'],
  ])("finds in %s", (path, from, to, says) => {
    const found = problemsOf({ path, from, to });
    expect(found.map((one) => one.says).join("\n")).toContain(says);
    expect(found[0]?.file).toBe(`flows/${path}`);
  });
});
