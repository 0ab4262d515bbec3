import { rmSync } from "node:fs";
import { join } from "node:path";
import { createLog, type Log } from "../chat/log.ts";
import { type Config, readConfig } from "../config.ts";
import type { ShopSettings } from "../domain/settings.ts";
import type { StockedPart } from "../domain/stock.ts";
import { problemLines } from "./case-files.ts";
import type { CommandIo } from "./io.ts";
import { openRehearsal, REHEARSAL_TOKEN } from "./rehearsal.ts";
import { loadScenario } from "./scenario.ts";
import { seatMembers } from "./seat-members.ts";
import { exampleFolder, exampleSettings, loadPartFile, loadShopSettings } from "./shop-settings.ts";
import { startTurnrow, type Turnrow } from "./turnrow.ts";
import { brokenFlows, openWorkshop, type Workshop, warmUp } from "./workshop.ts";

/** Waits for Ctrl-C or a supervisor's polite signal. */
function untilSignalled(): Promise<void> {
  return new Promise((resolve) => {
    process.once("SIGINT", () => resolve());
    process.once("SIGTERM", () => resolve());
  });
}

async function keepRunning(turnrow: Turnrow, io: CommandIo): Promise<number> {
  let code = 0;
  await Promise.race([
    untilSignalled(),
    turnrow.running.catch((error: unknown) => {
      io.stderr(
        `${error instanceof Error ? error.message : "It stopped for an unknown reason."}\n`,
      );
      code = 1;
    }),
  ]);
  await turnrow.stop();
  return code;
}

interface Ground {
  readonly config: Config;
  readonly settings: ShopSettings;
  readonly workshop: Workshop;
  readonly stock: readonly StockedPart[];
  readonly log: Log;
  readonly io: CommandIo;
}

/** Serves Telegram. */
async function serve(token: string, ground: Ground): Promise<number> {
  const { config, settings, workshop, stock, log, io } = ground;
  const { dataFolder, apiRoot, simulate } = config;
  const base = { root: io.root, dataFolder, settings, workshop, stock, log, simulate };
  const root = apiRoot === undefined ? {} : { apiRoot };
  const turnrow = await startTurnrow({ ...base, token, ...root });
  if (turnrow.ownerLink !== null) {
    io.stdout(`Open this link once to become the shop's owner:\n  ${turnrow.ownerLink}\n`);
  }
  warmUp(workshop);
  return keepRunning(turnrow, io);
}

/** Opens the room. Its chats live in memory, so its cases begin anew each time. */
async function rehearse(ground: Ground): Promise<number> {
  const { config, settings, workshop, stock, log, io } = ground;
  const dataFolder = join(config.dataFolder, "rehearsal");
  const scenario = loadScenario(io.root);
  const { languages } = settings;
  const server = await openRehearsal(scenario, { port: config.port, languages });
  rmSync(dataFolder, { recursive: true, force: true });
  const { simulate } = config;
  const base = { root: io.root, dataFolder, settings, workshop, stock, log, simulate };
  const turnrow = await startTurnrow({ ...base, token: REHEARSAL_TOKEN, apiRoot: server.url });
  await seatMembers(server, scenario, turnrow);
  io.stdout(
    `The rehearsal room is open: ${server.url}/\nNothing leaves this computer. Ctrl-C ends it.\n`,
  );
  warmUp(workshop);
  const code = await keepRunning(turnrow, io);
  await server.stop();
  return code;
}

/** `start`: with a bot token it serves Telegram; with none it opens the rehearsal room. */
export async function startCommand(_args: readonly string[], io: CommandIo): Promise<number> {
  const config = readConfig(process.env, io.root);
  if (!config.ok) {
    io.stderr(problemLines(config.problems));
    return 2;
  }
  const { token, dataFolder } = config.value;
  const settings =
    token === undefined ? exampleSettings(io.root) : loadShopSettings(io.root, dataFolder);
  if (!settings.ok) {
    io.stderr(problemLines(settings.problems));
    return 2;
  }
  const workshop = await openWorkshop(io.root, settings.value.languages);
  if (!workshop.ok) {
    io.stderr(brokenFlows(workshop.problems));
    return 1;
  }
  const folder = token === undefined ? exampleFolder(io.root) : dataFolder;
  const stock = loadPartFile(
    settings.value,
    folder,
    new Set(workshop.value.knowledge.parts.keys()),
  );
  if (!stock.ok) {
    io.stderr(problemLines(stock.problems));
    return 2;
  }
  const secrets = token === undefined ? [] : [token];
  const log = createLog((line) => io.stderr(`${line}\n`), Date.now, secrets);
  const ground = {
    ...{ config: config.value, settings: settings.value },
    ...{ workshop: workshop.value, stock: stock.value, log, io },
  };
  try {
    return token === undefined ? await rehearse(ground) : await serve(token, ground);
  } catch (error) {
    io.stderr(`${error instanceof Error ? error.message : "It could not be started."}\n`);
    return 1;
  }
}
