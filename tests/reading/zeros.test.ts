import { describe, expect, it } from "vitest";
import { read, says } from "../helpers/english-reader.ts";

describe("readings of nothing told in words", () => {
  it("are 0 in the unit of what was missing, where a place is named", () => {
    expect(says("no volts at the solenoid small terminal on start")).toContain(
      "trigger-start-volts=0",
    );
  });

  it("are less sure than a number that was read off", () => {
    const sure = (text: string) =>
      read(text).understood.find((one) => one.observation === "trigger-start-volts")?.probability;
    expect(sure("no volts at the solenoid small terminal on start")).toBeLessThan(
      sure("0 volts at the solenoid small terminal on start") ?? 0,
    );
  });

  it("stand over what the machine does, where the place follows", () => {
    const read = says("no power at the starter terminal with key on start");
    expect(read).toContain("starter-start-volts=0");
    expect(read.filter((one) => one.startsWith("on-start"))).toEqual([]);
  });

  it("are none where no place is named", () => {
    expect(read("there is no power").understood.map((one) => one.observation)).not.toContain(
      "battery-rest-volts",
    );
  });
});
