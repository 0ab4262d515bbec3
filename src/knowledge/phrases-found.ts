import type { Sign } from "../domain/phrases.ts";
import { type Bench, claims, parts, patterns, type Say } from "./phrases-bench.ts";
import type { PhrasesFile } from "./phrases-schema.ts";

/** Stands for a part's name in the phrases that hold for every part. */
const PART = "$part";
/** Stands for the words of a bad part; some parts have their own. */
const BAD = "$bad";

type Parts = NonNullable<PhrasesFile["parts"]>;

/**
 * What is said of parts that somebody looked at: each phrase with each name of each part, "the relay
 * is burnt", "relays tested good". That a part is good rules out what it means when it is bad; that
 * it is "not good" says that it is bad.
 */
export function foundSigns(
  bench: Bench,
  { parts: file }: PhrasesFile,
  verdict: "bad" | "good",
): readonly Sign[] {
  const phrases = file?.[verdict];
  if (file === undefined || phrases === undefined) return [];
  return Object.entries(file.names).map(([part, own]): Sign => {
    const path = ["parts", "names", part];
    const means = claims(bench, own.means, [...path, "means"]);
    const say = [
      ...patterns(bench, ofPart(phrases, own), ["parts", verdict]),
      ...(verdict === "bad" ? patterns(bench, own.say ?? [], [...path, "say"]) : []),
    ];
    const sign = { say, maybe: [], sure: file.sure, past: false, givesWay: false };
    if (verdict === "bad") return { ...sign, id: `${part}-found-bad`, means };
    const denied = { means, maybe: [] };
    return { ...sign, id: `${part}-found-good`, means: [], rulesOut: means, denied };
  });
}

/** The phrases of every part with the names of this one. */
function ofPart(phrases: Say, own: Parts["names"][string]): readonly string[] {
  const names = texts(own.names);
  return texts(phrases).flatMap((phrase) =>
    names.map((name) => phrase.replaceAll(PART, name).replaceAll(BAD, own.bad ?? BAD)),
  );
}

function texts(say: Say): readonly string[] {
  return typeof say === "string" ? parts(say) : say.flatMap(parts);
}
