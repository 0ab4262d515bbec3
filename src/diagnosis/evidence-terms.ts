import type { StateCondition } from "../domain/knowledge.ts";
import { UnknownId } from "../domain/result.ts";
import type { Arranged } from "./arrange.ts";
import {
  type EvidenceGroup,
  type Model,
  NOTHING_SEEN,
  type Seen,
  type SharedLikelihood,
} from "./model.ts";
import { toldUnasked } from "./unasked.ts";

/** What one group says at one stretch of time. */
export interface Term {
  readonly layer: number;
  readonly group: number;
  readonly seen: Seen;
  readonly weighed: SharedLikelihood;
  /** P(these reports) by the prior over the known hypotheses; more where readings contradict. */
  readonly predicted: number;
  /** P(these reports) if every state were equally likely. */
  readonly uniform: number;
}

/** Every group that was spoken of, weighed for every known hypothesis. */
export function termsOf(model: Model, arranged: Arranged): readonly Term[] {
  return arranged.layers.flatMap((layer, index) =>
    [...layer.groups].map(([group, seen]) =>
      weighTerm(model, { arranged, layer: index, group }, seen),
    ),
  );
}

interface At {
  readonly arranged: Arranged;
  readonly layer: number;
  readonly group: number;
}

/** Weighs reports of one group; `seen` may hold more than the layer itself does. */
export function weighTerm(model: Model, at: At, seen: Seen): Term {
  const group = groupAt(model, at.group);
  const gated = [...seen.keys()].filter((id) => conditionsOf(model, id).length > 0);
  const measured = at.arranged.layers[at.layer]?.measured;
  const asked =
    gated.length === 0 ? group.weigh(seen, measured) : weighGated(model, at, { seen, gated });
  const predicted = marginal(model, asked);
  const times = at.arranged.layers[at.layer]?.unasked.get(at.group) ?? 1;
  const weighed = toldUnasked(asked, predicted, times);
  return {
    layer: at.layer,
    group: at.group,
    seen,
    weighed,
    predicted: predicted * (asked.elseLift ?? 1),
    uniform: isCircumstance(model, seen) ? predicted : uniformOf(model, seen),
  };
}

/**
 * Circumstances (storage, weather, work done) were there before the fault, known or not: that a
 * machine was tipped makes "something else" no likelier than the known faults together.
 */
function isCircumstance(model: Model, seen: Seen): boolean {
  return [...seen.keys()].every((id) => model.observations.get(id)?.source.context === true);
}

function groupAt(model: Model, index: number): EvidenceGroup {
  const group = model.groups[index];
  if (group === undefined) throw new UnknownId("group", String(index));
  return group;
}

function conditionsOf(model: Model, observation: string): readonly StateCondition[] {
  return model.observations.get(observation)?.source.onlyIf ?? [];
}

/** P(reports) over the known hypotheses, by their prior. */
export function marginal(model: Model, weighed: SharedLikelihood): number {
  const { rowOf, like } = weighed;
  const { prior } = model.hypotheses;
  let sum = 0;
  let mass = 0;
  for (let h = 0; h < rowOf.length; h++) {
    sum += (prior[h] ?? 0) * (like[rowOf[h] ?? 0] ?? 0);
    mass += prior[h] ?? 0;
  }
  return sum / mass;
}

function uniformOf(model: Model, seen: Seen): number {
  let product = 1;
  for (const [id, likelihood] of seen) {
    if (model.observations.get(id)?.isList === true) {
      // Alike over the members: each is present as often as one of them in so many.
      const present = 2 / likelihood.length;
      for (let m = 0; m < likelihood.length; m += 2) {
        product *= (1 - present) * (likelihood[m] ?? 1) + present * (likelihood[m + 1] ?? 1);
      }
    } else {
      product *= likelihood.reduce((sum, value) => sum + value, 0) / likelihood.length;
    }
  }
  return product;
}

/**
 * Observations that mean something only in some states of others: where the condition does not
 * hold under a hypothesis, the report is as likely as it is on average where it does, so that it
 * speaks neither for nor against.
 */
function weighGated(
  model: Model,
  at: At,
  split: { readonly seen: Seen; readonly gated: readonly string[] },
): SharedLikelihood {
  const group = groupAt(model, at.group);
  const measured = at.arranged.layers[at.layer]?.measured;
  const all = group.weigh(split.seen, measured);
  const openSeen = new Map([...split.seen].filter(([id]) => !split.gated.includes(id)));
  const open = group.weigh(openSeen, measured);
  const gate = new Float64Array(model.hypotheses.count - 1).fill(1);
  const done = new Set<string>();
  for (const id of split.gated) {
    for (const condition of conditionsOf(model, id)) {
      const key = `${condition.observation} ${condition.anyOf.join(" ")}`;
      if (done.has(key)) continue;
      done.add(key);
      const inGroup = group.observations.includes(condition.observation) ? openSeen : undefined;
      narrow(gate, model, { condition, seen: inGroup ?? seenBefore(model, at, condition) });
    }
  }
  const { elseLift = 1 } = all;
  return { ...blend(model, { gate, all, open }), elseLift };
}

/** Multiplies each hypothesis's gate by P(condition holds | hypothesis, what was seen of it). */
export function narrow(
  gate: Float64Array,
  model: Model,
  by: { readonly condition: StateCondition; readonly seen: Seen },
): void {
  const { observation, anyOf } = by.condition;
  const compiled = model.observations.get(observation);
  if (compiled === undefined) throw new UnknownId("observation", observation);
  const { rows, rowOf, width } = groupAt(model, compiled.group).predict(by.seen, observation);
  const held = new Float64Array(rows.length / width);
  for (const state of anyOf) {
    const s = compiled.stateIndex.get(state);
    if (s === undefined) throw new UnknownId("state", `${observation} ${state}`);
    for (let r = 0; r < held.length; r++) held[r] = (held[r] ?? 0) + (rows[r * width + s] ?? 0);
  }
  for (let h = 0; h < gate.length; h++) {
    gate[h] = (gate[h] ?? 0) * Math.min(1, held[rowOf[h] ?? 0] ?? 0);
  }
}

function seenBefore(model: Model, at: At, condition: StateCondition): Seen {
  const group = model.observations.get(condition.observation)?.group ?? -1;
  for (let layer = at.layer; layer >= 0; layer--) {
    const seen = at.arranged.layers[layer]?.groups.get(group);
    if (seen !== undefined) return seen;
  }
  return NOTHING_SEEN;
}

interface Blend {
  readonly gate: Float64Array;
  readonly all: SharedLikelihood;
  readonly open: SharedLikelihood;
}

function blend(model: Model, { gate, all, open }: Blend): SharedLikelihood {
  const { prior } = model.hypotheses;
  let meant = 0;
  let base = 0;
  for (let h = 0; h < gate.length; h++) {
    const weight = (prior[h] ?? 0) * (gate[h] ?? 0);
    meant += weight * (all.like[all.rowOf[h] ?? 0] ?? 0);
    base += weight * (open.like[open.rowOf[h] ?? 0] ?? 0);
  }
  const neutral = base > 0 ? meant / base : 1;
  const like = new Float64Array(gate.length);
  for (let h = 0; h < gate.length; h++) {
    const g = gate[h] ?? 0;
    const whole = all.like[all.rowOf[h] ?? 0] ?? 0;
    like[h] = g * whole + (1 - g) * neutral * (open.like[open.rowOf[h] ?? 0] ?? 0);
  }
  return { rowOf: Int32Array.from(like.keys()), like };
}
