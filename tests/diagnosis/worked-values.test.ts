import { describe, expect, it } from "vitest";
import { answerValue, type Choice, type Costed } from "../../src/diagnosis/value.ts";

/** A choice between fixed ways, given by what each brings in each state (gains, not costs). */
function choice(weights: readonly number[], gains: readonly (readonly number[])[]): Choice<Costed> {
  return {
    weights: Float64Array.from(weights),
    policies: gains.map((row) => ({ costs: Float64Array.from(row, (gain) => -gain) })),
    suggest: () => [],
  };
}

const rows = (...answers: readonly (readonly number[])[]) =>
  answers.map((answer) => Float64Array.from(answer));

describe("the value of an answer against worked examples", () => {
  // Used car (Russell & Norvig, AIMA, exercise 16.22).
  it("gives 0 to the used car's test, which changes nothing, and 60 to certainty", () => {
    const buy = [2000 - 1500, 2000 - 1500 - 700];
    const car = choice([0.7, 0.3], [buy, [0, 0]]);
    const test = answerValue(car, rows([0.8, 0.35], [0.2, 0.65]));
    expect(test.saved).toBeCloseTo(0, 9);
    const pass = 0.7 * 0.8 + 0.3 * 0.35;
    expect(pass).toBeCloseTo(0.665, 12);
    expect((0.7 * 0.8) / pass).toBeCloseTo(0.84210526, 8);
    expect((0.7 * 0.2) / (1 - pass)).toBeCloseTo(0.41791045, 8);
    expect(0.7 * 500 - 0.3 * 200).toBeCloseTo(290, 12);
    expect(answerValue(car, rows([1, 0], [0, 1])).saved).toBeCloseTo(60, 9);
  });

  // Oil wildcatter: priors and test table of a public network file, pay-offs −70, 50, 200, fee 10.
  it("gives 12.5 to the seismic test and 35 to certainty", () => {
    const drilling = choice(
      [0.5, 0.3, 0.2],
      [
        [-70, 50, 200],
        [0, 0, 0],
      ],
    );
    const seismic = answerValue(drilling, rows([0.1, 0.3, 0.5], [0.3, 0.4, 0.4], [0.6, 0.3, 0.1]));
    expect(seismic.saved).toBeCloseTo(12.5, 9);
    expect(20 + seismic.saved - 10).toBeCloseTo(22.5, 9);
    expect(answerValue(drilling, rows([1, 0, 0], [0, 1, 0], [0, 0, 1])).saved).toBeCloseTo(35, 9);
  });

  // Three multipliers and two adders (de Kleer & Williams 1987), A=3 B=2 C=2 D=3 E=3, F=10 G=12.
  it("probes x, then y, then z in the polybox", () => {
    const minimal = choice([0.495, 0.495, 0.005, 0.005], [[0, 0, 0, 0]]);
    // Minimal diagnoses [A1], [M1], [A2,M2], [M2,M3]; two answers each: as predicted, or not.
    const bits = (unpredicted: readonly number[]) =>
      answerValue(
        minimal,
        rows(
          unpredicted.map((u) => 1 - u),
          unpredicted,
        ),
      ).bits;
    expect(bits([0, 1, 0, 0])).toBeCloseTo(0.999928, 6);
    expect(bits([0, 0, 1, 1])).toBeCloseTo(0.080793, 6);
    expect(bits([0, 0, 0, 1])).toBeCloseTo(0.045415, 6);
    const whole = answerValue(
      minimal,
      rows([1, 0, 0, 0], [0, 1, 0, 0], [0, 0, 1, 0], [0, 0, 0, 1]),
    );
    expect(whole.bits).toBeCloseTo(1.080793, 6);
  });

  it("keeps the polybox's ranking over all consistent fault sets", () => {
    const { weights, probes } = polybox();
    expect(weights).toHaveLength(27);
    const all = choice(weights, [weights.map(() => 0)]);
    const [x = 0, y = 0, z = 0] = probes.map((answers) => answerValue(all, rows(...answers)).bits);
    expect(x).toBeCloseTo(1.040838, 6);
    expect(y).toBeCloseTo(0.081544, 6);
    expect(z).toBeCloseTo(0.047402, 6);
  });

  // One of n equally likely stages of a chain is broken: half-split.
  it("splits a chain in the middle", () => {
    const gains = (n: number) =>
      Array.from({ length: n - 1 }, (_, cut) => {
        const even = new Array<number>(n).fill(1 / n);
        const before = even.map((_p, k) => Number(k <= cut));
        const answers = rows(
          before,
          before.map((b) => 1 - b),
        );
        return answerValue(choice(even, [even.map(() => 0)]), answers).bits;
      });
    const [first, middle, last] = gains(4);
    expect(first).toBeCloseTo(0.811278, 6);
    expect(middle).toBeCloseTo(1, 9);
    expect(last).toBeCloseTo(0.811278, 6);
    expect(gains(8)[0]).toBeCloseTo(0.543564, 6);
    expect(gains(8)[3]).toBeCloseTo(1, 9);
  });
});

type Probe = "x" | "y" | "z";

/** What each adder says: with the one input known, the other is the sum less that. */
const adders = [
  { part: "A1", from: "x", to: "y", sum: 10 },
  { part: "A1", from: "y", to: "x", sum: 10 },
  { part: "A2", from: "y", to: "z", sum: 12 },
  { part: "A2", from: "z", to: "y", sum: 12 },
] as const;

/** Values that the parts still trusted give at each probe point. */
function derived(broken: ReadonlySet<string>): Record<Probe, Set<number>> {
  const values = { x: new Set<number>(), y: new Set<number>(), z: new Set<number>() };
  for (const [part, point] of [
    ["M1", "x"],
    ["M2", "y"],
    ["M3", "z"],
  ] as const) {
    if (!broken.has(part)) values[point].add(6);
  }
  for (let round = 0; round < 3; round++) {
    for (const { part, from, to, sum } of adders) {
      const [known] = values[from];
      if (!broken.has(part) && known !== undefined) values[to].add(sum - known);
    }
  }
  return values;
}

/** Fault sets of the polybox that agree with F=10, G=12, and each probe's answers under them. */
function polybox() {
  const parts = ["M1", "M2", "M3", "A1", "A2"];
  const sets = Array.from(
    { length: 32 },
    (_, bits) => new Set(parts.filter((_p, k) => ((bits >> k) & 1) === 1)),
  );
  const kept = sets
    .map((set) => ({ size: set.size, values: derived(set) }))
    .filter(({ values }) => Object.values(values).every((said) => said.size <= 1));
  const raw = kept.map(({ size }) => 0.01 ** size * 0.99 ** (5 - size));
  const total = raw.reduce((sum, weight) => sum + weight, 0);
  const probes = (["x", "y", "z"] as const).map((point) => {
    const said = kept.map(({ values }) => [...values[point]][0]);
    return [...new Set(said)].map((answer) => said.map((value) => Number(value === answer)));
  });
  return { weights: raw.map((weight) => weight / total), probes };
}
