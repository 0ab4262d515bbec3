import { parentPort, workerData } from "node:worker_threads";
import { type BankJob, runBankJob } from "./bank-job.ts";

/** Runs in a thread of its own: simulates the share it was given and hands the blocks back. */
const job: BankJob = workerData;
parentPort?.postMessage(runBankJob(job));
