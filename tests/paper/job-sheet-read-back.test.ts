import { extractText, getDocumentProxy } from "unpdf";
import { describe, expect, it } from "vitest";
import { chooseCircuits } from "../../src/circuit/choose-circuit.ts";
import { wordKey } from "../../src/domain/knowledge.ts";
import { createPrinter } from "../../src/paper/print-paper.ts";
import { jobSheet } from "../../src/talk/job-sheet.ts";
import { mainLine } from "../../src/talk/plan-lines.ts";
import { Dialog, speech, workshop } from "../helpers/dialog.ts";

const print = createPrinter(
  (machine) => chooseCircuits(workshop.circuits.values(), machine)[0]?.circuit,
);

/** What a healthy machine shows at any point, so that the sheet has readings to print. */
const expected = () => ({
  healthy: { median: 0.1, low: 0, high: 0.3 },
  causes: [{ fault: "earth-strap-corroded", range: { median: 2.4, low: 1, high: 4 } }],
});

const click = new Dialog("en", { expected })
  .say("diesel compact tractor, one click, lights stay bright")
  .press("All is safe");
const { state, desk } = click;
const triage = desk.triage(state, "technician");

/** The sheet's pages as an independent program reads them, blanks of any kind made one. */
async function read(of: Dialog, language: string): Promise<string[]> {
  const sheet = jobSheet(of.state, of.desk);
  const { paper } = speech.wording.render({ lines: [], paper: sheet }, language);
  if (paper === undefined) throw new Error("the sheet was not worded");
  const { bytes } = await print(paper);
  const { text } = await extractText(await getDocumentProxy(new Uint8Array(bytes)));
  return text.map(plain);
}
const sheets = new Map<string, Promise<string[]>>();
/** Each sheet is printed once. */
function pages(of: Dialog, language: string): Promise<string[]> {
  const key = `${of === click} ${language}`;
  const known = sheets.get(key) ?? read(of, language);
  sheets.set(key, known);
  return known;
}
const plain = (text: string) => text.replace(/\s+/g, " ");

describe.each(["en", "es", "de"])(
  "the job sheet in %s, read back by another program",
  (language) => {
    const say = (phrase: Parameters<typeof speech.wording.phrase>[0]) =>
      plain(speech.wording.phrase(phrase, language));
    const know = (...key: Parameters<typeof wordKey>) => say({ know: wordKey(...key) });

    it("holds on two pages the case, the causes, the plan, the cautions, the kit", async () => {
      const all = await pages(click, language);
      expect(all).toHaveLength(2);
      const text = all.join(" ");
      const causes = triage.ranking.causes.slice(0, 5).map(({ fault }) => know("fault", fault));
      const steps = mainLine(triage.plan)
        .filter(({ step }) => step.kind === "check")
        .slice(0, 4)
        .map(({ step }) => know("check", step.id));
      const tools = triage.kit.tools.map((tool) => know("tool", tool));
      const parts = triage.kit.items
        .filter(({ carry }) => carry)
        .map(({ part }) => know("part", part));
      const words = [
        "4F7K",
        know("machine", "compact-tractor"),
        know("state", "on-start.one-click"),
      ];
      expect(causes).toHaveLength(5);
      expect(steps.length).toBeGreaterThan(0);
      for (const one of [...words, ...causes, ...steps, ...tools, ...parts]) {
        expect(text).toContain(one);
      }
    });

    it("names the cautions before the first step", async () => {
      const [page = ""] = await pages(click, language);
      const [hazard = "none"] = mainLine(triage.plan).flatMap(({ step }) => step.hazards);
      const caution = know("hazard", hazard, "caution");
      expect(page).toContain(caution);
      const heading = say({ key: "slip-plan" });
      const plan = page.slice(page.lastIndexOf(`${heading} ⚠`));
      expect(plan.indexOf(caution)).toBeGreaterThan(0);
      expect(plan.indexOf(caution)).toBeLessThan(plan.indexOf("1. "));
    });

    it("says what the meter should show at the numbered points of the circuit", async () => {
      const [, page = ""] = await pages(click, language);
      expect(page).toContain(know("observation", "ground-drop-volts"));
      expect(page).toMatch(/\b0[.,]1 V\b/);
      expect(page).toMatch(/\b2[.,]4 V\b/);
      expect(page).toContain(know("fault", "earth-strap-corroded"));
    });

    it("has no letter that the printed type cannot draw", async () => {
      const text = (await pages(click, language)).join("");
      expect(text).not.toContain("\uFFFD");
      expect(text).not.toMatch(/undefined|NaN|\{ ?\$/);
    });
  },
);

describe("a job about which much is known", () => {
  const long = new Dialog("en", { expected }).say(
    "petrol garden tractor turns but does not fire, new spark plug last week, fuel from last year",
  );
  for (let n = 0; n < 6; n += 1) {
    long.happened({
      type: "note.added",
      text: `Note ${n}: ${"the dog is loose ".repeat(12)}`,
      from: "dispatcher",
    });
  }
  long.say("The pin is at the lower meadow, gate code 4711");

  it.each(["en", "es", "de"])("stays on two pages in %s", async (language) => {
    const all = await pages(long, language);
    expect(all).toHaveLength(2);
    expect(all.join(" ")).toContain("Note 5");
  });
});
