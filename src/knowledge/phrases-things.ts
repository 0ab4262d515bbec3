import type { Pattern, PatternPiece, PhraseLists, Phrases, Sign } from "../domain/phrases.ts";
import {
  type Bench,
  checkClaim,
  checkObservation,
  lists,
  patterns,
  split,
} from "./phrases-bench.ts";
import type { PhrasesFile } from "./phrases-schema.ts";

/** Words between a thing and its state: "plugs after cranking are wet". */
const BETWEEN: PatternPiece = { kind: "gap", upTo: 3 };

/** Words around the one that leads from a state to its thing: "a nest high up *in* the exhaust". */
const WITHIN: PatternPiece = { kind: "gap", upTo: 2 };

/** What people call each thing. */
export function namesOf(bench: Bench, file: PhrasesFile): PhraseLists {
  const things = Object.entries(file.things ?? {});
  return lists(bench, Object.fromEntries(things.map(([id, { names }]) => [id, names])), ["things"]);
}

/** Short answers by observation and state: the states of things, and words only for answers. */
export function answersOf(bench: Bench, file: PhrasesFile): Phrases["answers"] {
  const answers = new Map<string, Map<string, readonly Pattern[]>>();
  const add = (observation: string, list: string, states: Record<string, string | string[]>) => {
    const there = answers.get(observation) ?? new Map<string, readonly Pattern[]>();
    answers.set(observation, there);
    for (const [state, said] of lists(bench, states, [list, observation])) {
      checkClaim(bench, { observation, state }, [list, observation]);
      there.set(state, [...(there.get(state) ?? []), ...said]);
    }
  };
  for (const [id, { states }] of Object.entries(file.things ?? {})) add(id, "things", states);
  for (const [id, states] of Object.entries(file.answers ?? {})) add(id, "answers", states);
  return answers;
}

/** Each name with each state as a phrase: "the tap is shut", "a shut tap". */
export function thingSigns(bench: Bench, file: PhrasesFile): readonly Sign[] {
  const any = split(file.grammar.at ?? "");
  const at: PatternPiece | null = any.length === 0 ? null : { kind: "words", any, optional: false };
  return Object.entries(file.things ?? {}).flatMap(([observation, thing]) => {
    if (thing["only-asked"]) return [];
    const names = patterns(bench, thing.names, ["things", observation, "names"]);
    checkObservation(bench, observation, ["things", observation]);
    return Object.entries(thing.states).map(([state, say]): Sign => {
      const said = patterns(bench, say, ["things", observation, "states", state]);
      return {
        id: `${observation}=${state}`,
        say: names.flatMap((name) => said.flatMap((words) => orders(name, words, at))),
        means: [{ observation, state }],
        maybe: [],
        sure: thing.sure,
        past: false,
        givesWay: false,
        ...otherOf(observation, state, Object.keys(thing.states)),
      };
    });
  });
}

/** Of a thing with two states the one holds where the other is denied: "the tap is not open". */
function otherOf(
  observation: string,
  state: string,
  states: readonly string[],
): Pick<Sign, "denied"> {
  const [other, ...more] = states.filter((one) => one !== state);
  if (other === undefined || more.length > 0) return {};
  return { denied: { means: [{ observation, state: other }], maybe: [] } };
}

/** A clause's edge holds for a short answer alone, not for a phrase with the name before it. */
function orders(name: Pattern, words: Pattern, at: PatternPiece | null): readonly Pattern[] {
  const state = words.filter((piece) => piece.kind !== "edge");
  const first: Pattern = [...name, BETWEEN, ...state];
  const direct: Pattern = [...state, ...name];
  return at === null ? [first, direct] : [first, direct, [...state, WITHIN, at, WITHIN, ...name]];
}
