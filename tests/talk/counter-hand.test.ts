import { describe, expect, it } from "vitest";
import type { Member } from "../../src/domain/documents.ts";
import type { Desk, OtherCase } from "../../src/talk/desk.ts";
import { Dialog, members, settings } from "../helpers/dialog.ts";

const first = new Dialog().say("petrol garden tractor, one click, lights stay bright");
const standing = first.desk.triage(first.state, "technician");

const skills = {
  electrics: ["battery", "terminals", "ground", "power-cable", "relay-solenoid", "starter-motor"],
  fuel: ["fuel", "air"],
} as const;
const shop = { ...settings, skills: { electrics: [...skills.electrics], fuel: [...skills.fuel] } };

const technician = (person: string, name: string, own?: readonly string[]): Member => ({
  ...{ person, name, chat: person, language: "en", role: "technician" },
  ...(own === undefined ? {} : { skills: own }),
});
const job = (person: string, n: number): OtherCase => ({
  ...{ id: `J${person}${n}`, machine: {}, where: null, booked: null, visit: "assigned" },
  ...{ operator: { id: "x", name: "" }, technician: { id: person }, openedAt: 0 },
});

function offered(
  people: readonly Member[],
  loads: Record<string, number>,
  more: Partial<Desk> = {},
) {
  const jobs = Object.entries(loads).flatMap(([person, count]) =>
    Array.from({ length: count }, (_, n) => job(person, n)),
  );
  const dispatcher = members.filter((one) => one.role === "dispatcher");
  const dialog = new Dialog("en", {
    ...{ shop, triage: () => standing, others: () => jobs, members: [...dispatcher, ...people] },
    ...more,
  })
    .say("petrol garden tractor, one click, lights stay bright")
    .press("All is safe")
    .press("More …")
    .press("Talk to a person")
    .press("Hand to a technician", "2");
  return dialog.labels("2");
}

describe("to whom a case is handed", () => {
  it("puts those first whose trade the likely causes are", () => {
    const labels = offered(
      [technician("5", "Fee", ["fuel"]), technician("6", "Ela", ["electrics"])],
      {},
    );
    expect(labels[0]).toMatch(/^Ela · electrics: \d+%$/);
    expect(labels[1]).toMatch(/^Fee · fuel: \d+%$/);
    const shares = labels.map((label) => Number(/(\d+)%/.exec(label)?.[1]));
    expect(shares[0]).toBeGreaterThan(shares[1] ?? 100);
  });

  it("weighs that against the work they have already", () => {
    const people = [technician("5", "Fee", ["fuel"]), technician("6", "Ela", ["electrics"])];
    expect(offered(people, { 6: 9 })[0]).toContain("Fee");
    expect(offered(people, { 6: 1 })[0]).toContain("Ela – one open job · electrics");
  });

  it("goes by load alone where no skills are noted", () => {
    const people = [technician("5", "Fee"), technician("6", "Ela")];
    expect(offered(people, { 5: 2 })).toEqual(["Ela", "Fee – 2 open jobs"]);
  });
});
