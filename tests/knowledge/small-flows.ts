import type { Knowledge } from "../../src/domain/knowledge.ts";
import type { Problem } from "../../src/domain/result.ts";
import { machineKinds } from "../../src/domain/vocabulary.ts";
import type { FlowText } from "../../src/knowledge/flow-texts.ts";
import { readKnowledge } from "../../src/knowledge/load.ts";

const machine = `title: A machine
family: mowers
offer: 1
source: invented for tests
synonyms: [a machine]
fuels: { petrol: 0.75, diesel: 0.25 }
volts: { 12: 1 }
systems: all
features: { lights: always, choke: 0.5 }
`;

const shared = `source: invented for tests
words:
  frequency: { never: 0.01, rarely: 0.05, sometimes: 0.2, often: 0.5, usually: 0.75, nearly-always: 0.95 }
  reliability: { operator: 0.9, second-hand: 0.7, photo: 0.8, technician: 0.98 }
  named-falsely: 0.02
rates:
  travel-minutes: 60
  second-trip-minutes: 90
  collect-minutes: 120
  operator-minute: 0.5
  standstill-per-hour: { low: 2, normal: 8, high: 30 }
  call-for-help-minutes: 180
  something-else: 0.05
  nothing-wrong: 0.03
  repeats-itself: 0.9
  pair-cut-off: 0.001
  share-strength: 30
parts:
  battery: { title: Battery, price: 40 to 250, carry-minutes: 4 }
  pump: { title: Pump, price: 10 to 20, carry-minutes: 1 }
tools:
  meter: { title: Meter }
  charger: { title: Charger, cautions: [gas] }
access:
  cover: { title: Cover open, minutes: 2, cautions: [safe-stop] }
  plug-out: { title: Plug out, minutes: 5 }
hazards:
  safe-stop: { title: Made safe, caution: "Handbrake on, key out.", needed-for: { steps: inspect } }
  seated: { title: From the seat, caution: "Start from the seat. Never bridge the starter.", needed-for: { steps: try } }
  gas: { title: Gas, caution: No flame near it. }
red-flags:
  smoke: { title: Smoke, say: Keep away. }
features: { lights: Lights, choke: Choke }
negations: [never, not, no, without]
forbidden:
  readings: { who: operator, says: No readings by operators but volts at rest., readings: { allowed: [rest-volts] } }
  plugs: { who: operator, says: No plugs out by operators., access: [plug-out] }
  bridging: { who: anyone, says: Nobody bridges a starter., phrases: [bridge the] }
`;

