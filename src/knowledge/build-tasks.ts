import type { Act, Check, Fault, Observation, Remedy, Row } from "../domain/knowledge.ts";
import { condition, onlyIf } from "./build-observation.ts";
import type { Gathered } from "./gather.ts";
import { probabilityOf, type RowContext } from "./row.ts";
import type { ActText, CheckText, RemedyText } from "./schema-system.ts";
import type { Placed } from "./source-file.ts";

/** Burden of a check or act for an operator where none is written, per minute it takes. */
const BURDEN_PER_MINUTE = 1;

type Cautioned = Pick<Gathered, "tools" | "access">;

/** A check with the cautions of its tools and of its way of access added to its own. */
export function buildCheck(place: Placed<CheckText>, shared: Cautioned): Check {
  const text = place.value;
  return {
    id: place.id,
    title: text.title,
    yields: text.finds,
    step: text.step,
    performers: text.by,
    ask: text.ask,
    ...(text.how === undefined ? {} : { how: text.how }),
    minutes: text.minutes,
    burden: text.burden ?? text.minutes * BURDEN_PER_MINUTE,
    tools: text.tools ?? [],
    ...(text.access === undefined ? {} : { access: text.access }),
    hazards: cautions(text, shared),
    needs: condition(text.needs),
    onlyIf: onlyIf(text["only-if"]),
    after: text.after ?? [],
    atMachine: text["at-machine"] ?? text.step !== "talk",
    operatorHas: text["operator-needs"] ?? [],
    verdicts: Object.entries(text.verdicts ?? {}).map(([id, verdict]) => ({
      id,
      states: verdict.states,
      onlyIf: onlyIf(verdict["only-if"]),
      text: verdict.text,
    })),
    menu: Object.entries(text.menu ?? {}).map(([id, heading]) => ({ id, ...heading })),
    photo: text.photo,
    ...(text["always-asked"] ? { alwaysAsked: true } : {}),
    ...(text.drawing === undefined ? {} : { drawing: text.drawing }),
    source: place.basis,
  };
}

/** A remedy with all its cautions. */
export function buildRemedy(
  place: Placed<RemedyText>,
  shared: Cautioned,
  context: RowContext,
): Remedy {
  const text = place.value;
  return {
    id: place.id,
    title: text.title,
    performers: text.by,
    minutes: text.minutes,
    parts: text.parts ?? [],
    tools: text.tools ?? [],
    ...(text.access === undefined ? {} : { access: text.access }),
    hazards: cautions(text, shared),
    cures: probabilityOf(text.cures, context.frequencies),
    text: text.text,
    ...(text["in-circuit"] === undefined ? {} : { inCircuit: text["in-circuit"] }),
    source: place.basis,
  };
}

/** What is needed to know which faults an act cures or hides. */
export interface ActContext extends RowContext {
  readonly gathered: Gathered;
  readonly faults: ReadonlyMap<string, Fault>;
  readonly observations: ReadonlyMap<string, Observation>;
}

/**
 * An act with its chances per fault. Where a fault has a row for what the act reports but no
 * "hidden-by", the act hides it as often as that row says "gone" beyond what it cures.
 */
export function buildAct(place: Placed<ActText>, context: ActContext): Act {
  const text = place.value;
  const cures = new Map<string, number>();
  const masks = new Map<string, number>();
  for (const [id, fault] of context.faults) {
    const written = context.gathered.faults.get(id)?.value;
    const cure = written?.["cured-by"]?.[place.id];
    const hide = written?.["hidden-by"]?.[place.id];
    if (cure !== undefined) cures.set(id, probabilityOf(cure, context.frequencies));
    if (hide !== undefined) masks.set(id, probabilityOf(hide, context.frequencies));
    else {
      const hidden = hiddenByRow(text, fault, cures.get(id) ?? 0, context);
      if (hidden > 0) masks.set(id, hidden);
    }
  }
  return {
    id: place.id,
    title: text.title,
    performers: text.by,
    ask: text.ask,
    ...(text.how === undefined ? {} : { how: text.how }),
    minutes: text.minutes,
    burden: text.burden ?? text.minutes * BURDEN_PER_MINUTE,
    hazards: cautions(text, context.gathered),
    needs: condition(text.needs),
    onlyIf: onlyIf(text["only-if"]),
    ...refusals(text["left-to-shop"]),
    operatorHas: text["operator-needs"] ?? [],
    tools: text.tools ?? [],
    ...(text.reports === undefined ? {} : { yields: text.reports }),
    ...(text["cured-means"] === undefined ? {} : { curedState: text["cured-means"] }),
    cures,
    masks,
    makesStale: text["ask-again"] ?? [],
    ...(text["in-circuit"] === undefined ? {} : { inCircuit: text["in-circuit"] }),
    source: place.basis,
  };
}

function refusals(texts: ActText["left-to-shop"]): Pick<Act, "refusals"> {
  if (texts === undefined) return {};
  return {
    refusals: Object.entries(texts).map(([id, { when, told, because }]) => ({
      id,
      ...(when === undefined ? {} : { when: condition(when) }),
      told: onlyIf(told),
      because,
    })),
  };
}

function hiddenByRow(text: ActText, fault: Fault, cure: number, context: ActContext): number {
  const id = text.reports ?? "";
  const row: Row | undefined = fault.rows.get(id);
  const states = context.observations.get(id)?.states ?? [];
  const silent = context.gathered.observations.get(id)?.value["says-nothing"] ?? [];
  if (row === undefined) return 0;
  let gone = 0;
  let spoken = 0;
  states.forEach((state, index) => {
    if (silent.includes(state.id)) return;
    spoken += row[index] ?? 0;
    if (state.id === text["cured-means"]) gone += row[index] ?? 0;
  });
  const chance = spoken > 0 ? gone / spoken : 0;
  return cure < 1 ? Math.max(0, (chance - cure) / (1 - cure)) : 0;
}

interface WithCautions {
  readonly cautions?: readonly string[] | undefined;
  readonly tools?: readonly string[] | undefined;
  readonly access?: string | undefined;
}

/** The cautions of a task: its own, those of its tools and of its way of access. */
export function cautions(text: WithCautions, shared: Cautioned): string[] {
  const fromTools = (text.tools ?? []).flatMap((id) => shared.tools.get(id)?.value.cautions ?? []);
  const fromAccess = shared.access.get(text.access ?? "")?.value.cautions ?? [];
  return [...new Set([...(text.cautions ?? []), ...fromTools, ...fromAccess])];
}
