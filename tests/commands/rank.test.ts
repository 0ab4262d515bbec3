import { describe, expect, it } from "vitest";
import { rankCommand } from "../../src/commands/rank.ts";
import { causeGroups } from "../../src/domain/vocabulary.ts";
import { runCommand } from "../helpers/command-io.ts";

const CASE = `id: x-001
machine: { kind: "ride-on mower, 15 hp", fuel: petrol }
opening: "it just clicks once"
operator: { lights-at-start: stay-bright, mood: cheerful }
`;

const rank = (args: readonly string[], stdin = "") => runCommand(rankCommand, args, { stdin });
const ranked = async (text: string): Promise<Record<string, unknown>> =>
  JSON.parse((await rank(["-", "--json"], text)).stdout);

describe("rank", () => {
  it("prints causes that sum to one with the rest, reasons, plan and kit", async () => {
    const { stdout, code } = await rank(["-", "--json"], CASE);
    expect(code).toBe(0);
    const out = JSON.parse(stdout);
    expect(out).toMatchObject({ id: "x-001", machineKind: "ride-on-mower" });
    const causes: { probability: number; group: string; reasons: unknown[] }[] = out.causes;
    const sum = causes.reduce((total, cause) => total + cause.probability, 0);
    expect(sum + out.somethingElse + out.nothingWrong).toBeCloseTo(1, 6);
    for (const { group } of causes) expect(causeGroups).toContain(group);
    expect(causes[0]?.reasons.length).toBeGreaterThan(0);
    expect(out.plan.steps.length).toBeGreaterThan(0);
    expect(out.plan.minutes.p90).toBeGreaterThanOrEqual(out.plan.minutes.median);
    expect(out.kitCovers).toBeLessThanOrEqual(1);
    expect(out.next).not.toBeNull();
  }, 60_000);

  it("does not fail on what it does not know, and says so", async () => {
    const out = await ranked(CASE);
    expect(out["notUnderstood"]).toContain("mood: cheerful");
  }, 60_000);

  it("names causes that nothing told tells apart, with a check that would", async () => {
    const dead = `id: dark\nmachine: { kind: compact tractor, fuel: diesel, volts: 12 }
operator: { on-start: nothing, lights-on: dead }\n`;
    const { lookAlike, causes } = JSON.parse((await rank(["-", "--json"], dead)).stdout);
    expect(lookAlike.causes.length).toBeGreaterThan(1);
    expect(lookAlike.causes[0]).toBe(causes[0].id);
    expect(lookAlike.separatedBy.text.length).toBeGreaterThan(0);
  }, 60_000);

  it("gives a list for a list, and asks the technician once there are readings", async () => {
    const visited = `${CASE}technician: { battery-rest-volts: "12.6 V" }\n`;
    const { stdout } = await rank(["-", "--json"], JSON.stringify([{ id: "a" }, { id: "b" }]));
    expect(JSON.parse(stdout).map((one: { id: string }) => one.id)).toEqual(["a", "b"]);
    const out: { plan?: { steps?: { who: string }[] } } = await ranked(visited);
    expect(out.plan?.steps?.some((step) => step.who === "technician")).toBe(true);
  }, 60_000);

  it("reads well in a terminal", async () => {
    const { stdout } = await rank(["-"], CASE);
    expect(stdout).toContain("Case x-001 (ride-on-mower)");
    expect(stdout).toMatch(/[+-]\d+\.\d dB {2}\S+ = \S+/);
    expect(stdout).toContain("something else");
    expect(stdout).toContain("Not understood: mood: cheerful");
    expect(stdout).not.toMatch(/undefined|NaN|\[object/);
  }, 60_000);

  it.each([
    [[], "Use:"],
    [["a", "b"], "Use:"],
    [["a", "--colour"], "Use:"],
    [["no-such-file.yaml"], "there is no such file"],
  ])("refuses %j with exit code 2 and one sentence", async (args, says) => {
    const { code, stdout, stderr } = await rank(args);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(says);
    expect(stderr.trim().split("\n")).toHaveLength(1);
  });

  it("names the line of a file that cannot be read", async () => {
    const { code, stderr } = await rank(["-"], "id: x\nmachine: [\n");
    expect(code).toBe(2);
    expect(stderr).toMatch(/-:\d+/);
    expect(stderr).not.toContain(" at ");
  });
});
