// Covers also: src/commands/engine-options.ts
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import {
  MILD_CELSIUS,
  noBanks,
  openCircuitBanks,
  weatherTold,
} from "../../src/commands/circuit-banks.ts";
import { engineOptions, withLearning } from "../../src/commands/engine-options.ts";
import { buildHere } from "../../src/knowledge/bank-builder.ts";
import { Dialog, settings, workshop } from "../helpers/dialog.ts";
import { told } from "../helpers/told.ts";

const { circuits, knowledge } = workshop;
const tractor = { kind: "garden-tractor", fuel: "petrol", volts: 12 } as const;
const mild = { told: "mild", usualCelsius: MILD_CELSIUS };

let root: string;
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), "turnrow-banks-"));
});
afterAll(() => rmSync(root, { recursive: true }));

const open = (build = buildHere) =>
  openCircuitBanks({ circuits, knowledge, root, build, machines: 30 });

describe("the simulated circuits of a machine", () => {
  it("are not waited for: rows must do until they stand, then they are there", async () => {
    const banks = open();
    expect(banks.now(tractor, mild)).toEqual([]);
    const ready = await banks.ready(tractor, mild);
    expect(ready).toHaveLength(1);
    expect(banks.now(tractor, mild)[0]).toBe(ready[0]);
    expect(banks.generation()).toBeGreaterThan(0);
  }, 60_000);

  it("are found on disk at the next start instead of being built again", async () => {
    let built = 0;
    const counting: typeof buildHere = (...args) => {
      built += 1;
      return buildHere(...args);
    };
    expect(await open(counting).ready(tractor, mild)).toHaveLength(1);
    expect(built).toBe(0);
  }, 60_000);

  it("cost nothing but a report where they cannot be built", async () => {
    const reported: unknown[] = [];
    const banks = openCircuitBanks({
      ...{ circuits, knowledge, root: join(root, "other"), machines: 30 },
      build: () => Promise.reject(new Error("no room")),
      report: (error) => void reported.push(error),
    });
    expect(banks.now(tractor, mild)).toEqual([]);
    await expect(banks.ready(tractor, mild)).rejects.toThrow("no room");
    expect(reported.length).toBeGreaterThan(0);
  });
});

describe("the weather at the machine", () => {
  it("is what was told last, else a mild day", () => {
    const reports = [told("outdoors", "mild"), told("outdoors", "frost")];
    expect(weatherTold(reports)).toMatchObject({ told: "frost" });
    expect(weatherTold([told("on-start", "slow")])).toEqual({ usualCelsius: MILD_CELSIUS });
  });
});

describe("what the engine is compiled with", () => {
  const cold = new Dialog().say("diesel compact tractor turns slowly, we had frost").state;
  const plain = new Dialog().say("diesel compact tractor turns slowly").state;

  it("differs with the weather, by what was told and by the month", () => {
    const options = engineOptions(noBanks, settings);
    expect(options(cold).key).not.toBe(options(plain).key);
    const monthlyTemperatures = Array.from({ length: 12 }, () => -20);
    const north = engineOptions(noBanks, { ...settings, monthlyTemperatures });
    expect(north(plain).key).not.toBe(options(plain).key);
    expect(north(cold).key).toBe(options(cold).key);
  });

  it("differs once the shop has learned something", () => {
    const options = engineOptions(noBanks, settings);
    const learned = { key: "2 closings", options: { times: new Map([["battery-flat", 2]]) } };
    const taught = withLearning(options, () => learned);
    expect(taught(plain).key).not.toBe(options(plain).key);
    expect(taught(plain).options).toEqual({ joint: [], times: learned.options.times });
  });
});
