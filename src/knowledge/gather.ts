import type { z } from "zod";
import type { Problem } from "../domain/result.ts";
import type { CauseGroup } from "../domain/vocabulary.ts";
import { type Salvaged, salvage } from "./salvage.ts";
import {
  type AccessText,
  type ForbiddenText,
  type HazardText,
  MachineFile,
  type PartText,
  type RatesText,
  type RedFlagText,
  SharedFile,
  type ToolText,
  type WordsText,
} from "./schema-shared.ts";
import {
  type ActText,
  type CheckText,
  type FaultText,
  type LatentText,
  type ObservationText,
  type RemedyText,
  SystemFile,
} from "./schema-system.ts";
import { type Placed, problemAt, problemIn, type SourceFile } from "./source-file.ts";

type Section<T> = Map<string, Placed<T>>;

/** Everything that stands in the files, by id and with its place, before ids are resolved. */
export interface Gathered {
  readonly faults: Section<FaultText>;
  readonly observations: Section<ObservationText>;
  readonly checks: Section<CheckText>;
  readonly acts: Section<ActText>;
  readonly remedies: Section<RemedyText>;
  readonly latent: Section<LatentText>;
  readonly parts: Section<PartText>;
  readonly tools: Section<z.infer<typeof ToolText>>;
  readonly access: Section<z.infer<typeof AccessText>>;
  readonly hazards: Section<HazardText>;
  readonly redFlags: Section<z.infer<typeof RedFlagText>>;
  readonly features: Section<string>;
  /** What a photo can show: groups of causes. */
  readonly photos: Section<readonly CauseGroup[]>;
  /** The reasons of the rules of urgency. */
  readonly urgency: Section<{ readonly because: string }>;
  readonly forbidden: Section<ForbiddenText>;
  readonly negations: Section<readonly string[]>;
  readonly rates: Section<z.infer<typeof RatesText>>;
  readonly words: Section<z.infer<typeof WordsText>>;
  readonly systems: Section<string>;
  readonly machines: Section<MachineFile>;
  /** Ids in files or items that cannot be read: they exist, but nothing is known of them. */
  readonly broken: Set<string>;
}

/**
 * Checks each file's shape and sorts its sections together; an id that stands twice is a problem.
 * @param broken ids in files that could not be read at all
 */
export function gather(
  files: readonly SourceFile[],
  broken: readonly string[],
): { gathered: Gathered; problems: Problem[] } {
  const gathered: Gathered = {
    faults: new Map(),
    observations: new Map(),
    checks: new Map(),
    acts: new Map(),
    remedies: new Map(),
    latent: new Map(),
    parts: new Map(),
    tools: new Map(),
    access: new Map(),
    hazards: new Map(),
    redFlags: new Map(),
    features: new Map(),
    urgency: new Map(),
    photos: new Map(),
    forbidden: new Map(),
    negations: new Map(),
    rates: new Map(),
    words: new Map(),
    systems: new Map(),
    machines: new Map(),
    broken: new Set(broken),
  };
  const problems = files.flatMap((source) => gatherFile(source, gathered));
  return { gathered, problems };
}

function gatherFile(source: SourceFile, into: Gathered): Problem[] {
  if (source.folder === "machines") {
    return use(salvage(source, MachineFile), source, into, (value) => {
      const place = { id: source.id, value, source, path: [], basis: value.source };
      into.machines.set(source.id, place);
      return [];
    });
  }
  if (source.folder === "shared") {
    const shared = salvage(source, SharedFile);
    return use(shared, source, into, (value) => gatherShared(source, value, into));
  }
  return use(salvage(source, SystemFile), source, into, (value) => {
    const place = { id: source.id, value: value.title, source, path: [], basis: "-" };
    if (source.folder === "systems") into.systems.set(source.id, place);
    return gatherSystem(source, value, into);
  });
}

