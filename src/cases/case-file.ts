import { withToldFeatures } from "../diagnosis/told-features.ts";
import type { MachineFacts, Report } from "../domain/evidence.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import type {
  ActTold,
  Ambiguous,
  MachineHints,
  Reader,
  ReaderModel,
  StateReading,
  Understood,
} from "../domain/reading.ts";
import { type Fuel, fuels, type Performer } from "../domain/vocabulary.ts";
import { matchMachineKind } from "../reading/machine-kind.ts";
import { type FactReading, readFact } from "../reading/read-fact.ts";
import { addsTo, leavesOpen, reportsFrom } from "../talk/reports.ts";
import { likeliestMeanings } from "./likeliest-meaning.ts";

/** A written-down case: what was known, by whom. Only `id` is certain to be there. */
export interface CaseFile {
  readonly id: string;
  readonly machine: {
    readonly kind?: string;
    readonly fuel?: string;
    readonly volts?: number;
    readonly cylinders?: number;
    readonly hours?: number;
    readonly ageYears?: number;
  };
  readonly opening: string;
  readonly operator: Readonly<Record<string, unknown>>;
  readonly technician: Readonly<Record<string, unknown>>;
  readonly cause: readonly string[];
  readonly group: readonly string[];
  readonly strict: boolean;
}

/** Whose words they are: each stage knows all that came before it. */
export const tellers = ["opening", "operator", "technician"] as const;
export type Teller = (typeof tellers)[number];

/** What a case file says, step by step, so that a stage can take as much as it needs. */
export interface ReadCase {
  readonly file: CaseFile;
  readonly machine: MachineFacts;
  readonly opening: readonly Report[];
  readonly operator: readonly Report[];
  /** What each of the operator's entries is about: who is asked for one thing says the whole of it. */
  readonly entries: readonly CaseEntry[];
  /** In the order in which they were done, after everything else that is told. */
  readonly acts: readonly CaseAct[];
  readonly technician: readonly Report[];
  readonly redFlags: readonly string[];
  readonly notUnderstood: readonly string[];
}

/** One of the operator's entries, by its name and what was understood of it. */
export interface CaseEntry {
  readonly key: string;
  readonly observations: readonly string[];
}

/** Something that was done about the trouble; the report tells what came of it, where there is one. */
export interface CaseAct {
  readonly act: string;
  readonly by: Performer;
  readonly toldIn: Teller;
  readonly outcome: "cured" | "no-change" | "unknown";
  readonly report: Report | null;
}

export interface CaseReaderParts {
  readonly knowledge: Knowledge;
  readonly reader: Reader;
  readonly model: ReaderModel;
  readonly languages: readonly string[];
}

const MOVE_CONTROLS = "controls-moved";
/** Of an act's observation: nothing was done. */
const NOT_TRIED = "not-tried";

function machineOf(file: CaseFile, parts: CaseReaderParts): MachineFacts {
  const { machine } = file;
  const named = matchMachineKind(machine.kind ?? "", parts.model.machines);
  const fuel = fuels.find((one): one is Fuel => one === machine.fuel) ?? named.fuel;
  const known = parts.knowledge.machines;
  const kind = named.kind !== undefined && known.has(named.kind) ? named.kind : "other";
  return {
    kind,
    ...(fuel === undefined ? {} : { fuel }),
    ...(machine.volts === undefined ? {} : { volts: machine.volts }),
    ...(machine.cylinders === undefined ? {} : { cylinders: machine.cylinders }),
    ...(machine.hours === undefined ? {} : { hours: machine.hours }),
    ...(machine.ageYears === undefined ? {} : { ageYears: machine.ageYears }),
    ...(machine.kind === undefined ? {} : { words: machine.kind }),
  };
}

/** What one teller says, before acts are told apart from facts. */
interface Heard {
  readonly teller: Teller;
  readonly understood: readonly Understood[];
  readonly denied: readonly StateReading[];
  readonly acts: readonly ActTold[];
  readonly ambiguous: readonly Ambiguous[];
}

/** Facts about the machine as it was found, and what was done about it. */
interface Parted {
  readonly facts: readonly Report[];
  readonly acts: readonly CaseAct[];
}

function part(
  { teller, understood, denied, acts, ambiguous }: Heard,
  knowledge: Knowledge,
): Parted {
  const by: Performer = teller === "technician" ? "technician" : "operator";
  const facts: Report[] = [];
  const done = new Map<string, CaseAct>();
  const plain = reportsFrom(understood, denied, { knowledge, reporter: by, epoch: 0 });
  for (const report of [...plain, ...likeliestMeanings(ambiguous, plain, by)]) {
    const act = actOf(report, knowledge);
    if (act === null) facts.push({ ...report, unasked: true });
    else done.set(act.act, { ...act, by, toldIn: teller });
  }
  for (const { act, outcome } of acts) {
    // The trouble that an opening tells of is there in spite of what once helped.
    const isOver = teller === "opening" && outcome === "cured";
    const isKnown = knowledge.acts.has(act) || knowledge.remedies.has(act);
    if (isOver || !isKnown || done.has(act)) continue;
    done.set(act, { act, outcome, report: null, by, toldIn: teller });
  }
  return { facts, acts: [...done.values()] };
}

