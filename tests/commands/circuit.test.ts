import { describe, expect, it } from "vitest";
import { circuitCommand } from "../../src/commands/circuit.ts";

async function run(...args: string[]) {
  let out = "";
  let complaints = "";
  const code = await circuitCommand(args, {
    stdout: (text) => {
      out += text;
    },
    stderr: (text) => {
      complaints += text;
    },
    cwd: process.cwd(),
    root: process.cwd(),
    stdin: () => Promise.resolve(""),
  });
  return { code, out, complaints };
}

describe("the circuit command", () => {
  it("says what a healthy machine shows and how its file fares", async () => {
    const { code, out, complaints } = await run("garden-tractor");
    expect(code).toBe(0);
    expect(complaints).toBe("");
    expect(out).toMatch(/battery-rest-volts +12\.\d+ V/);
    expect(out).toMatch(/a healthy machine cranks normally in \d+ %/);
  });

  it("gives JSON for a fault, a pair and a temperature, complaint shares summing to one", async () => {
    const { out } = await run(
      ...["compact-tractor", "--fault", "battery-flat,plus-clamp-corroded", "--temp", "-10"],
      "--json",
    );
    const answer: unknown = JSON.parse(out);
    expect(answer).toMatchObject({
      ...{ circuit: "compact-tractor", hypothesis: "battery-flat+plus-clamp-corroded" },
      celsius: -10,
    });
    const shares = JSON.stringify(answer).match(/"complaints":\{([^}]*)\}/)?.[1] ?? "";
    const sum = [...shares.matchAll(/:([\d.e-]+)/g)].reduce((s, [, n]) => s + Number(n), 0);
    expect(sum).toBeCloseTo(1, 9);
  });

  it("answers with every circuit a kind may have", async () => {
    const { out } = await run("old-tractor");
    expect(out).toMatch(/6 V, plus to earth: nothing-wrong/);
    expect(out).toMatch(/12 V, key straight to the solenoid: nothing-wrong/);
  });

  it.each([
    [[], /Which machine\? There are: /],
    [["spaceship"], /There is no circuit for "spaceship"/],
    [["atv", "--temp", "warm"], /must be a number from -40 to 50/],
    [["atv", "--temp", "90"], /must be a number from -40 to 50/],
    [
      ["atv", "--fault", "gremlins"],
      /has no fault "gremlins"\. It has: nothing-wrong, battery-flat/,
    ],
    [["atv", "--colour", "red"], /There is no option --colour/],
  ])("refuses %j with a plain sentence and code 2", async (args, says) => {
    const { code, out, complaints } = await run(...args);
    expect(code).toBe(2);
    expect(out).toBe("");
    expect(complaints).toMatch(says);
  });
});
