// Covers also: src/commands/seat-members.ts, src/commands/scenario.ts, src/commands/demo-call.ts,
// src/commands/turnrow.ts
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { playCall } from "../../src/commands/demo-call.ts";
import { openRehearsal, REHEARSAL_TOKEN } from "../../src/commands/rehearsal.ts";
import { loadScenario } from "../../src/commands/scenario.ts";
import { seatMembers } from "../../src/commands/seat-members.ts";
import { exampleSettings } from "../../src/commands/shop-settings.ts";
import { startTurnrow, type Turnrow } from "../../src/commands/turnrow.ts";
import type { RehearsalServer } from "../../src/rehearsal/server.ts";
import { workshop } from "../helpers/dialog.ts";
import { gradeOf, MOST_GRADE } from "../helpers/reading-grade.ts";

const scenario = loadScenario(".");
const { operator, dispatcher, technician } = scenario.phones;
/** In the room nobody is in a hurry; a test is. */
const atOnce = { limits: () => [], overall: [] };
const MOST_MILLISECONDS = 120_000;

let folder: string;
let server: RehearsalServer;
let turnrow: Turnrow;
const logged: string[] = [];

beforeAll(async () => {
  const settings = exampleSettings(".");
  if (!settings.ok) throw new Error("The example settings cannot be read.");
  folder = mkdtempSync(join(tmpdir(), "turnrow-room-"));
  server = await openRehearsal(scenario, { port: 0, languages: ["en"] });
  turnrow = await startTurnrow({
    ...{ root: ".", dataFolder: folder, settings: settings.value, workshop, simulate: false },
    ...{ token: REHEARSAL_TOKEN, apiRoot: server.url, pace: atOnce },
    log: (what) => void logged.push(what),
  });
  await seatMembers(server, scenario, turnrow);
}, MOST_MILLISECONDS);

afterAll(async () => {
  await turnrow.stop();
  await server.stop();
  rmSync(folder, { recursive: true });
}, MOST_MILLISECONDS);

const texts = (id: number) =>
  server
    .transcript(id)
    .filter((one) => one.from.isBot)
    .map((one) => one.text)
    .join("\n");

describe("the rehearsal room", () => {
  it("listens on this computer only, with a token that cannot be a real one", async () => {
    expect(server.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
    expect(REHEARSAL_TOKEN).not.toMatch(/^\d{5,}:/);
    expect((await fetch(`${server.url}/`)).status).toBe(200);
  });

  it("has its people in their places once they have followed their links", () => {
    expect(texts(dispatcher.id)).toContain("You are now: owner");
    expect(texts(technician.id)).toContain("You are now: technician");
  });

  it("seats nobody twice", async () => {
    const before = server.calls().length;
    await seatMembers(server, scenario, { ownerToken: null });
    expect(server.calls().length - before).toBeLessThan(3);
  });

  it(
    "plays the demonstration call through: interview, slip, visit, end",
    async () => {
      await playCall(server, scenario, { timeoutMs: 8_000 });
      expect(texts(operator.id)).toContain("Your case number is");
      // The slip named the causes while the case was open; closed, it is short.
      expect(JSON.stringify(server.calls())).toContain("Likely causes");
      expect(texts(dispatcher.id)).toMatch(/Closed\. Cause: \S+/);
      expect(texts(technician.id)).toContain("Plan");
      expect(texts(operator.id)).toMatch(/Case \S+ is closed/);
      expect(gradeOf(texts(operator.id).split("\n"))).toBeLessThanOrEqual(MOST_GRADE);
      expect(logged).toEqual([]);
    },
    MOST_MILLISECONDS,
  );
});
