import { existsSync } from "node:fs";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { type BankRequest, bankHypotheses } from "../circuit/bank-build.ts";
import type { Block } from "../circuit/block.ts";
import type { CircuitNetwork } from "../domain/circuit.ts";
import { type BankJob, runBankJob } from "./bank-job.ts";

/** Builds the blocks of a bank, in the order of its hypotheses. */
export type BankBuilder = (
  network: CircuitNetwork,
  request: BankRequest,
) => Promise<readonly Block[]>;

/** Builds in this thread: for small banks and for tests. */
export const buildHere: BankBuilder = (network, request) =>
  Promise.resolve(runBankJob({ network, request, hypotheses: bankHypotheses(network, request) }));

/** The worker of the built program; there is none while the program runs from its sources. */
const WORKER = new URL("./bank-worker.js", import.meta.url);

/** More threads than this gain nothing and heat the machine. */
const MOST_WORKERS = 4;

/**
 * Builds in worker threads, one a core.
 * @param worker the compiled worker; where that file does not exist everything is built here
 */
export function createWorkerBuilder(worker: URL = WORKER): BankBuilder {
  if (!existsSync(fileURLToPath(worker))) return buildHere;
  return async (network, request) => {
    const hypotheses = bankHypotheses(network, request);
    const count = Math.min(MOST_WORKERS, availableParallelism(), hypotheses.length);
    // Every count-th hypothesis: neighbours in the list take equally long.
    const shares = Array.from({ length: count }, (_, w) =>
      hypotheses.filter((_hypothesis, i) => i % count === w),
    );
    const done = await Promise.all(
      shares.map((share) => runWorker(worker, { network, request, hypotheses: share })),
    );
    const byName = new Map(done.flat().map((block) => [block.hypothesis, block]));
    return hypotheses.flatMap((hypothesis) => byName.get(hypothesis) ?? []);
  };
}

function runWorker(file: URL, job: BankJob): Promise<readonly Block[]> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(file, { workerData: job });
    worker.once("message", resolve);
    worker.once("error", reject);
    worker.once("exit", (code) => {
      if (code !== 0) reject(new Error(`a bank worker ended with code ${code}`));
    });
  });
}
