import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createRehearsalServer } from "../../src/rehearsal/server.ts";
import { fileNameFor } from "../../src/store/file-name.ts";
import { Hand } from "../helpers/e2e-hand.ts";
import { killPrograms, programHome, removeFolder, startProgram } from "../helpers/e2e-program.ts";
import { freshData, Shop, TOKEN } from "../helpers/e2e-shop.ts";

const MOST_MILLISECONDS = 90_000;

let home: string;
beforeAll(() => {
  home = programHome({ ownFlows: true });
}, MOST_MILLISECONDS);
afterAll(() => {
  killPrograms();
  removeFolder(home);
});

/** Starts the program, which ends by itself. */
async function failedStart(environment: Readonly<Record<string, string>>, data = freshData()) {
  const program = startProgram(home, { TURNROW_DATA: data, ...environment });
  const code = await program.ended;
  removeFolder(data);
  return { code, says: program.stderr(), out: program.stdout() };
}

/** One plain sentence or several, and nothing of the program's inside. */
function expectPlain(says: string): void {
  expect(says).not.toMatch(/\bat .*\.js:\d+|Error:|undefined|\[object/);
  expect(says.trim()).not.toBe("");
}

describe("a start that cannot be", () => {
  it.concurrent(
    "with a token that Telegram does not know",
    async () => {
      const server = createRehearsalServer({ token: TOKEN });
      await server.start();
      const { code, says } = await failedStart({
        TURNROW_TOKEN: `54321:${"x".repeat(35)}`,
        TURNROW_API_ROOT: server.url,
      });
      await server.stop();
      expect(code).toBe(1);
      expect(says).toContain("does not know this bot token");
      expectPlain(says);
    },
    MOST_MILLISECONDS,
  );

  it.concurrent(
    "with something that is no token, which it does not repeat",
    async () => {
      const { code, says, out } = await failedStart({ TURNROW_TOKEN: "my-secret-thing" });
      expect(code).toBe(2);
      expect(says).toContain("TURNROW_TOKEN");
      expect(says + out).not.toContain("my-secret-thing");
      expectPlain(says);
    },
    MOST_MILLISECONDS,
  );

  it.concurrent(
    "with a port that is taken",
    async () => {
      const other = createServer();
      await new Promise<void>((done) => void other.listen(0, "127.0.0.1", done));
      const address = other.address();
      const port = typeof address === "object" && address !== null ? address.port : 0;
      const { code, says } = await failedStart({ TURNROW_PORT: String(port) });
      other.close();
      expect(code).toBe(1);
      expect(says).toContain(`Port ${port} is taken`);
      expectPlain(says);
    },
    MOST_MILLISECONDS,
  );

  it.concurrent(
    "with settings of the shop that are wrong: every mistake with its line",
    async () => {
      const data = freshData("name: X\nphone: 5\nemergencie: '112'\n");
      const { code, says } = await failedStart({ TURNROW_TOKEN: TOKEN }, data);
      expect(code).toBe(2);
      expect(says).toContain("shop.yaml:2");
      expect(says).toContain("emergencie");
      expectPlain(says);
    },
    MOST_MILLISECONDS,
  );

  it.concurrent(
    "while another one uses the data folder, which is not disturbed",
    async () => {
      const shop = await Shop.open(home);
      try {
        const program = startProgram(home, {
          TURNROW_TOKEN: TOKEN,
          TURNROW_API_ROOT: shop.server.url,
          TURNROW_DATA: shop.data,
        });
        expect(await program.ended).toBe(1);
        const says = program.stderr();
        expect(says).toContain("already uses the data folder");
        const hand = new Hand(shop, shop.stranger("Undisturbed"));
        hand.say("hello");
        await hand.press("All is safe");
        expect(await shop.stop()).toBe(0);
      } finally {
        await shop.close();
      }
    },
    MOST_MILLISECONDS,
  );
});

describe("what was damaged", () => {
  it("sets a damaged case aside and reports it; the other one lives on", async () => {
    const shop = await Shop.open(home);
    try {
      const [lost, kept] = ["Lost", "Kept"].map((name) => new Hand(shop, shop.stranger(name)));
      if (lost === undefined || kept === undefined) throw new Error("nobody");
      for (const hand of [lost, kept]) {
        hand.say("petrol ride-on mower, one click");
        await hand.press("All is safe");
      }
      await shop.delivered();
      const id = shop.caseOf(lost.person)?.id ?? "none";
      const before = shop.caseOf(kept.person)?.events ?? [];
      await shop.kill();
      const folder = join(shop.data, "cases");
      const name = fileNameFor(id);
      const text = readFileSync(join(folder, name), "utf8");
      writeFileSync(join(folder, name), text.slice(0, text.length / 2));
      await shop.start();
      expect(shop.printed()).toContain("damaged-document-set-aside");
      const aside = readdirSync(folder).find((one) => one.includes(".damaged-")) ?? "";
      expect(readFileSync(join(folder, aside), "utf8")).toBe(text.slice(0, text.length / 2));
      expect(shop.caseOf(kept.person)?.events).toEqual(before);
      kept.say("I want to talk to a person");
      await kept.sees("Nobody of the shop is reading here yet");
      // Whoever lost theirs is not left in silence: the conversation begins again.
      const greetings = () =>
        lost.transcript.filter(({ text: shown }) => shown.includes("First: is everybody safe?"));
      expect(greetings()).toHaveLength(1);
      await lost.press(/^More/);
      lost.say("it still will not start");
      await shop.server.until(() => greetings().length === 2, "the greeting again");
    } finally {
      await shop.close();
    }
  }, 60_000);

  it("refuses to start on knowledge that is broken, in one plain sentence", async () => {
    const file = join(home, "flows", "systems", "battery.yaml");
    writeFileSync(file, `${readFileSync(file, "utf8")}\nfaults: [unclosed`);
    const { code, says } = await failedStart({ TURNROW_TOKEN: TOKEN });
    expect(code).toBe(1);
    expect(says).toContain("npm run flows");
    expect(says.trim().split("\n")).toHaveLength(1);
    expectPlain(says);
  }, 60_000);
});
