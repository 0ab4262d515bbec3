import type {
  MachineCondition,
  Observation,
  ObservationState,
  Row,
  StateCondition,
} from "../domain/knowledge.ts";
import { crankingStates, firingStates, ON_START } from "../domain/vocabulary.ts";
import { confusionRows, type ReliabilityDefaults } from "./confusion.ts";
import { distribution, presences, type RowContext, type RowPlace } from "./row.ts";
import type { ObservationText } from "./schema-system.ts";
import type { ConditionText } from "./schema-words.ts";
import { type Placed, problemAt } from "./source-file.ts";

/** What the loader needs besides the text of an observation. */
export interface ObservationContext extends RowContext {
  readonly defaults: ReliabilityDefaults;
}

/** One observation with its usual row and its confusion tables; mistakes go to the context. */
export function buildObservation(
  place: Placed<ObservationText>,
  context: ObservationContext,
): Observation {
  const text = place.value;
  const states = statesOf(place, context);
  const ids = states.map((state) => state.id);
  const usual = usualRow(place, ids, context);
  if (place.id === ON_START) checkStartStates(place, ids, context);
  const confusion = confusionRows(place, ids, context);
  const leak = text["without-cause"];
  const tellsFeatures = text["tells-features"];
  return {
    id: place.id,
    title: text.title,
    kind: text.kind,
    states,
    ...(text.unit === undefined ? {} : { unit: text.unit }),
    scalesWithVolts: text["scales-with-volts"],
    ...(text.plausible === undefined ? {} : { plausible: text.plausible }),
    ...(text["meter-error"] === undefined ? {} : { meterError: text["meter-error"] }),
    usual,
    context: text.context,
    ...(text["told-only"] ? { toldOnly: true } : {}),
    confusion: {
      operator: confusion("operator"),
      "second-hand": confusion("second-hand"),
      photo: confusion("photo"),
      technician: confusion("technician"),
    },
    combine: text.combine,
    ...(leak === undefined
      ? {}
      : { leak: distribution(leak, ids, { place, inside: ["without-cause"] }, context) }),
    onlyIf: onlyIf(text["only-if"]),
    needs: condition(text.needs),
    ...(tellsFeatures === undefined ? {} : { tellsFeatures }),
    source: place.basis,
  };
}

/** The conditions on other observations, in the order in which they are written. */
export function onlyIf(
  text: Readonly<Record<string, readonly string[]>> | undefined,
): StateCondition[] {
  return Object.entries(text ?? {}).map(([observation, anyOf]) => ({ observation, anyOf }));
}

/** What must hold of the machine, in the words of the domain. */
export function condition(text: ConditionText | undefined): MachineCondition {
  if (text === undefined) return {};
  const { "age-from": ageFrom, "age-to": ageTo, kinds, fuels, features, volts } = text;
  return {
    ...(kinds === undefined ? {} : { kinds }),
    ...(fuels === undefined ? {} : { fuels }),
    ...(features === undefined ? {} : { features }),
    ...(volts === undefined ? {} : { volts }),
    ...(ageFrom === undefined ? {} : { ageFrom }),
    ...(ageTo === undefined ? {} : { ageTo }),
  };
}

function statesOf(place: Placed<ObservationText>, context: RowContext): ObservationState[] {
  const { kind, states, bands, unit, plausible } = place.value;
  const report = (says: string) => context.problems.push(problemAt(place, says));
  if (kind === "number") {
    if (unit === undefined) report('A number needs its unit: add "unit:".');
    if (plausible === undefined)
      report('A number needs "plausible:", the smallest and largest reading that can be meant.');
    if (states !== undefined) report('A number has "bands:", not "states:".');
    checkBands(place, context);
    return Object.entries(bands ?? {}).map(([id, { title, from, to }]) => ({
      id,
      title,
      ...(from === undefined ? {} : { from }),
      ...(to === undefined ? {} : { to }),
    }));
  }
  if (bands !== undefined)
    report('Only a number (kind: number) has "bands:"; others have "states:".');
  if (states === undefined && kind !== "text") report('Which states can it have? Add "states:".');
  return Object.entries(states ?? {}).map(([id, title]) => ({ id, title }));
}

/** Bands run upwards, each beginning where the one before ends, open at both ends. */
function checkBands(place: Placed<ObservationText>, context: RowContext): void {
  const bands = Object.entries(place.value.bands ?? {});
  const last = bands.length - 1;
  if (bands.length < 2) {
    context.problems.push(problemAt(place, 'A number needs at least two "bands:".'));
  }
  bands.forEach(([id, band], index) => {
    const before = bands[index - 1]?.[1];
    const fits =
      index === 0 ? band.from === undefined : band.from !== undefined && band.from === before?.to;
    const closes = index === last ? band.to === undefined : band.to !== undefined;
    const rises = band.from === undefined || band.to === undefined || band.from < band.to;
    if (fits && closes && rises) return;
    context.problems.push(
      problemAt(
        place,
        "Bands must run upwards without gaps: the first has no from, the last no to, each " +
          "other begins where the one before ends.",
        ["bands", id],
      ),
    );
  });
}

function usualRow(
  place: Placed<ObservationText>,
  ids: readonly string[],
  context: RowContext,
): Row {
  const { usual, kind } = place.value;
  if (kind === "text" && ids.length === 0) return [];
  if (usual === undefined) {
    context.problems.push(
      problemAt(place, 'How often is each state seen when nothing is wrong with it? Add "usual:".'),
    );
    return ids.map(() => 1 / Math.max(1, ids.length));
  }
  const at: RowPlace = { place, inside: ["usual"] };
  const never = ids.map(() => context.frequencies.never);
  return kind === "list" || kind === "text"
    ? presences(usual, ids, { ...at, otherwise: never }, context)
    : distribution(usual, ids, at, context);
}

function checkStartStates(
  place: Placed<ObservationText>,
  ids: readonly string[],
  context: RowContext,
): void {
  const wanted = new Set<string>([
    ...crankingStates.filter((state) => state !== "turns"),
    ...firingStates,
  ]);
  const odd = [
    ...ids.filter((id) => !wanted.has(id)),
    ...[...wanted].filter((id) => !ids.includes(id)),
  ];
  if (odd.length > 0) {
    context.problems.push(
      problemAt(
        place,
        `The states of ${ON_START} are fixed by the program; wrong or missing: ${odd.join(", ")}.`,
        ["states"],
      ),
    );
  }
}
