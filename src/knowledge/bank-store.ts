import { mkdir, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { BankRequest } from "../circuit/bank-build.ts";
import type { Block } from "../circuit/block.ts";
import { type StandingBank, standBank } from "../circuit/standing-bank.ts";
import type { CircuitNetwork } from "../domain/circuit.ts";
import type { BankBuilder } from "./bank-builder.ts";
import { bankBytes, bankKey, packBlocks, unpackBlocks } from "./bank-file.ts";

/** Banks in memory, on disk, or built when first asked for. */
export interface BankStore {
  /** The bank if it is in memory now; asking counts as use. */
  now(network: CircuitNetwork, request: BankRequest): StandingBank | undefined;
  /** The bank, read or built if need be; asked for twice at once it is built once. */
  ready(network: CircuitNetwork, request: BankRequest): Promise<StandingBank>;
}

export interface BankStoreOptions {
  /** Where banks are kept between starts; made when missing. */
  readonly folder: string;
  readonly build: BankBuilder;
  /** Banks used least recently are forgotten beyond this; one bank is always kept. */
  readonly memoryBytes?: number;
}

/** About ten machine kinds with their temperature bands. */
const MEMORY_BYTES = 256 * 1024 * 1024;

export function openBankStore(options: BankStoreOptions): BankStore {
  const { folder, build, memoryBytes = MEMORY_BYTES } = options;
  const held = new Map<string, { readonly bank: StandingBank; readonly bytes: number }>();
  const waiting = new Map<string, Promise<StandingBank>>();

  const now: BankStore["now"] = (network, request) => {
    const key = bankKey(network, request);
    const found = held.get(key);
    if (found === undefined) return undefined;
    held.delete(key);
    held.set(key, found);
    return found.bank;
  };

  const hold = (key: string, network: CircuitNetwork, blocks: readonly Block[]): StandingBank => {
    const bank = standBank(network, blocks);
    held.set(key, { bank, bytes: bankBytes(blocks) });
    let sum = [...held.values()].reduce((bytes, one) => bytes + one.bytes, 0);
    for (const [oldest, { bytes }] of held) {
      if (sum <= memoryBytes || oldest === key) break;
      held.delete(oldest);
      sum -= bytes;
    }
    return bank;
  };

  const fetch = async (network: CircuitNetwork, request: BankRequest, key: string) => {
    const name = `${network.id}-${request.band}-`;
    const file = `${name}${key}.bank`;
    const kept = await readFile(join(folder, file)).catch(() => undefined);
    const blocks = kept === undefined ? undefined : unpackBlocks(kept);
    if (blocks !== undefined) return hold(key, network, blocks);
    const built = await build(network, request);
    await keepFile(folder, file, name, packBlocks(built));
    return hold(key, network, built);
  };

  const ready: BankStore["ready"] = (network, request) => {
    const here = now(network, request);
    if (here !== undefined) return Promise.resolve(here);
    const key = bankKey(network, request);
    const underWay = waiting.get(key);
    if (underWay !== undefined) return underWay;
    const coming = fetch(network, request, key).finally(() => waiting.delete(key));
    waiting.set(key, coming);
    return coming;
  };
  return { now, ready };
}

/**
 * Writes a bank beside its final name and moves it there, then drops what older files or models
 * left behind under the same circuit and band. A disk that cannot be written costs time at the next
 * start and nothing else.
 */
async function keepFile(folder: string, file: string, name: string, bytes: Buffer): Promise<void> {
  try {
    await mkdir(folder, { recursive: true });
    const half = join(folder, `${file}.${process.pid}.part`);
    await writeFile(half, bytes);
    await rename(half, join(folder, file));
    const old = (await readdir(folder)).filter(
      (one) => one.startsWith(name) && one !== file && !one.endsWith(".part"),
    );
    await Promise.all(old.map((one) => rm(join(folder, one), { force: true })));
  } catch {
    // Kept in memory all the same.
  }
}
