import type { Gathered } from "./gather.ts";
import type { Path, Placed } from "./source-file.ts";

/** Things that can be referred to, by the name used in sentences. */
export interface Known {
  readonly name: string;
  readonly ids: ReadonlySet<string>;
  /** True where not all ids are known, because a file or item cannot be read. */
  readonly open?: boolean;
}

/** Says that an id is not known, when it is not. */
export type Report = (place: Placed<unknown>, inside: Path, id: string, known: Known) => void;

/** Everything that ids may refer to. */
export type KnownIds = Readonly<
  Record<
    | "fault"
    | "observation"
    | "check"
    | "act"
    | "remedy"
    | "part"
    | "tool"
    | "access"
    | "hazard"
    | "feature"
    | "system",
    Known
  >
>;

export function list(
  place: Placed<unknown>,
  key: string,
  ids: readonly string[] | undefined,
  known: Known,
  report: Report,
): void {
  ids?.forEach((id, index) => void report(place, [key, index], id, known));
}

export function features(
  place: Placed<unknown>,
  inside: Path,
  needs: { readonly features?: readonly string[] | undefined } | undefined,
  known: KnownIds,
  report: Report,
): void {
  needs?.features?.forEach(
    (id, index) => void report(place, [...inside, "features", index], id, known.feature),
  );
}

export function states(
  place: Placed<unknown>,
  onlyIf: Readonly<Record<string, readonly string[]>> | undefined,
  gathered: Gathered,
  report: Report,
  known: KnownIds,
  inside: Path = ["only-if"],
): void {
  for (const [id, names] of Object.entries(onlyIf ?? {})) {
    report(place, [...inside, id], id, known.observation);
    if (!known.observation.ids.has(id)) continue;
    for (const state of names) report(place, [...inside, id], state, stateSet(id, gathered));
  }
}

export function stateSet(observation: string, gathered: Gathered): Known {
  const text = gathered.observations.get(observation)?.value;
  if (text === undefined) return { name: "state", ids: new Set(), open: true };
  const ids = [...Object.keys(text?.states ?? {}), ...Object.keys(text?.bands ?? {})];
  return { name: `state of "${observation}" called`, ids: new Set(ids) };
}
