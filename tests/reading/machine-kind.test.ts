import { describe, expect, it } from "vitest";
import { matchMachineKind } from "../../src/reading/machine-kind.ts";
import { model, read } from "../helpers/english-reader.ts";

describe("the kind of a machine in free text", () => {
  it.each([
    ["ride-on mower, 15 hp", "ride-on-mower"],
    ["Lawn tractor", "ride-on-mower"],
    ["garden tractors", "garden-tractor"],
    ["compact tractor", "compact-tractor"],
    ["old farm tractor", "old-tractor"],
    ["a row-crop tractor", "row-crop-tractor"],
    ["backhoe loader", "backhoe-loader"],
    ["skid steer", "skid-steer"],
    ["combine", "combine"],
    ["walk-behind mower", "walk-behind"],
    ["old two-cylinder farm tractor", "old-tractor"],
    ["small farm tractor", "compact-tractor"],
    ["mower with electric start", "ride-on-mower"],
  ])("%s is a %s", (text, kind) => expect(matchMachineKind(text, model.machines).kind).toBe(kind));

  it("is unsure of a name that is part of many names", () => {
    const tractor = matchMachineKind("tractor", model.machines);
    const mower = matchMachineKind("ride-on mower", model.machines);
    expect(tractor.kind).toBe("utility-tractor");
    expect(tractor.certainty).toBeLessThan(0.5);
    expect(mower.certainty).toBeGreaterThan(0.8);
  });

  it("finds none where none is named", () =>
    expect(matchMachineKind("the thing", model.machines)).toEqual({ certainty: 0 }));

  it("finds the fuel on the way", () =>
    expect(matchMachineKind("diesel compact tractor", model.machines).fuel).toBe("diesel"));
});

describe("hints about the machine", () => {
  it("are read from a message", () =>
    expect(
      read("20 hp diesel, 3 cylinder, 12 volt system, 40 years old, 800 hours").machine,
    ).toEqual({
      certainty: 0,
      fuel: "diesel",
      horsepower: 20,
      cylinders: 3,
      volts: 12,
      ageYears: 40,
      hours: 800,
    }));

  it("do not take a length of time for the hour meter", () =>
    expect(read("it stood 3 hours").machine.hours).toBeUndefined());
});