/** Takes over what is left of a file, and remembers what had to be set aside. */
function use<T>(
  { value, problems, broken }: Salvaged<T>,
  source: SourceFile,
  into: Gathered,
  take: (value: T) => Problem[],
): Problem[] {
  for (const id of value === undefined ? [source.id, ...broken] : broken) into.broken.add(id);
  return [...problems, ...(value === undefined ? [] : take(value))];
}

function gatherSystem(source: SourceFile, file: SystemFile, into: Gathered): Problem[] {
  const basis = file.source ?? "";
  return [
    ...collect(into.faults, { source, key: "faults", items: file.faults, basis }),
    ...collect(into.observations, { source, key: "observations", items: file.observations, basis }),
    ...collect(into.checks, { source, key: "checks", items: file.checks, basis }),
    ...collect(into.acts, { source, key: "acts", items: file.acts, basis }),
    ...collect(into.remedies, { source, key: "remedies", items: file.remedies, basis }),
    ...collect(into.latent, { source, key: "latent", items: file.latent, basis }),
  ];
}

function gatherShared(source: SourceFile, file: SharedFile, into: Gathered): Problem[] {
  const basis = file.source ?? "";
  const wordOnly = basis === "" ? "-" : basis;
  return [
    ...collect(into.parts, { source, key: "parts", items: file.parts, basis }),
    ...collect(into.tools, { source, key: "tools", items: file.tools, basis: wordOnly }),
    ...collect(into.access, { source, key: "access", items: file.access, basis }),
    ...collect(into.hazards, { source, key: "hazards", items: file.hazards, basis }),
    ...collect(into.redFlags, { source, key: "red-flags", items: file["red-flags"], basis }),
    ...collect(into.features, { source, key: "features", items: file.features, basis: wordOnly }),
    ...collect(into.urgency, {
      ...{ source, key: "urgency", items: file.urgency?.rules, basis: wordOnly },
    }),
    ...collect(into.photos, { source, key: "photos", items: file.photos, basis: wordOnly }),
    ...collect(into.forbidden, { source, key: "forbidden", items: file.forbidden, basis }),
    ...single(into.negations, source, { key: "negations", value: file.negations, basis: wordOnly }),
    ...single(into.rates, source, { key: "rates", value: file.rates, basis }),
    ...single(into.words, source, { key: "words", value: file.words, basis }),
  ];
}

interface Items<T> {
  readonly source: SourceFile;
  readonly key: string;
  readonly items: Readonly<Record<string, T>> | undefined;
  readonly basis: string;
}

function collect<T>(into: Section<T>, { source, key, items, basis }: Items<T>): Problem[] {
  const problems: Problem[] = [];
  for (const [id, value] of Object.entries(items ?? {})) {
    const place = { id, value, source, path: [key, id], basis: ownBasis(value) ?? basis };
    const earlier = into.get(id);
    if (earlier !== undefined) {
      problems.push(
        problemAt(
          place,
          `"${id}" already stands in ${earlier.source.file}; give one of the two another id.`,
        ),
      );
    }
    if (place.basis === "") {
      problems.push(
        problemAt(
          place,
          `"${id}" has figures without a source; add "source:" to it, or once at the top of ` +
            `the file.`,
        ),
      );
    }
    into.set(id, place);
  }
  return problems;
}

function ownBasis(value: unknown): string | undefined {
  if (typeof value !== "object" || value === null || !("source" in value)) return undefined;
  return typeof value.source === "string" ? value.source : undefined;
}

function single<T>(
  into: Section<T>,
  source: SourceFile,
  { key, value, basis }: { key: string; value: T | undefined; basis: string },
): Problem[] {
  if (value === undefined) return [];
  const earlier = into.get(key);
  into.set(key, { id: key, value, source, path: [key], basis });
  return [
    ...(basis === ""
      ? [
          problemIn(
            source,
            [key],
            'These figures have no source; add "source:" at the top of the file.',
          ),
        ]
      : []),
    ...(earlier
      ? [
          problemIn(
            source,
            [key],
            `"${key}" already stands in ${earlier.source.file}; it may stand only once.`,
          ),
        ]
      : []),
  ];
}
