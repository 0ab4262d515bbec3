import { firingStates, ON_START } from "../domain/vocabulary.ts";
import { halves, insideOf, type JointContext, weighRows } from "./joint-context.ts";
import { type JointEvidence, TURNS } from "./joint-evidence.ts";
import { numberScale } from "./joint-numbers.ts";
import { startLikelihood } from "./joint-start.ts";
import { type Measurements, NOTHING_WRONG, type Passage, type Passed, type Seen } from "./model.ts";

/**
 * What was seen before and after an act that changes the circuit, weighed on the same simulated
 * machines: a battery that showed 12.3 V before the clamps were cleaned still has that charge when
 * it cranks slowly afterwards. The act either changed the circuit as simulated or, done badly, left
 * everything as it was.
 */
export function passThrough(context: JointContext, passage: Passage): Passed {
  const { entries, firing } = context;
  const { act, doneWell, measured } = passage;
  const before = insideOf(context, passage.before);
  const after = insideOf(context, passage.after);
  const both = merge(before, after);
  const sides = halves(context, before, measured);
  const joined = (turning: boolean): Sides => {
    const said = crankingSaid(context, after, turning);
    const items = context.translator.translateAfter(
      act,
      { seen: after, measured: passage.measuredAfter },
      said,
    );
    return { stays: sides.stays && append(sides.stays, items), turns: append(sides.turns, items) };
  };
  const firedBefore = startLikelihood(firing, before);
  const firesAfter = startLikelihood(firing, after);
  const found = summed(context, sides, firedBefore);
  const still = summed(context, joined(false), firedBefore);
  const cranks = summed(context, joined(true), firedBefore);
  const undone = summed(
    context,
    halves(context, both, mergeMeasured(measured, passage.measuredAfter)),
    startLikelihood(firing, both),
  );
  const beyond = new Map([...passage.after].filter(([id]) => !context.joint.observations.has(id)));
  const rest = weighRows(context.rows, beyond, entries.length);
  const inside = Uint8Array.from(entries, (entry, h) => (entry < 0 ? 0 : insideBits(context, h)));
  const scale = numberScale(context, { seen: after, measured: passage.measuredAfter, after: act });
  const share = (h: number, part: number) =>
    (found[h] ?? 0) > 0 ? (scale * part) / (found[h] ?? 1) : 0;
  return {
    known: inside.map((bits, h) => Number(bits > 0 && (found[h] ?? 0) > 0)),
    inside,
    kept: found.map((_, h) =>
      share(h, (rest[h] ?? 1) * (doneWell * (still[h] ?? 0) + (1 - doneWell) * (undone[h] ?? 0))),
    ),
    gone: found.map((_, h) =>
      share(h, (rest[NOTHING_WRONG] ?? 1) * doneWell * (cranks[h] ?? 0) * (firesAfter[h] ?? 1)),
    ),
  };
}

/** Evidence split by whether the engine turned as found. */
type Sides = ReturnType<typeof halves>;

/** P(evidence | hypothesis) of both sides together; 0 for hypotheses beyond the circuit. */
function summed(context: JointContext, { stays, turns }: Sides, fires: Float64Array): Float64Array {
  const stay = stays === null ? null : context.likelihood(stays);
  const turn = context.likelihood(turns);
  return Float64Array.from(context.entries, (entry, h) =>
    entry < 0 ? 0 : (stay?.[entry] ?? 0) + (turn[entry] ?? 0) * (fires[h] ?? 1),
  );
}

function append(before: JointEvidence, after: JointEvidence): JointEvidence {
  return { items: [...before.items, ...after.items], key: `${before.key}|${after.key}` };
}

/** What is said of cranking after the act, apart for engines that then turn and that do not. */
function crankingSaid(
  { knowledge, joint }: JointContext,
  after: Seen,
  turning: boolean,
): Readonly<Record<string, number>> {
  if (turning) return { [TURNS]: 1 };
  const reported = after.get(ON_START);
  const states = knowledge.observations.get(ON_START)?.states ?? [];
  const said = states.flatMap((state, s) =>
    firingStates.some((firing) => firing === state.id) ? [] : [[state.id, reported?.[s] ?? 1]],
  );
  const all = joint.statesOf(ON_START).map((state) => [state, 1]);
  return { ...Object.fromEntries(reported === undefined ? all : said), [TURNS]: 0 };
}

/** Two stretches of time as one: nothing changed in between. */
function merge(before: Seen, after: Seen): Seen {
  const both = new Map<string, Float64Array>(before);
  for (const [id, likelihood] of after) {
    const earlier = both.get(id);
    both.set(
      id,
      earlier === undefined ? likelihood : likelihood.map((v, s) => v * (earlier[s] ?? 1)),
    );
  }
  return both;
}

function mergeMeasured(before: Measurements, after: Measurements): Measurements {
  const both = new Map(before);
  for (const [id, readings] of after) both.set(id, [...(both.get(id) ?? []), ...readings]);
  return both;
}

/** Bit 1: the circuit simulates the first fault of the hypothesis; bit 2: the second. */
function insideBits({ joint, hypotheses }: JointContext, h: number): number {
  const { first, second, faults } = hypotheses;
  const bit = (f: number, value: number) =>
    joint.hypotheses.includes(faults[f] ?? "") ? value : 0;
  return bit(first[h] ?? -1, 1) | bit(second[h] ?? -1, 2);
}
