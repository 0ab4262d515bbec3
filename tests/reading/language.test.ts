import stemmers from "snowball-stemmers";
import { describe, expect, it } from "vitest";
import { createLexicon } from "../../src/reading/language.ts";
import { tokenise } from "../../src/reading/tokens.ts";
import { english } from "../helpers/english-reader.ts";

/** Sample vocabulary of the Snowball project's page on its English stemmer (snowballstem.org). */
const snowballSample: Readonly<Record<string, string>> = {
  consign: "consign consigned consigning consignment",
  consist: "consist consisted consistency consistent consistently consisting consists",
  consol: "consolation consolations console consoled consoles consoling consolingly consols",
  consolatori: "consolatory",
  consolid: "consolidate consolidated consolidating",
  conson: "consonant",
  consort: "consort consorted consorting",
  conspicu: "conspicuous conspicuously",
  conspiraci: "conspiracy",
  conspir: "conspirator conspirators conspire conspired conspiring",
  constabl: "constable constables",
  constanc: "constance constancy",
  constant: "constant",
  knack: "knack knacks",
  knackeri: "knackeries",
  knave: "knave knaves",
  knavish: "knavish",
  knead: "kneaded kneading",
  knee: "knee knees",
  kneel: "kneel kneeling kneels",
  knif: "knif",
  knife: "knife",
  knight: "knight knightly knights",
  knit: "knit knits knitted knitting",
  knive: "knives",
  knob: "knob knobs",
  knock: "knock knocked knocking knocks",
  knocker: "knocker knockers",
};

const lexicon = createLexicon(english);
const token = (word: string) => lexicon.tokens(tokenise(word))[0];

describe("the English stemmer", () => {
  const pairs = Object.entries(snowballSample).flatMap(([stem, words]) =>
    words.split(" ").map((word) => [word, stem] as const),
  );
  it.each(pairs)("turns %s into %s", (word, stem) =>
    expect(stemmers.newStemmer("english").stem(word)).toBe(stem),
  );
});

describe("the lexicon", () => {
  it("takes contractions apart, with or without the apostrophe", () => {
    expect(lexicon.stems("won't")).toEqual(["will", "not"]);
    expect(lexicon.stems("wont")).toEqual(["will", "not"]);
    expect(lexicon.stems("Won’t")).toEqual(["will", "not"]);
  });

  it.each([
    ["selinoid", "solenoid"],
    ["solinoid", "solenoid"],
    ["soleniod", "solenoid"],
    ["battory", "battery"],
    ["batery", "battery"],
    ["altenator", "alternator"],
    ["bidex", "bendix"],
    ["bindex", "bendix"],
    ["guage", "gauge"],
    ["natural", "neutral"],
    ["sluggesh", "sluggish"],
    ["termnals", "terminals"],
  ])("reads %s as %s", (misspelt, meant) => expect(token(misspelt)?.stem).toBe(token(meant)?.stem));

  it.each(["clock", "flux", "stick", "deal", "slot", "flood", "silencer", "bottle"])(
    "does not take %s for another word",
    (word) => expect(token(word)?.corrected).toBe(false),
  );

  it("knows what says nothing by itself", () => {
    expect(lexicon.isOrdinary(lexicon.stems("the")[0] ?? "")).toBe(true);
    expect(lexicon.isOrdinary(lexicon.stems("battery")[0] ?? "")).toBe(false);
  });
});
