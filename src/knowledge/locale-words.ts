import { type Knowledge, type WordKind, wordKey } from "../domain/knowledge.ts";

type Words = Map<string, string>;

/**
 * Every word of the knowledge that people may see, and that a language must therefore have in its
 * `knowledge.ftl`. By kind:
 * - `fault-<id>` its title, `fault-<id>-explain`
 * - `observation-<id>`, `state-<observation>-<state>`
 * - `act-<id>-not-<refusal>`
 * - `check-<id>` its title, `check-<id>-ask`, `check-<id>-how`, `verdict-<check>-<verdict>`,
 *   `menu-<check>-<heading>`
 * - `act-<id>` its title, `act-<id>-ask`, `act-<id>-how`
 * - `remedy-<id>` its title, `remedy-<id>-text`
 * - `part-<id>`, `part-<id>-fit-<n>` and `hazard-<id>`, `hazard-<id>-caution`,
 *   `hazard-<id>-safe-<n>`, n counting from 1
 * - `flag-<id>`, `flag-<id>-say`; `tool-`, `access-`, `system-`, `feature-`, `latent-<id>`;
 *   `rule-<id>`, the reason that a rule of urgency gives; `circuit-<id>`, a part as a drawing calls it
 * - `machine-<id>`, and `machine-<family>-family` for the menu it is offered under
 * @returns English words by key, in the order above
 */
export function expectedWords(knowledge: Knowledge): Map<string, string> {
  const words: Words = new Map();
  addFaults(knowledge, words);
  addObservations(knowledge, words);
  addTasks(knowledge, words);
  addThings(knowledge, words);
  addMachines(knowledge, words);
  return words;
}

function addFaults({ faults }: Knowledge, words: Words): void {
  for (const { id, title, explain } of faults.values()) {
    words.set(wordKey("fault", id), title);
    words.set(wordKey("fault", id, "explain"), explain);
  }
}

function addObservations({ observations }: Knowledge, words: Words): void {
  for (const { id, title, states } of observations.values()) {
    words.set(wordKey("observation", id), title);
    for (const state of states) words.set(wordKey("state", `${id}.${state.id}`), state.title);
  }
}

function addTasks({ checks, acts, remedies }: Knowledge, words: Words): void {
  for (const check of checks.values()) {
    addTask("check", check, words);
    for (const { id, text } of check.verdicts) {
      words.set(wordKey("verdict", `${check.id}.${id}`), text);
    }
    for (const { id, title } of check.menu) words.set(wordKey("menu", `${check.id}.${id}`), title);
  }
  for (const act of acts.values()) {
    addTask("act", act, words);
    for (const { id, because } of act.refusals ?? []) {
      words.set(wordKey("act", act.id, `not-${id}`), because);
    }
  }
  for (const { id, title, text } of remedies.values()) {
    words.set(wordKey("remedy", id), title);
    words.set(wordKey("remedy", id, "text"), text);
  }
}

function addTask(
  kind: WordKind,
  task: { id: string; title: string; ask: string; how?: string },
  words: Words,
): void {
  words.set(wordKey(kind, task.id), task.title);
  words.set(wordKey(kind, task.id, "ask"), task.ask);
  if (task.how !== undefined) words.set(wordKey(kind, task.id, "how"), task.how);
}

function addThings(knowledge: Knowledge, words: Words): void {
  for (const { id, title, fit } of knowledge.parts.values()) {
    words.set(wordKey("part", id), title);
    for (const [index, text] of fit.entries()) {
      words.set(wordKey("part", id, `fit-${index + 1}`), text);
    }
  }
  for (const { id, title, caution, safeState } of knowledge.hazards.values()) {
    words.set(wordKey("hazard", id), title);
    words.set(wordKey("hazard", id, "caution"), caution);
    for (const [index, text] of safeState.entries()) {
      words.set(wordKey("hazard", id, `safe-${index + 1}`), text);
    }
  }
  for (const { id, title, say } of knowledge.redFlags.values()) {
    words.set(wordKey("flag", id), title);
    words.set(wordKey("flag", id, "say"), say);
  }
  const titled = [
    ["tool", knowledge.tools],
    ["access", knowledge.accessGroups],
    ["system", knowledge.systems],
    ["feature", knowledge.features],
    ["latent", knowledge.latentGroups],
    ["rule", knowledge.urgencyRules ?? new Map()],
    ["circuit", knowledge.circuitLabels ?? new Map()],
  ] as const;
  for (const [kind, things] of titled) {
    for (const { id, title } of things.values()) words.set(wordKey(kind, id), title);
  }
}

/** A family has no title of its own: its id, written as words, is its English name. */
function addMachines({ machines }: Knowledge, words: Words): void {
  for (const { id, title, family } of machines.values()) {
    words.set(wordKey("machine", id), title);
    const name = family.replaceAll("-", " ");
    words.set(wordKey("machine", family, "family"), name.charAt(0).toUpperCase() + name.slice(1));
  }
}
