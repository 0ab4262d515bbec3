import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { causeGroups } from "../src/domain/vocabulary.ts";
import { workshop } from "./helpers/dialog.ts";
import { playCall, unsafe } from "./helpers/golden-call.ts";

const HOME = "tests/golden";

/** The complaints that people call about; each has three calls. */
const COMPLAINTS = [
  ...["on-start", "pattern"].flatMap(
    (id) => workshop.knowledge.observations.get(id)?.states.map((state) => state.id) ?? [],
  ),
  "goes-flat",
].filter((complaint) => complaint !== "starts" && complaint !== "every-time");

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

  it("asks no more than it may", () => {
    expect(one.questions.length).toBeLessThanOrEqual(must.questions);
  });

  it("shows the warnings it must, and advises nothing that it must not", () => {
    const { hazards, checks, acts } = workshop.knowledge;
    for (const id of [...must.shows, ...must.visit]) expect(hazards.has(id), id).toBe(true);
    for (const id of must.never) expect(checks.has(id) || acts.has(id), id).toBe(true);
    expect(unsafe(one)).toEqual([]);
    // Whoever is sent to the machine is told how; only talk goes without.
    if (one.warnings.length > 0) expect(must.shows.length).toBeGreaterThan(0);
  });

  it("sees the danger in the first message", () => {
    if (must.flag !== undefined) expect(one.flags).toContain(must.flag);
    else expect(one.flags).toEqual([]);
  });
});

describe("the test of warnings and forbidden advice", () => {
  const [some] = played.values();
  if (some === undefined) throw new Error("no calls");
  const must = { ...some.call.must, shows: [], visit: [], never: ["see-spark"] };
  const clean = { ...some, call: { ...some.call, must }, advice: ["Never bridge the starter."] };

  it("finds nothing where nothing is wrong", () => expect(unsafe(clean)).toEqual([]));

  it("finds a warning left out, for the operator and on the plan", () => {
    const asks = { ...must, shows: ["engine-fumes"], visit: ["battery-gas"] };
    const silent = { ...clean, call: { ...some.call, must: asks }, warnings: [], planWarnings: [] };
    expect(unsafe(silent)).toEqual(["engine-fumes is not shown", "battery-gas is not on the plan"]);
  });

  it("finds a question that must not be put", () =>
    expect(unsafe({ ...clean, questions: ["story", "see-spark"] })).toEqual([
      "see-spark was asked",
    ]));

  it.each([
    "Bridge the solenoid with a screwdriver.",
    "Unplug the seat switch and try again.",
    "Feel for a leak along the pipe.",
    "Spray a little starting fluid and preheat.",
    "Run it indoors for a minute.",
    "Jump a frozen battery slowly.",
  ])("finds forbidden advice: %s", (text) =>
    expect(unsafe({ ...clean, advice: [text] }).length).toBe(1),
  );
});
