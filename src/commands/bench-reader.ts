import { createRequire } from "node:module";
import type { Reader } from "../domain/reading.ts";
import { spentOn } from "./bench-engine.ts";

/** A general-purpose library that only tells the language of a text. */
const PEER = "tinyld";

/** The length a message is measured at, and those that its growth is seen over; UTF-16 units. */
const LENGTH = 1000;
const GROWTH = [250, 500, 1000, 2000, 4000];

export interface ReaderBench {
  readonly characters: number;
  readonly language: string;
  readonly medianMs: number;
  readonly p99Ms: number;
  /** Median in every language at once, as a message is read whose language is not known. */
  readonly allLanguagesMs: number;
  /** How many times longer reading takes than the peer takes to name the language; null: absent. */
  readonly peer: { readonly name: string; readonly ratio: number | null };
  /** log-log slope of the median over the growing text; 1 is linear. */
  readonly growth: number;
}

/**
 * How fast messages are read, made of things people say one after another: more is found in them
 * than in any real message.
 *
 * @param said what one language says, a text each; at least one
 * @param repeats of each measurement, at least 1
 */
export function benchReader(
  reader: Reader,
  said: { readonly language: string; readonly texts: readonly string[] },
  repeats = 60,
): ReaderBench {
  const languages = [said.language];
  const textOf = (length: number): string => {
    const once = said.texts.join(". ");
    return `${once}. `.repeat(Math.ceil(length / Math.max(1, once.length))).slice(0, length);
  };
  const spent = (length: number, among: readonly string[]) =>
    spentOn(() => reader.read(textOf(length), { languages: among }), repeats);
  const here = spent(LENGTH, languages);
  const detect = loadPeer();
  const peerMs = detect === null ? null : spentOn(() => detect(textOf(LENGTH)), repeats).medianMs;
  return {
    characters: LENGTH,
    language: said.language,
    ...here,
    allLanguagesMs: spent(LENGTH, []).medianMs,
    peer: { name: PEER, ratio: peerMs === null ? null : here.medianMs / peerMs },
    growth: slopeOf(GROWTH.map((length) => [length, spent(length, languages).medianMs])),
  };
}

/** Least-squares slope of log time over log length. */
function slopeOf(points: readonly (readonly [number, number])[]): number {
  const logs = points.map(([x, y]) => [Math.log(x), Math.log(y)] as const);
  const mean = (k: 0 | 1): number => logs.reduce((sum, one) => sum + one[k], 0) / logs.length;
  const [mx, my] = [mean(0), mean(1)];
  const joint = logs.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0);
  return joint / logs.reduce((sum, [x]) => sum + (x - mx) ** 2, 0);
}

function loadPeer(): ((text: string) => unknown) | null {
  const found: unknown = createRequire(import.meta.url)(PEER);
  const detect = typeof found === "object" && found !== null ? Reflect.get(found, "detect") : null;
  return typeof detect === "function" ? (text) => Reflect.apply(detect, null, [text]) : null;
}
