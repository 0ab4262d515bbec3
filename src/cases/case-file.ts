import type { Evidence, MachineFacts, Report, Said } from "../domain/evidence.ts";
import type { Knowledge, Observation } from "../domain/knowledge.ts";
import type { MachineHints, Reader, ReaderModel, Understood } from "../domain/reading.ts";
import { type Fuel, fuels, type Reporter } from "../domain/vocabulary.ts";
import { matchMachineKind } from "../reading/machine-kind.ts";
import { readFact } from "../reading/read-fact.ts";

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

/** What a case file says, step by step, so that a stage can take as much as it needs. */
export interface ReadCase {
  readonly file: CaseFile;
  readonly machine: MachineFacts;
  readonly opening: readonly Report[];
  readonly operator: readonly Report[];
  /** Acts of the operator, done after everything else they tell. */
  readonly acts: readonly {
    readonly act: string;
    readonly outcome: "cured" | "no-change" | "unknown";
    readonly report: Report | null;
  }[];
  readonly technician: readonly Report[];
  readonly redFlags: readonly string[];
  readonly notUnderstood: readonly string[];
}

export interface CaseReaderParts {
  readonly knowledge: Knowledge;
  readonly reader: Reader;
  readonly model: ReaderModel;
  readonly languages: readonly string[];
}

const MOVE_CONTROLS = "controls-moved";

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

function saidOf(item: Understood, observation: Observation): Said | null {
  if ("value" in item) return { kind: "value", value: item.value };
  if (!observation.states.some((state) => state.id === item.state)) return null;
  return observation.kind === "list"
    ? { kind: "members", present: [item.state], absent: [] }
    : { kind: "states", weights: { [item.state]: 1 } };
}

interface Attribution {
  readonly reporter: Reporter;
  readonly epoch: number;
}

function reportsOf(
  items: readonly Understood[],
  knowledge: Knowledge,
  { reporter, epoch }: Attribution,
): Report[] {
  const reports: Report[] = [];
  for (const item of items) {
    const observation = knowledge.observations.get(item.observation);
    const said = observation === undefined ? null : saidOf(item, observation);
    if (said === null) continue;
    const who = item.source === "other" && reporter === "operator" ? "second-hand" : reporter;
    const hedge = 1 - (1 - item.hedge) * item.probability;
    reports.push({ observation: item.observation, epoch, reporter: who, said, hedge });
  }
  return mergeLists(reports);
}

/** Members of a list that one reporter named one by one are one report. */
function mergeLists(reports: readonly Report[]): Report[] {
  const merged: Report[] = [];
  for (const report of reports) {
    const at = merged.findIndex(
      (one) =>
        one.observation === report.observation &&
        one.reporter === report.reporter &&
        one.epoch === report.epoch &&
        one.said.kind === "members",
    );
    const old = merged[at];
    if (old?.said.kind === "members" && report.said.kind === "members") {
      const present = [...new Set([...old.said.present, ...report.said.present])];
      merged[at] = { ...old, said: { ...old.said, present } };
    } else merged.push(report);
  }
  return merged;
}

/** Acts report through an observation; they come last and open an epoch. */
function actOf(report: Report, knowledge: Knowledge): ReadCase["acts"][number] | null {
  if (report.said.kind !== "states") return null;
  const state = Object.keys(report.said.weights)[0] ?? "";
  const act = actYielding(knowledge, report.observation);
  if (act === null || state === "not-tried") return null;
  if (report.observation === MOVE_CONTROLS) {
    return { act, outcome: state === "then-started" ? "cured" : "no-change", report: null };
  }
  return { act, outcome: "unknown", report };
}

/** The acts and everything else; the same act told twice was done once, and the surest telling stands. */
function partActs(reports: readonly Report[], knowledge: Knowledge) {
  const acts = new Map<string, ReadCase["acts"][number]>();
  const plain: Report[] = [];
  for (const report of reports) {
    const act = actOf(report, knowledge);
    if (act === null) plain.push(report);
    else acts.set(act.act, act);
  }
  return { acts: [...acts.values()], plain: mergeLists(plain) };
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
  const opening = reader.read(file.opening, optionsFor(file.machine));
  const machine = withHints(machineOf(file, parts), opening.machine);
  const notUnderstood: string[] = opening.notUnderstood.map(([from, to]) =>
    file.opening.slice(from, to),
  );
  const tools = { model, reader, options: optionsFor(machine) };
  const facts = (entries: Readonly<Record<string, unknown>>, reporter: Reporter): Report[] => {
    const reports = Object.entries(entries).flatMap(([key, value]) => {
      const read = readFact(key, value, tools);
      notUnderstood.push(...read.notUnderstood);
      return reportsOf(read.understood, knowledge, { reporter, epoch: 0 });
    });
    // The last report of an observation stands, so the surest comes last.
    return reports.sort((a, b) => b.hedge - a.hedge);
  };
  const { acts, plain } = partActs(facts(file.operator, "operator"), knowledge);
  return {
    file,
    machine,
    opening: reportsOf(opening.understood, knowledge, { reporter: "operator", epoch: 0 }),
    operator: plain,
    acts,
    technician: mergeLists(facts(file.technician, "technician")),
    redFlags: [...new Set(opening.redFlags.map((flag) => flag.id))],
    notUnderstood,
  };
}

/** Evidence of the chosen reports; acts follow in order, each opening an epoch. */
export function evidenceFrom(reports: readonly Report[], acts: ReadCase["acts"]): Evidence {
  const done = acts.map(({ act, outcome }, index) => ({
    act,
    epoch: index + 1,
    by: "operator" as const,
    outcome,
  }));
  const told = acts.flatMap(({ report }, index) =>
    report === null ? [] : [{ ...report, epoch: index + 1 }],
  );
  return { reports: mergeLists([...reports, ...told]), acts: done };
}
