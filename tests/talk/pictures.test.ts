import { describe, expect, it } from "vitest";
import { causesCard, circuitCard } from "../../src/talk/pictures.ts";
import { briefReason } from "../../src/talk/reasons.ts";
import { sheetMessage } from "../../src/talk/visit-sheet.ts";
import { Dialog, speech } from "../helpers/dialog.ts";

const first = new Dialog().say("diesel compact tractor, one click, lights stay bright");
const standing = first.desk.triage(first.state, "technician");
const range = (median: number) => ({ median, low: median - 0.5, high: median + 0.5 });
const [leader] = standing.ranking.causes;
if (leader === undefined) throw new Error("no cause is ranked");
/** Stands in for the simulated circuit: one test point is known. */
const expected = (_: unknown, observation: string) =>
  observation === "starter-start-volts"
    ? { healthy: range(10.4), causes: [{ fault: leader.fault, range: range(0.4) }] }
    : null;

const handed = () =>
  new Dialog("en", { triage: () => standing, expected })
    .say("diesel compact tractor, one click, lights stay bright")
    .press("All is safe")
    .press("More …")
    .press("Talk to a person")
    .press("Hand to a technician", "2")
    .press("Ilse", "2");
const papers = (dialog: Dialog, to: string) =>
  dialog.shown.flatMap((one) =>
    one.to === to && one.rendered.paper !== undefined ? [one.rendered.paper.paper] : [],
  );

describe("the causes as a picture", () => {
  it("comes with the sheet to the technician, with the reasons and what is on no list", () => {
    const [card] = papers(handed(), "3");
    if (card?.kind !== "causes") throw new Error("no picture came");
    expect(card.title).toContain("4F7K");
    expect(card.subtitle).toContain("One click");
    expect(card.bars.at(-1)).toMatchObject({ hollow: true, name: "Something else" });
    expect(card.bars[0]?.reason).toMatch(/^for it/);
    const shares = card.bars.slice(0, -1).map(({ share }) => share);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    expect(card.bars.reduce((sum, { share }) => sum + share, 0)).toBeLessThanOrEqual(1.0001);
  });

  it("can be had at the counter, and not before anything is known", () => {
    const dialog = handed().press("More acts …", "2").press("Picture of the causes", "2");
    expect(papers(dialog, "2").map(({ kind }) => kind)).toEqual(["causes"]);
    const early = new Dialog();
    early.counter({ kind: "press", press: { case: "4F7K", revision: 0, act: "causes" } }, "2");
    expect(early.toast).toContain("Nothing is known yet");
  });
});

describe("a brief reason", () => {
  it("names the answers alone, and a reading with what was read", () => {
    const cause = { ...leader, reasons: [] };
    const reason = (observation: string, state: string, decibans: number) => ({
      ...{ observation, state, decibans, members: [] },
    });
    const brief = (...reasons: ReturnType<typeof reason>[]) => {
      const words = briefReason({ ...cause, reasons }, first.desk.knowledge);
      return words && speech.wording.phrase(words, "en").replace(/\s/g, " ");
    };
    expect(brief(reason("on-start", "one-click", 5))).toBe("for it: One click");
    expect(brief(reason("battery-rest-volts", "12.6 V", -4))).toBe(
      "against it: Battery volts at rest: 12.6 V",
    );
    expect(brief(reason("on-start", "one-click", 0.2))).toBeNull();
    expect(brief()).toBeNull();
  });
});

describe("the circuit with its readings", () => {
  it("says at each point what a healthy machine and the leading cause would show", () => {
    const { state, desk } = handed();
    const { circuit } = circuitCard(state, desk);
    const words = new Map(
      circuit.readings?.map((one) => [one.point, speech.wording.phrase(one.words, "en")]),
    );
    const said = words.get("starter-start-volts")?.replace(/\s/g, " ") ?? "";
    expect(said).toContain("Healthy: 10.4 V (9.9 V to 10.9 V) – ");
    expect(said).toMatch(/ – [^–]+: 0\.4 V$/);
    expect(words.get("battery-rest-volts")).not.toMatch(/\d\sV/);
    expect(circuit.fault).toBe(leader.fault);
  });

  it("leaves out a cause that a healthy machine's reading fits as well", () => {
    const { state, desk } = handed();
    const alike = {
      ...desk,
      expected: () => ({
        healthy: range(10.4),
        causes: [{ fault: leader.fault, range: range(10.5) }],
      }),
    };
    const [first] = circuitCard(state, alike).circuit.readings ?? [];
    expect(first && speech.wording.phrase(first.words, "en")).not.toContain("10.5");
  });

  it("is given to the technician who has the case", () => {
    const dialog = handed().press("Circuit and readings", "3");
    expect(papers(dialog, "3").at(-1)?.kind).toBe("circuit");
  });

  it("stands on the sheet in words where the plan measures", () => {
    const { state, desk } = handed();
    const headings = (shown: typeof desk) =>
      sheetMessage(state, shown).lines.filter(
        ({ say }) => "key" in say && say.key === "sheet-points",
      );
    const measured = { ...desk, expected: () => ({ healthy: range(10.4), causes: [] }) };
    expect(headings(measured)).toHaveLength(1);
    expect(headings({ ...desk, expected: () => null })).toEqual([]);
    expect(causesCard(first.state, first.desk).bars.length).toBeGreaterThan(2);
  });
});
