import { describe, expect, it } from "vitest";
import { leavesOpen, read, says } from "../helpers/english-reader.ts";

describe("readings of a meter", () => {
  it.each([
    ["battery reads 12.4 volts", ["battery-rest-volts=12.4"]],
    ["12,4 v on the battery", ["battery-rest-volts=12.4"]],
    ["the battery has 12.6", ["battery-rest-volts=12.6"]],
    ["drops to 9.2 volts while cranking", ["battery-start-volts=9.2"]],
    ["14.2 volts at the battery with the engine running", ["charging-volts=14.2"]],
    ["solenoid small terminal V 13", ["trigger-start-volts=13"]],
    ["starter draws 180 amps", ["starter-amps=180"]],
  ])("%s", (text, expected) => expect(says(text)).toEqual(expected));

  it("reads two of them in one sentence", () =>
    expect(says("12.6V at the battery, drops to 9.2 while cranking")).toEqual([
      "battery-rest-volts=12.6",
      "battery-start-volts=9.2",
    ]));

  it.each(["battery 12.5 at rest, 9.8 cranking", "battery 12.5 resting, 9.8 while cranking"])(
    "takes bare numbers for the commoner unit: %s",
    (text) => expect(says(text)).toEqual(["battery-rest-volts=12.5", "battery-start-volts=9.8"]),
  );

  it("asks where it was measured when nothing says so", () => {
    const [open] = read("12,4 v i think").ambiguous;
    expect(open?.options[0]?.observation).toBe("battery-rest-volts");
    expect(open?.options.length).toBeGreaterThan(1);
  });

  it("asks whether amps are volts", () => {
    expect(says("12.4 amps on the battery")).toEqual([]);
    expect(leavesOpen("12.4 amps on the battery")).toContain("battery-rest-volts=12.4");
  });

  it("does not let in what cannot be meant, scaled by the machine's voltage", () => {
    const at12 = read("battery reads 25 volts");
    expect(at12.understood).toEqual([]);
    expect(at12.implausible).toMatchObject([{ observation: "battery-rest-volts", value: 25 }]);
    expect(says("battery reads 25 volts", { volts: 24 })).toEqual(["battery-rest-volts=25"]);
  });

  it("takes a nominal voltage for the machine's", () => {
    const result = read("it's a 6 volt system with a new 12 v battery");
    expect(result.machine.volts).toBe(6);
    expect(result.understood.some((one) => "value" in one)).toBe(false);
  });
});

describe("states told by a quantity", () => {
  it.each([
    ["it stood six weeks in the shed", ["last-use=weeks"]],
    ["stood all winter", ["last-use=months"]],
    ["not been used since last summer", ["last-use=months"]],
    ["ran fine yesterday", ["last-use=days"]],
    // How long it stood is part of what was told.
    ["flat after three weeks standing", ["battery-goes-flat=weeks"]],
    ["I used it all week, even an hour ago", ["last-use=hours"]],
    ["the battery goes flat after three days", ["battery-goes-flat=days"]],
    ["it's -10 °C", ["outdoors=hard-frost"]],
    ["23 F this morning", ["outdoors=frost"]],
    ["the coolant is at 90 °C", []],
    ["on the charger for an hour", ["recent-event=charged"]],
  ])("%s", (text, expected) => expect(says(text)).toEqual(expected));

  it("reads the name of a month against today", () => {
    const now = Date.UTC(2026, 2, 20);
    expect(says("last ran in october", { now })).toEqual(["last-use=months"]);
    expect(says("last ran in october")).toEqual([]);
  });
});
