import { describe, expect, it } from "vitest";
import { type Dimension, readChange, readSpread } from "../../src/knowledge/circuit-quantity.ts";

const scale = { nominalVolts: 24, loopOhms: 0.02, oils: ["10W-30", "15W-40"] };

function read(text: string, dimension: Dimension) {
  const says: string[] = [];
  const spread = readSpread(text, dimension, scale, (one) => void says.push(one));
  return { spread, says };
}

describe("values with units", () => {
  it.each([
    ["12 V", "volts", { kind: "exact", value: 12 }],
    ["3 to 5 ohm", "ohms", { kind: "even", low: 3, high: 5 }],
    ["10 mohm to 2 ohm", "ohms", { kind: "even", low: 0.01, high: 2 }],
    ["75 to 100 %", "share", { kind: "even", low: 0.75, high: 1 }],
    ["-0.2 to 0.1 V", "volts", { kind: "even", low: -0.2, high: 0.1 }],
    ["6 +- 0.5 Nm (4 to 8)", "torque", { kind: "normal", middle: 6, spread: 0.5, low: 4, high: 8 }],
    ["about 2 loop, factor 3", "ohms", { kind: "about", middle: 0.04, spread: 3 }],
    ["open", "ohms", { kind: "exact", value: 1e9 }],
    ["0.5 nominal", "volts", { kind: "exact", value: 12 }],
    ["15.1 mNm/A", "flux", { kind: "exact", value: 0.0151 }],
    ["15W-40", "oil", { kind: "exact", value: 1 }],
  ] as const)("reads %s as %s", (text, dimension, spread) => {
    expect(read(text, dimension)).toEqual({ spread, says: [] });
  });

  it("reads a factor's limits in units of their own, open included", () => {
    expect(read("about 1 loop, factor 4 (0.5 loop to 30 ohm)", "ohms").spread).toEqual({
      ...{ kind: "about", middle: 0.02, spread: 4, low: 0.01, high: 30 },
    });
    const open = read("about 1 loop, factor 4 (0.5 loop to open)", "ohms").spread;
    expect(open).toMatchObject({ high: 1e9 });
  });

  it("reads weighted choices", () => {
    expect(read("8: open | 2: about 100 ohm, factor 2", "ohms").spread).toEqual({
      kind: "choice",
      choices: [
        { weight: 8, spread: { kind: "exact", value: 1e9 } },
        { weight: 2, spread: { kind: "about", middle: 100, spread: 2 } },
      ],
    });
  });

  it.each([
    ["12", "volts", /has no unit; write it in V or mV or nominal/],
    ["12 A", "volts", /must be in V or mV or nominal, not in "A"/],
    ["5 to 3 ohm", "ohms", /the smaller value comes first/],
    ["about 3 ohm, factor 0.5", "ohms", /factor must be 1 or more/],
    ["lots", "ohms", /is not a value/],
    ["1.2 V", "plain", /takes no unit/],
    ["5W-20", "oil", /there is no oil "5W-20"/],
    ["open | 2: 3 ohm", "ohms", /needs its weight in front/],
  ] as const)("refuses %s for %s in a plain sentence", (text, dimension, says) => {
    const found = read(text, dimension);
    expect(found.spread).toBeUndefined();
    expect(found.says.join(" ")).toMatch(says);
  });

  it("reads changes and refuses others", () => {
    const says: string[] = [];
    const change = (text: string) => readChange(text, "ohms", scale, (one) => void says.push(one));
    expect(change("becomes open")).toEqual({
      how: "becomes",
      value: { kind: "exact", value: 1e9 },
    });
    expect(change("plus 2 ohm")).toEqual({ how: "plus", value: { kind: "exact", value: 2 } });
    expect(change("times 2 to 3")).toEqual({
      how: "times",
      value: { kind: "even", low: 2, high: 3 },
    });
    expect(says).toEqual([]);
    expect(change("minus 2 ohm")).toBeUndefined();
    expect(says.join()).toMatch(/must begin with becomes, plus or times/);
  });
});
