import { describe, expect, it } from "vitest";
import { expectedLines } from "../../src/talk/expected.ts";
import { Dialog, speech } from "../helpers/dialog.ts";

const range = { low: 0.1, median: 0.2, high: 0.31 };
const dialog = new Dialog("en", {
  expected: (_state, observation) =>
    observation === "ground-drop-volts"
      ? {
          healthy: range,
          causes: [{ fault: "earth-strap-corroded", range: { low: 1, median: 3.2, high: 6 } }],
        }
      : null,
});
const lines = (check: string) =>
  expectedLines(dialog.state, { about: "check", check }, dialog.desk).map((one) =>
    speech.wording.phrase(one.say, "en").replaceAll(/[\u00a0\u202f]/g, " "),
  );
const groundCheck = [...dialog.desk.knowledge.checks.values()].find(
  (check) => check.yields === "ground-drop-volts",
);

describe("the reading to expect, in words", () => {
  it("names a healthy machine's reading and each leading cause's, with their spread", () => {
    expect(lines(groundCheck?.id ?? "")).toEqual([
      "Healthy: 0.2 V (0.1 V to 0.3 V)",
      expect.stringMatching(/: 3\.2 V \(1(\.0)? V to 6(\.0)? V\)$/),
    ]);
  });

  it("says nothing where nothing is simulated, or where there is nothing to measure", () => {
    const other = [...dialog.desk.knowledge.checks.values()].find(
      (check) => check.yields === "on-start",
    );
    expect(lines(other?.id ?? "")).toEqual([]);
    expect(expectedLines(dialog.state, { about: "safety" }, dialog.desk)).toEqual([]);
  });
});
