import type { Pattern, PhraseLists, StateClaim, WeighedClaim } from "../domain/phrases.ts";
import type { Problem } from "../domain/result.ts";
import { type Classes, type KnownPieces, parsePattern } from "./phrases-pattern.ts";
import { type Path, problemIn, type SourceFile } from "./source-file.ts";

/** Phrases as they stand in the file: a list, or one text with commas between them. */
export type Say = string | readonly string[];

/** Observation id → its state ids (none for numbers and texts); null: claims are not checked. */
export type KnownStates = ReadonlyMap<string, ReadonlySet<string>> | null;

/** What the parts of a phrases file are built with; problems gather in it. */
export interface Bench {
  readonly source: SourceFile;
  readonly problems: Problem[];
  readonly classes: Classes;
  readonly pieces: KnownPieces;
  readonly known: KnownStates;
}

/** Words with blanks between them. */
export function split(text: string): readonly string[] {
  return text.split(/\s+/).filter((word) => word !== "");
}

/** Parses phrases; mistakes in them become problems at their line. */
export function patterns(bench: Bench, say: Say, path: Path): readonly Pattern[] {
  const items = typeof say === "string" ? [say] : say;
  return items.flatMap((item, index) => {
    const here = typeof say === "string" ? path : [...path, index];
    return parts(item).map((text) => {
      const { pattern, mistakes } = parsePattern(text, bench.classes, bench.pieces);
      for (const says of mistakes) bench.problems.push(problemIn(bench.source, here, says));
      return pattern;
    });
  });
}

/** Texts with commas or line ends between them. */
export function parts(text: string): readonly string[] {
  return text
    .split(/[,\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== "");
}

/** Phrases by id. */
export function lists(
  bench: Bench,
  file: Readonly<Record<string, Say | undefined>>,
  path: Path,
): PhraseLists {
  return new Map(
    Object.entries(file).map(
      ([id, say]) => [id, patterns(bench, say ?? [], [...path, id])] as const,
    ),
  );
}

/** `observation=state`, several with commas between them. */
export function claims(bench: Bench, text: string | undefined, path: Path): readonly StateClaim[] {
  return weighed(bench, text, path).map(({ observation, state }) => ({ observation, state }));
}

/** `engine-turns=normal 60, on-start=starts 40`; weights are made to sum to 1. */
export function weighed(
  bench: Bench,
  text: string | undefined,
  path: Path,
): readonly WeighedClaim[] {
  const read = parts(text ?? "").flatMap((part) => {
    const form = /^([a-z0-9-]+)=([a-z0-9-]+)(?:\s+(\d+))?$/.exec(part);
    const [, observation, state, weight] = form ?? [];
    if (observation === undefined || state === undefined) {
      const says = `"${part}" is not written as "observation=state".`;
      bench.problems.push(problemIn(bench.source, path, says));
      return [];
    }
    checkClaim(bench, { observation, state }, path);
    return [{ observation, state, weight: Number(weight ?? "1") }];
  });
  const total = read.reduce((sum, claim) => sum + claim.weight, 0);
  return read.map((claim) => ({ ...claim, weight: claim.weight / total }));
}

/** A problem where the knowledge has no such observation. */
export function checkObservation(bench: Bench, observation: string, path: Path): void {
  if (bench.known === null || bench.known.has(observation)) return;
  const says = `There is no observation "${observation}".`;
  bench.problems.push(problemIn(bench.source, path, says));
}

/** A problem where the knowledge has no such observation or state. */
export function checkClaim(bench: Bench, claim: StateClaim, path: Path): void {
  checkObservation(bench, claim.observation, path);
  const states = bench.known?.get(claim.observation);
  if (states === undefined || states.has(claim.state)) return;
  const says = `The observation "${claim.observation}" has no state "${claim.state}".`;
  bench.problems.push(problemIn(bench.source, path, says));
}
