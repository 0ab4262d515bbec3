import { describe, expect, it } from "vitest";
import { problemsOf } from "./small-flows.ts";

const says = (from: string, to: string, path?: string) =>
  problemsOf(path === undefined ? { from, to } : { path, from, to })
    .map((one) => one.says)
    .join("\n");

describe("nobody is sent into danger", () => {
  it("wants the caution that a step needs", () => {
    expect(
      says(
        "ask: How bright?, minutes: 2, cautions: safe-stop",
        "ask: How bright?, minutes: 2, cautions: gas",
      ),
    ).toBe('"see-lamps" needs the caution "safe-stop" (Made safe).');
    expect(says("cautions: [gas, seated]", "cautions: gas")).toBe(
      '"charge" needs the caution "seated" (From the seat).',
    );
  });

  it("wants at least one caution for everything done by hand", () => {
    expect(
      says(
        "ask: Volts?, minutes: 3, tools: meter, cautions: gas",
        "ask: Volts?, minutes: 3, tools: meter",
      ),
    ).toContain('"read-crank" is done by hand on the machine but carries no caution');
    expect(says("parts: battery, cautions: gas,", "parts: battery,")).toContain(
      '"new-battery" is done by hand',
    );
  });

  it("counts the cautions that tools and ways of access bring along", () => {
    // "read-rest" has none of its own: its access brings "safe-stop"
    expect(says("tools: meter, access: cover", "tools: meter, access: cover")).toBe("");
    expect(says("tools: meter, access: cover", "tools: meter")).toContain(
      '"read-rest" is done by hand',
    );
  });

  it("lets an operator take no reading that is not allowed", () => {
    expect(
      says(
        "finds: crank-volts, step: measure, by: technician",
        "finds: crank-volts, step: measure, by: [operator, technician]",
      ),
    ).toBe(
      'No readings by operators but volts at rest. ("crank-volts" is a reading with an instrument)',
    );
  });

  it("lets an operator open nothing that is forbidden", () => {
    expect(
      says("ask: How bright?, minutes: 2,", "ask: How bright?, minutes: 2, access: plug-out,"),
    ).toContain('No plugs out by operators. (it needs "plug-out")');
  });

  it("finds forbidden advice in every text, unless its sentence denies it", () => {
    const advice = "Bridge the starter with a screwdriver.";
    expect(says("text: Charge it.", `text: ${advice}`)).toContain('(it says "bridge the")');
    expect(says("ask: How bright?", `ask: ${advice} How bright?`)).toContain(
      "Nobody bridges a starter.",
    );
    expect(says("say: Keep away.", `say: ${advice}`, "shared/all.yaml")).toContain(
      "Nobody bridges",
    );
    expect(says("caution: No flame near it.", `caution: ${advice}`, "shared/all.yaml")).toContain(
      "Nobody bridges",
    );
    expect(says("text: Charge it.", "text: Never bridge the starter.")).toBe("");
  });
});
