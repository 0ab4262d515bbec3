import type { Asking } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import { type Choice, choicesFor, DONT_KNOW, LEADS_TO, SKIP } from "../talk/choices.ts";

/** What an operator would tell if they were asked, all of it plainly. */
export interface ToldByOperator {
  readonly kind: string;
  readonly fuel: string;
  readonly opening: string;
  /** The state, or the reading with its unit; empty where they do not know. */
  readonly told: (observation: string) => string;
  /** What they tell when asked what happened; empty: nothing. */
  readonly story: string;
  /** What comes of an act; empty: no change. */
  readonly came: (act: string) => string;
}

/** The list of families holds all kinds that are not among the commonest. */
function leadsToKind(value: string, kind: string, knowledge: Knowledge): boolean {
  const family = [...knowledge.machines.values()].find((one) => one.id === kind)?.family;
  return value === `${LEADS_TO}families` || value === `${LEADS_TO}${family}`;
}

interface Wish {
  readonly asking: Asking;
  readonly wanted: string;
}

/** The answer on this screen that says what is wanted, or leads to it. */
function towards({ asking, wanted }: Wish, choices: readonly Choice[], knowledge: Knowledge) {
  const direct = choices.find(({ state, value }) => state === wanted || value === wanted);
  if (direct !== undefined) return direct;
  if (asking.about === "kind") {
    return choices.find(({ value }) => leadsToKind(value, wanted, knowledge));
  }
  if (asking.about !== "check") return undefined;
  const check = knowledge.checks.get(asking.check);
  const head = check?.menu.find(({ states }) => states.includes(wanted));
  const states = knowledge.observations.get(check?.yields ?? "")?.states ?? [];
  if (head !== undefined) return choices.find(({ value }) => value === `${LEADS_TO}${head.id}`);
  return states.some(({ id }) => id === wanted)
    ? choices.find(({ value }) => value.startsWith(`${LEADS_TO}page:`))
    : undefined;
}

/** What this operator would say to the question. */
function wish(asking: Asking, call: ToldByOperator, knowledge: Knowledge): string {
  switch (asking.about) {
    case "safety":
      return "clear";
    case "check":
      return call.told(knowledge.checks.get(asking.check)?.yields ?? "");
    case "act": {
      if (asking.stage === "offer") return "done";
      const told = call.told(knowledge.acts.get(asking.act)?.yields ?? "");
      return told || call.came(asking.act) || "no-change";
    }
    case "kind":
      return call.kind;
    case "fuel":
      return call.fuel;
    case "equipment":
      return "all";
    case "trip":
      return "looked";
    case "urgency":
      return "normal";
    default:
      return "";
  }
}

/** A reading is typed, everything else pressed. */
export type Reply = { readonly type: string } | { readonly press: string };

/**
 * How somebody who knows exactly what is told answers a question.
 * @param mayType false where their reading was typed already, and not understood
 */
export function replyTo(
  asking: Asking,
  call: ToldByOperator,
  {
    state,
    knowledge,
    mayType,
  }: {
    readonly state: CaseState;
    readonly knowledge: Knowledge;
    readonly mayType: boolean;
  },
): Reply {
  const choices = choicesFor(asking, state, knowledge);
  const wanted = wish(asking, call, knowledge);
  if (mayType && asking.about === "check" && /^\d/.test(wanted)) return { type: wanted };
  if (asking.about === "story" && call.story !== "") return { type: call.story };
  const pass = choices.find(({ value }) => value === DONT_KNOW || value === SKIP);
  const chosen = towards({ asking, wanted }, choices, knowledge) ?? pass ?? choices[0];
  return { press: chosen?.value ?? "" };
}
