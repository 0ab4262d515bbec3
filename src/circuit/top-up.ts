import type { CircuitEvidence, JointLikelihood } from "../domain/joint-likelihood.ts";
import type { Simulator } from "./attempt.ts";
import { simulateBlock } from "./bank.ts";
import { type BankRequest, blockRequest } from "./bank-build.ts";
import { addBlocks, type StandingBank } from "./standing-bank.ts";

/** With fewer machines left than this, a leader's likelihood rests on chance. */
export const ENOUGH_MACHINES = 30;
/** Leaders further behind than this, in nats, cannot be overtaken by better counting. */
const CLOSE_NATS = 4;
const MOST_LEADERS = 3;

/**
 * The leading hypotheses that too few machines stand for. A leader far ahead of the rest needs no
 * more machines: nothing would change.
 * @param logPrior one entry a hypothesis of the joint likelihood
 */
export function thinLeaders(
  joint: JointLikelihood,
  evidence: readonly CircuitEvidence[],
  logPrior: Float64Array,
): readonly string[] {
  const log = joint.logLikelihood(evidence).map((value, h) => value + (logPrior[h] ?? 0));
  const left = joint.effectiveMachines(evidence);
  const best = Math.max(...log);
  const close = joint.hypotheses
    .map((hypothesis, h) => ({ hypothesis, log: log[h] ?? 0, left: left[h] ?? 0 }))
    .filter((one) => one.log > best - CLOSE_NATS)
    .sort((a, b) => b.log - a.log)
    .slice(0, MOST_LEADERS);
  if (close.length < 2) return [];
  return close.filter((one) => one.left < ENOUGH_MACHINES).map(({ hypothesis }) => hypothesis);
}

/**
 * Gives hypotheses another helping of machines.
 * @param simulator of the bank's circuit
 * @param request as the bank was built; equal banks and requests give equal machines
 */
export function topUp(
  bank: StandingBank,
  simulator: Simulator,
  request: BankRequest,
  hypotheses: readonly string[],
): StandingBank {
  const more = hypotheses.flatMap((hypothesis) => {
    const helping = bank.blocks.get(hypothesis)?.length ?? 0;
    if (helping === 0) return [];
    return [simulateBlock(simulator, blockRequest(hypothesis, request, helping))];
  });
  return addBlocks(bank, more);
}
