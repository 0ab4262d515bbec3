import { openSimulator, simulateBlock } from "../circuit/bank.ts";
import { type BankRequest, blockRequest } from "../circuit/bank-build.ts";
import type { Block } from "../circuit/block.ts";
import type { CircuitNetwork } from "../domain/circuit.ts";

/** A share of a bank that one worker simulates. */
export interface BankJob {
  readonly network: CircuitNetwork;
  readonly request: BankRequest;
  readonly hypotheses: readonly string[];
}

/** Simulates a share of a bank, here and now. */
export function runBankJob({ network, request, hypotheses }: BankJob): Block[] {
  const simulator = openSimulator(network);
  return hypotheses.map((hypothesis) =>
    simulateBlock(simulator, blockRequest(hypothesis, request)),
  );
}