const system = `title: Starting
source: invented for tests

observations:
  on-start:
    title: What the key does
    states:
      { nothing: N, one-click: O, fast-clicks: F, slow: S, turns-then-stops: T, uneven: U, kicks-back: K, spins-alone: A, grinds: G, keeps-cranking: C, turns-no-fire: X, fires-then-dies: D, runs-only-while-held: H, starts: Y }
    usual: { starts: 0.9, slow: 0.06, turns-no-fire: 0.04 }
  engine-turns:
    title: Does it go round
    states: { yes: "Yes", no: "No" }
    usual: { yes: 0.97, no: 0.03 }
    follows:
      on-start:
        { nothing: { no: 1 }, one-click: { no: 1 }, fast-clicks: { no: 1 }, slow: { yes: 1 }, turns-then-stops: { no: 1 }, uneven: { yes: 1 }, kicks-back: { no: 1 }, spins-alone: { no: 1 }, grinds: { no: 1 }, keeps-cranking: { yes: 1 }, turns-no-fire: { yes: 1 }, fires-then-dies: { yes: 1 }, runs-only-while-held: { yes: 1 }, starts: { yes: 1 } }
  lamps:
    title: Lamps
    states: { dead: Dead, dim: Dim, bright: Bright }
    usual: { bright: usually, dim: sometimes, dead: rarely }
    reported-by: { operator: { dim: { dim: 0.6, bright: 0.35 }, otherwise: 0.9 } }
    needs: { features: lights }
  rest-volts:
    title: Volts at rest
    kind: number
    unit: V
    scales-with-volts: true
    plausible: 0 to 15
    bands: { low: { title: Under 12, to: 12 }, good: { title: Over 12, from: 12 } }
    usual: { good: 0.9, low: 0.1 }
  crank-volts:
    title: Volts on START
    kind: number
    unit: V
    plausible: 0 to 15
    bands: { low: { title: Under 9, to: 9 }, good: { title: Over 9, from: 9 } }
    usual: { good: 0.9, low: 0.1 }
  season:
    title: Season
    states: { summer: Summer, winter: Winter }
    usual: { summer: 0.75, winter: 0.25 }
    context: true
  events:
    title: What happened
    kind: list
    states: { washed: Washed, knocked: Knocked }
    usual: { washed: 0.1, knocked: 0.2 }
    context: true
  tried:
    title: After charging
    states: { not-tried: Not tried, gone: Gone, same: Same }
    usual: { not-tried: 0.5, gone: 0.1, same: 0.4 }
    says-nothing: not-tried

checks:
  hear: { title: Hear, finds: on-start, step: talk, by: operator, ask: What happens?, minutes: 1, menu: { a: { title: A, states: [nothing, one-click, fast-clicks, slow, turns-then-stops, uneven, kicks-back] }, b: { title: B, states: [spins-alone, grinds, keeps-cranking, turns-no-fire, fires-then-dies, runs-only-while-held, starts] } } }
  round: { title: Round, finds: engine-turns, step: talk, by: operator, ask: Does it go round?, minutes: 1 }
  see-lamps: { title: Lamps, finds: lamps, step: inspect, by: [operator, technician], ask: How bright?, minutes: 2, cautions: safe-stop }
  read-rest: { title: Rest, finds: rest-volts, step: measure, by: [operator, technician], ask: Volts?, minutes: 3, tools: meter, access: cover }
  read-crank: { title: Crank, finds: crank-volts, step: measure, by: technician, ask: Volts?, minutes: 3, tools: meter, cautions: gas }
  ask-season: { title: Season, finds: season, step: talk, by: operator, ask: Which season?, minutes: 1 }
  ask-events: { title: Events, finds: events, step: talk, by: operator, ask: What happened?, minutes: 1 }

acts:
  charge:
    title: Charging
    by: operator
    ask: Charge it and try. What happens?
    minutes: 20
    cautions: [gas, seated]
    tools: charger
    reports: tried
    cured-means: gone
    ask-again: [on-start, rest-volts]

faults:
  flat:
    title: Battery flat
    group: battery
    share: 10
    blocks: engine-drag
    cranking: { slow: often, nothing: often }
    more-likely-when: { season: { winter: 3 }, events: { washed: 2 } }
    shows: { lamps: { dim: often, dead: often }, rest-volts: { low: nearly-always }, crank-volts: { low: 1 } }
    cured-by: { charge: 0.8 }
    remedies: charge-it
    explain: The battery is empty.
    not-yet: { pump: read-rest }
  worn:
    title: Battery worn
    group: battery
    share: 5
    blocks: engine-drag
    like: flat
    shows: { rest-volts: { good: nearly-always } }
    cured-by: { charge: 0.1 }
    hidden-by: { charge: 0.2 }
    remedies: new-battery
    explain: The battery is worn.
  empty-tank:
    title: Tank empty
    group: fuel
    share: 3
    needs: { fuels: petrol, features: choke }
    blocks: combustion
    firing: { turns-no-fire: nearly-always }
    more-likely:
      - { when: { kinds: zero-turn, age-from: 5 }, times: 2, because: It is thirsty. }
    remedies: new-pump
    explain: No fuel.

remedies:
  charge-it: { title: Charge, by: technician, minutes: 20, tools: charger, cures: usually, text: Charge it. }
  new-battery: { title: New battery, by: technician, minutes: 20, parts: battery, cautions: gas, cures: 0.9, text: Fit it. }
  new-pump: { title: New pump, by: technician, minutes: 30, parts: pump, cautions: safe-stop, cures: nearly-always, text: Fit it. }
`;

/** A small, complete and correct set of files. */
export const smallFlows: readonly FlowText[] = [
  ...machineKinds.map((kind) => ({ path: `machines/${kind}.yaml`, text: machine })),
  { path: "shared/all.yaml", text: shared },
  { path: "systems/starting.yaml", text: system },
];

/** One replacement in the text of one file. */
export interface Planted {
  readonly path?: string;
  readonly from: string;
  readonly to: string;
}

/** The small files with replacements made; each `from` must be there. */
export function planted(...changes: readonly Planted[]): FlowText[] {
  return changes.reduce<FlowText[]>(
    (texts, { path = "systems/starting.yaml", from, to }) =>
      texts.map((file) => {
        if (file.path !== path) return file;
        if (!file.text.includes(from)) throw new Error(`"${from}" is not in ${path}`);
        return { path, text: file.text.replace(from, () => to) };
      }),
    [...smallFlows],
  );
}

/** Every problem of the small files with replacements made. */
export function problemsOf(...changes: readonly Planted[]): readonly Problem[] {
  const read = readKnowledge(planted(...changes));
  return read.ok ? [] : read.problems;
}

/** The knowledge of the small files with replacements made; they must be without mistakes. */
export function knowledgeOf(...changes: readonly Planted[]): Knowledge {
  const read = readKnowledge(planted(...changes));
  if (!read.ok) throw new Error(JSON.stringify(read.problems, null, 1));
  return read.value;
}

/** The line (from 1) on which a text first stands in the changed file. */
export function lineOfText(text: string, ...changes: readonly Planted[]): number {
  const file = planted(...changes).find(({ text: content }) => content.includes(text));
  return (file?.text.slice(0, file.text.indexOf(text)).split("\n") ?? []).length;
}
