import { describe, expect, it } from "vitest";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { chanceHolds } from "../../src/diagnosis/machine-condition.ts";
import { chooseNext } from "../../src/diagnosis/next-check.ts";
import { withToldFeatures } from "../../src/diagnosis/told-features.ts";
import type { MachineFacts } from "../../src/domain/evidence.ts";
import type { MachineKindId } from "../../src/domain/vocabulary.ts";
import { workshop } from "../helpers/dialog.ts";
import { operatorThere, told } from "../helpers/told.ts";

const { knowledge } = workshop;
const byCord = told("started-by", "cord");
/** What only a machine with a battery has. */
const electric =
  /\b[Kk]ey\b|\bSTART\b|[Bb]atter|[Dd]isplay|[Ll]amp|[Ll]ights|[Ss]tarter|[Cc]lick|[Jj]ump/;
/** Kinds of which some have no battery. */
const withCord = [...knowledge.machines.values()]
  .filter(({ features }) => (features.get("cord-alone") ?? 0) > 0)
  .map(({ id }) => id);

const machine = (kind: MachineKindId): MachineFacts =>
  withToldFeatures({ kind, fuel: "petrol" }, [byCord], knowledge);

/** Whether some machine like this may have what is asked about. */
const mayHave = (facts: MachineFacts, needs: Parameters<typeof chanceHolds>[0]): boolean =>
  chanceHolds(needs, facts, knowledge.machines.get(facts.kind), 1) > 0;

describe("a machine that is started by cord alone", () => {
  it("is known among walk-behind machines and pumps", () => {
    expect(withCord).toEqual(expect.arrayContaining(["walk-behind", "pump-or-generator"]));
  });

  it("has no question for its operator that speaks of key, lamps, starter or battery", () => {
    const asked = withCord.flatMap((kind) => {
      const facts = machine(kind);
      return [...knowledge.checks.values(), ...knowledge.acts.values()].flatMap((one) => {
        const yields = "yields" in one && one.yields !== null ? one.yields : undefined;
        const seen = knowledge.observations.get(yields ?? "")?.needs ?? {};
        const open = one.performers.includes("operator") && mayHave(facts, one.needs);
        return open && mayHave(facts, seen) && electric.test(one.ask)
          ? [`${one.id}: ${one.ask}`]
          : [];
      });
    });
    expect([...new Set(asked)]).toEqual([]);
  });

  it("is suspected of nothing that has a battery in it", () => {
    const parts = ["battery", "terminals", "ground", "power-cable", "key-switch", "starter-motor"];
    for (const kind of withCord) {
      const facts = machine(kind);
      const electrical = [...knowledge.faults.values()].filter(
        (fault) => parts.includes(fault.group) && mayHave(facts, fault.needs),
      );
      expect(electrical.map(({ id }) => id)).toEqual([]);
    }
  });

  it("is asked to the end of the interview without a word of what it has not", () => {
    for (const kind of withCord) {
      const model = compileModel(knowledge, machine(kind));
      const evidence = { reports: [byCord, told("on-start", "turns-no-fire")], acts: [] };
      const asked: string[] = [];
      for (;;) {
        const next = chooseNext(model, evidence, { ...operatorThere, asked });
        if (next.kind === "stop") break;
        asked.push(next.check);
      }
      expect(asked.length).toBeGreaterThan(0);
      const words = asked.map((id) => (knowledge.checks.get(id) ?? knowledge.acts.get(id))?.ask);
      expect(words.filter((ask) => electric.test(ask ?? ""))).toEqual([]);
    }
  });
});

describe("what is told of how a machine is started", () => {
  it("tells nothing of a kind that no cord starts", () => {
    const combine: MachineFacts = { kind: "combine" };
    expect(withToldFeatures(combine, [byCord], knowledge)).toBe(combine);
  });

  it("is corrected by what is said later, and never outweighs what is on file", () => {
    const pump: MachineFacts = { kind: "pump-or-generator" };
    const later = withToldFeatures(pump, [byCord, told("started-by", "key")], knowledge);
    expect(later.features).toMatchObject({ "electric-start": true, "cord-alone": false });
    const filed = { ...pump, features: { "electric-start": true } };
    const still = withToldFeatures(filed, [byCord], knowledge);
    expect(still.features).toMatchObject({ "electric-start": true });
  });
});
