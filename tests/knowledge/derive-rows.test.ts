import { describe, expect, it } from "vitest";
import { averaged, silenced } from "../../src/knowledge/derive-rows.ts";
import { knowledgeOf, problemsOf } from "./small-flows.ts";

describe("rows that nobody writes", () => {
  it("averages the rows of a follower over what the fault does to its parent", () => {
    expect(
      averaged(
        [0.25, 0.75],
        [
          [1, 0],
          [0.2, 0.8],
        ],
      ),
    ).toEqual([0.4, 0.6000000000000001]);
    const { faults, observations } = knowledgeOf();
    const row = faults.get("flat")?.rows.get("engine-turns") ?? [];
    // nothing and slow are equally likely; only slow goes round
    expect(row[0]).toBeCloseTo(0.5, 1);
    expect(row[0] ?? 0).toBeCloseTo(1 - (row[1] ?? 0), 12);
    expect(observations.get("engine-turns")?.follows?.observation).toBe("on-start");
    expect(observations.get("engine-turns")?.follows?.rows).toHaveLength(14);
  });

  it("reads the outcome of an act from its chances to cure and to hide", () => {
    const { faults, acts } = knowledgeOf();
    const spoken = (row: readonly number[] = []) => (row[1] ?? 0) / (1 - (row[0] ?? 0));
    expect(spoken(faults.get("flat")?.rows.get("tried"))).toBeCloseTo(0.8, 9);
    // cured 0.1, else hidden 0.2: 1 − 0.9 · 0.8
    expect(spoken(faults.get("worn")?.rows.get("tried"))).toBeCloseTo(0.28, 9);
    expect(acts.get("charge")?.cures).toEqual(
      new Map([
        ["flat", 0.8],
        ["worn", 0.1],
      ]),
    );
    expect(acts.get("charge")?.masks).toEqual(new Map([["worn", 0.2]]));
    expect(faults.get("empty-tank")?.rows.has("tried")).toBe(false);
  });

  it("reads how often an act hides a fault from the fault's own row for the outcome", () => {
    const change = {
      from: "    shows: { rest-volts: { good: nearly-always } }\n    cured-by: { charge: 0.1 }\n    hidden-by: { charge: 0.2 }\n",
      to: "    shows: { rest-volts: { good: nearly-always }, tried: { gone: 0.6, same: 0.4 } }\n    cured-by: { charge: 0.1 }\n",
    };
    // gone 0.6 in all, cured 0.1 of them: hidden (0.6 − 0.1) / 0.9
    expect(knowledgeOf(change).acts.get("charge")?.masks.get("worn")).toBeCloseTo(0.5 / 0.9, 9);
  });

  it("gives an answer that says nothing the same chance under every fault", () => {
    const { faults, observations } = knowledgeOf();
    const usual = observations.get("tried")?.usual[0] ?? 0;
    for (const { rows } of faults.values()) {
      expect(rows.get("tried")?.[0] ?? usual).toBeCloseTo(usual, 12);
    }
    const row = silenced([0.1, 0.3, 0.6], [0], [0.5, 0.2, 0.3]);
    // what is left of 1 is shared as 0.3 to 0.6
    expect(row[0]).toBe(0.5);
    expect(row[1]).toBeCloseTo(0.5 / 3, 12);
    expect(row[2]).toBeCloseTo(1 / 3, 12);
  });

  it("gives the members of a latent group what the group's row implies", () => {
    const latent = {
      from: "checks:\n",
      to: `latent:
  charge-state:
    title: Charge
    states: [full, gone]
    usual: { full: 0.9, gone: 0.1 }
    shown-by:
      rest-volts: { full: { good: 1 }, gone: { low: 1 } }
      crank-volts: { full: { good: 0.8, low: 0.2 }, gone: { low: 1 } }

checks:
`,
    };
    const rows = {
      from: "shows: { lamps: { dim: often, dead: often }, rest-volts: { low: nearly-always }, crank-volts: { low: 1 } }",
      to: "shows: { lamps: { dim: often, dead: often }, charge-state: { gone: 0.9, full: 0.1 } }",
    };
    const worn = {
      from: "shows: { rest-volts: { good: nearly-always } }",
      to: "shows: { charge-state: { full: 1 } }",
    };
    const knowledge = knowledgeOf(latent, rows, worn);
    const group = knowledge.latentGroups.get("charge-state");
    expect(group?.members).toEqual(["rest-volts", "crank-volts"]);
    expect(group?.byFault.get("flat")?.[1]).toBeCloseTo(0.9, 9);
    const row = knowledge.faults.get("flat")?.rows.get("crank-volts") ?? [];
    expect(row[0]).toBeGreaterThan(0.9);
    expect(knowledge.observations.get("crank-volts")?.latent).toBe("charge-state");
    expect(problemsOf(latent, rows)[0]?.says).toContain('belongs to the group "charge-state"');
    const missing = {
      ...latent,
      to: latent.to.replace("full: { good: 1 }, gone: { low: 1 }", "full: { good: 1 }"),
    };
    expect(problemsOf(missing, rows, worn)[0]?.says).toBe('The row for "gone" is missing.');
  });
});