/** Some acts report through an observation. */
function actOf(
  report: Report,
  knowledge: Knowledge,
): Pick<CaseAct, "act" | "outcome" | "report"> | null {
  if (report.said.kind !== "states" || leavesOpen(report)) return null;
  const state = Object.keys(report.said.weights)[0] ?? "";
  const act = actYielding(knowledge, report.observation);
  if (act === null || state === NOT_TRIED) return null;
  if (report.observation === MOVE_CONTROLS) {
    return { act, outcome: state === "then-started" ? "cured" : "no-change", report: null };
  }
  return { act, outcome: state === "no-change" ? "no-change" : "unknown", report };
}

function actYielding(knowledge: Knowledge, observation: string): string | null {
  for (const act of knowledge.acts.values()) if (act.yields === observation) return act.id;
  return null;
}

/** What the opening says of the machine holds where the file's own entries are silent. */
function withHints(machine: MachineFacts, hints: MachineHints): MachineFacts {
  const { kind, fuel, volts, cylinders, hours, ageYears } = hints;
  return {
    ...(fuel === undefined ? {} : { fuel }),
    ...(volts === undefined ? {} : { volts }),
    ...(cylinders === undefined ? {} : { cylinders }),
    ...(hours === undefined ? {} : { hours }),
    ...(ageYears === undefined ? {} : { ageYears }),
    ...machine,
    ...(machine.kind === "other" && kind !== undefined ? { kind } : {}),
  };
}

/** Reads a case file with the same reader that listens to people; what it cannot place is listed. */
export function readCase(file: CaseFile, parts: CaseReaderParts): ReadCase {
  const { knowledge, reader, model, languages } = parts;
  const optionsFor = ({ volts }: { readonly volts?: number | undefined }) => ({
    languages,
    ...(volts === undefined ? {} : { volts }),
  });
  const said = reader.read(file.opening, optionsFor(file.machine));
  const machine = withHints(machineOf(file, parts), said.machine);
  const tools = { model, reader, options: optionsFor(machine) };
  const notUnderstood: string[] = said.notUnderstood.map(([from, to]) =>
    file.opening.slice(from, to),
  );
  const readEntries = (entries: CaseFile["operator"], mended: boolean): readonly ReadEntry[] =>
    Object.entries(entries).map(([key, value]) => {
      const read = readFact(key, value, { ...tools, options: { ...tools.options, mended } });
      notUnderstood.push(...read.notUnderstood);
      return { key, read };
    });
  const changeable = new Set([...knowledge.acts.values()].flatMap((act) => act.makesStale));
  const heard = (teller: Teller, entries: readonly ReadEntry[]): Parted => {
    const acts = entries.flatMap(({ read }) => read.acts);
    const found = entries.map(({ read }) =>
      read.afterwards ? stillTrue(read, teller, changeable) : read,
    );
    const understood = found.flatMap((one) => one.understood);
    const denied = found.flatMap((one) => one.denied);
    // What holds only after something was done is not how the machine was found.
    const before = entries.filter(({ read }) => !read.afterwards);
    const ambiguous = before.flatMap(({ read }) => read.ambiguous);
    return part({ teller, understood, denied, acts, ambiguous }, knowledge);
  };
  const opening = part({ ...said, teller: "opening" }, knowledge);
  const answers = readEntries(file.operator, false);
  const operator = heard("operator", answers);
  const technician = heard("technician", readEntries(file.technician, true));
  return {
    file,
    machine: withToldFeatures(machine, [...opening.facts, ...operator.facts], knowledge),
    opening: opening.facts,
    operator: operator.facts.filter((report) => addsTo(opening.facts, report)),
    entries: answers.map(({ key, read }) => ({ key, observations: observationsIn(read) })),
    acts: [...opening.acts, ...operator.acts, ...technician.acts],
    technician: technician.facts,
    redFlags: [...new Set(said.redFlags.map((flag) => flag.id))],
    notUnderstood,
  };
}

interface ReadEntry {
  readonly key: string;
  readonly read: FactReading;
}

function observationsIn({ understood, denied }: FactReading): readonly string[] {
  return [...new Set([...understood, ...denied].map(({ observation }) => observation))];
}

/**
 * What an entry "after …" says of the machine as found: nothing where a technician tells what came
 * of the work, else what no act changes.
 */
function stillTrue(
  { understood, denied }: Pick<FactReading, "understood" | "denied">,
  teller: Teller,
  changeable: ReadonlySet<string>,
) {
  const stays = ({ observation }: { readonly observation: string }): boolean =>
    teller !== "technician" && !changeable.has(observation);
  return { understood: understood.filter(stays), denied: denied.filter(stays) };
}
