import { describe, expect, it } from "vitest";
import { type GroupForecast, isGroup, scoreStage } from "../../src/commands/field-score.ts";
import { causeGroups } from "../../src/domain/vocabulary.ts";

const priors = Object.fromEntries(causeGroups.map((group) => [group, 1 / causeGroups.length]));
const forecast = (
  id: string,
  truth: readonly string[],
  byGroup: Readonly<Record<string, number>>,
): GroupForecast => ({ id, truth, byGroup, priors, strict: true, asked: 4, answered: 3 });

describe("scoring by groups", () => {
  it("takes the best rank and the sum of the chances where several groups are true", () => {
    const two = forecast("a", ["battery", "terminals"], {
      ground: 0.4,
      battery: 0.3,
      terminals: 0.2,
    });
    expect(scoreStage("x", [two]).byCase).toEqual([
      { id: "a", rank: 2, probability: 0.5, leader: "ground", asked: 4, answered: 3 },
    ]);
  });

  it("scores a sure and right forecast 0 and a sure and wrong one with the clipped worst", () => {
    const right = scoreStage("x", [forecast("a", ["fuel"], { fuel: 1 })]).all;
    expect(right).toMatchObject({ cases: 1, logLoss: 0, brier: 0, ece: 0 });
    expect(right.top1.value).toBe(1);
    // Log loss in nats, clipped at 1e-4; Brier of the whole mass on one wrong class: 1 + 1.
    const wrong = scoreStage("x", [forecast("a", ["fuel"], { air: 1 })]).all;
    expect(wrong.logLoss).toBeCloseTo(-Math.log(1e-4), 6);
    expect(wrong.brier).toBeCloseTo(2, 6);
    expect(wrong.top3.value).toBe(0);
  });

  it("gives the uniform baseline the log loss of as many equal groups", () => {
    const { baselines } = scoreStage("x", [forecast("a", ["fuel"], { fuel: 1 })]).all;
    expect(baselines.uniform.logLoss).toBeCloseTo(Math.log(causeGroups.length), 6);
  });

  it("counts strict cases apart, and the questions that were asked", () => {
    const loose = { ...forecast("b", ["air"], { air: 1 }), strict: false, asked: 10 };
    const score = scoreStage("x", [forecast("a", ["fuel"], { fuel: 1 }), loose]);
    expect([score.all.cases, score.strict.cases]).toEqual([2, 1]);
    expect(score.all.questions).toEqual({ median: 10, p90: 10 });
  });

  it("re-weighs to the priors: equal groups in equal numbers change nothing", () => {
    const even = causeGroups.map((group) => forecast(group, [group], { [group]: 1 }));
    const { weighted } = scoreStage("x", even).all;
    expect(weighted.effectiveCases).toBeCloseTo(even.length, 6);
    expect(weighted.top1.value).toBeCloseTo(1, 6);
    const twice = scoreStage("x", [...even, forecast("again", ["fuel"], { fuel: 1 })]).all.weighted;
    expect(twice.effectiveCases).toBeLessThan(even.length + 1);
  });

  it("knows the groups a case file may name", () => {
    expect(isGroup("ground")).toBe(true);
    expect(isGroup("gremlins")).toBe(false);
  });
});
