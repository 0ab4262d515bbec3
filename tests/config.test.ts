import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import type { Environment } from "../src/config.ts";
import { readConfig } from "../src/config.ts";

const TOKEN = "123456789:AAabcdefghijklmnopqrstuvwxyz_-12345";
const problems = (environment: Environment) => {
  const read = readConfig(environment);
  return read.ok ? [] : read.problems.map(({ says }) => says);
};

describe("the configuration", () => {
  it("needs nothing: without a token the rehearsal room opens", () => {
    expect(readConfig({ PATH: "/bin" }, "/home/x")).toEqual({
      ok: true,
      value: { dataFolder: resolve("/home/x/.data"), port: 4870, simulate: true },
    });
  });

  it("takes what is set, and an empty value for a missing one", () => {
    const read = readConfig(
      {
        TURNROW_TOKEN: ` ${TOKEN}\n`,
        TURNROW_DATA: "/var/lib/turnrow",
        TURNROW_API_ROOT: "http://127.0.0.1:8081/",
        TURNROW_PORT: "",
      },
      "/home/x",
    );
    expect(read).toEqual({
      ok: true,
      value: {
        token: TOKEN,
        dataFolder: resolve("/var/lib/turnrow"),
        apiRoot: "http://127.0.0.1:8081",
        port: 4870,
        simulate: true,
      },
    });
  });

  it("names every mistake at once, with what to do, and repeats no secret", () => {
    const secret = "my-secret-but-wrong";
    const says = problems({
      TURNROW_TOKEN: secret,
      TURNROW_API_ROOT: "nowhere",
      TURNROW_PORT: "http",
      TURNROW_PROT: "80",
    });
    expect(says).toHaveLength(4);
    expect(says.join("\n")).not.toContain(secret);
    expect(says.join("\n")).toContain("@BotFather");
    expect(says.join("\n")).toContain("TURNROW_PROT: there is no such setting");
  });

  it.each(["-1", "65536", "80.5", "1e9", "x"])("refuses the port %s", (port) =>
    expect(problems({ TURNROW_PORT: port })).toHaveLength(1),
  );

  it.each(["http://127.0.0.1:1", "http://localhost:1", "http://[::1]:1", "https://bots.example"])(
    "lets the token go to %s",
    (root) => expect(problems({ TURNROW_API_ROOT: root })).toEqual([]),
  );

  it.each(["http://bots.example", "http://127.0.0.1.example", "ftp://localhost", "127.0.0.1:80"])(
    "does not let the token go to %s",
    (root) => expect(problems({ TURNROW_API_ROOT: root })).toHaveLength(1),
  );

  it("leaves the simulation out where it is told to, and knows only yes and no", () => {
    const off = readConfig({ TURNROW_SIMULATE: "no" }, "/home/x");
    expect(off.ok && off.value.simulate).toBe(false);
    expect(readConfig({ TURNROW_SIMULATE: "maybe" }, "/home/x").ok).toBe(false);
  });
});
