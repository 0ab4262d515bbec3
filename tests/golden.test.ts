import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { causeGroups } from "../src/domain/vocabulary.ts";
import { workshop } from "./helpers/dialog.ts";
import { playCall } from "./helpers/golden-call.ts";

const HOME = "tests/golden";

/** The complaints that people call about; each has three calls. */
const COMPLAINTS = [
  ...(workshop.knowledge.observations.get("on-start")?.states ?? []).map((state) => state.id),
  "sometimes",
  "only-hot",
  "only-wet",
  "goes-flat",
].filter((complaint) => complaint !== "starts");

const calls = readdirSync(HOME, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name)
  .sort();

describe("three calls for each complaint", () => {
  it.each(COMPLAINTS)("%s", (complaint) => {
    expect(calls.filter((name) => name.replace(/-\d+$/, "") === complaint).length).toBeGreaterThan(
      2,
    );
  });
});

const played = new Map(calls.map((name) => [name, playCall(join(HOME, name))]));

describe("the calls together", () => {
  it("have the true group among the first three, but for joints that no ear tells apart", () => {
    const wider = [...played.values()].filter(({ call }) => call.must.first > 3);
    expect(wider.length).toBeLessThanOrEqual(3);
    for (const { groups } of wider) {
      expect(["terminals", "ground", "power-cable"]).toContain(groups[0]);
    }
  });
});

describe.each(calls)("the call %s", (name) => {
  const one = played.get(name);
  if (one === undefined) throw new Error(name);
  const { must } = one.call;

  it("names causes and groups that exist", () => {
    for (const id of one.causes) expect(workshop.knowledge.faults.has(id), id).toBe(true);
    for (const id of one.groups) expect(causeGroups).toContain(id);
    expect(one.groups.length).toBeGreaterThan(0);
  });

  it("tells the facts so that the reader understands every one", () => {
    expect(one.notUnderstood.filter((text) => text.includes(": "))).toEqual([]);
  });

  it("has the true group among the first after the interview", () => {
    expect(
      one.afterInterview.slice(0, must.first).some((group) => one.groups.includes(group)),
      `${one.afterInterview.slice(0, 5).join(", ")} after ${one.questions.join(", ")}`,
    ).toBe(true);
  });

  it("has the true group first once the technician has measured", () => {
    expect(one.groups, one.afterVisit.slice(0, 3).join(", ")).toContain(one.afterVisit[0]);
  });

  it("asks no more than it may, and nothing that it must not", () => {
    expect(one.questions.length).toBeLessThanOrEqual(must.questions);
    for (const id of must.never) expect(one.questions).not.toContain(id);
  });

  it("shows the warnings it must, and sees the danger in the first message", () => {
    for (const id of must.shows) {
      expect(workshop.knowledge.hazards.has(id), id).toBe(true);
      expect(one.warnings).toContain(id);
    }
    if (must.flag !== undefined) expect(one.flags).toContain(must.flag);
    else expect(one.flags).toEqual([]);
  });
});
