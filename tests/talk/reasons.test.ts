import { describe, expect, it } from "vitest";
import type { RankedCause, Reason } from "../../src/domain/triage.ts";
import {
  briefReason,
  briefReasons,
  causesWithReasons,
  plainReason,
  reasonLines,
} from "../../src/talk/reasons.ts";
import { speech, workshop } from "../helpers/dialog.ts";

const { knowledge } = workshop;
const click = { observation: "on-start", state: "one-click" };
const bright = { observation: "lights-at-start", state: "stay-bright" };
const reason = (decibans: number, members: Reason["members"] = [], of = click): Reason => ({
  ...of,
  decibans,
  members,
});
const cause = (...reasons: readonly Reason[]): RankedCause => ({
  ...({ fault: "solenoid-contacts-burnt", group: "relay-solenoid", probability: 0.4 } as const),
  reasons,
});
const told = (one: RankedCause, most = 3) =>
  speech.wording
    .render({ lines: reasonLines(one, most, knowledge) }, "en")
    .text.replace(/[\u00a0\u202f]/g, " ")
    .split("\n");

describe("the reasons of a cause", () => {
  it("are told strongest first, as many as wanted, and not where they hardly count", () => {
    const lines = told(cause(reason(7), reason(-4, [], bright), reason(0.6)));
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(/^• for it: .*One click \(\+7 dB\)$/);
    expect(lines[1]).toMatch(/^• against it: .*They stay bright \(.4 dB\)$/);
    expect(told(cause(reason(7), reason(-4, [], bright)), 1)).toHaveLength(1);
  });

  it("name what counts together once, however often it was told", () => {
    const [both = ""] = told(cause(reason(9, [bright, click])));
    expect(both).toContain("taken together");
    expect(both.match(/One click/g)).toHaveLength(1);
    expect(both).toContain("They stay bright");
    const [alone = ""] = told(cause(reason(9, [click])));
    expect(alone).not.toContain("together");
    expect(alone.match(/One click/g)).toHaveLength(1);
  });

  it("are said in a few words on a picture, and to the operator only where they speak for it", () => {
    const brief = briefReason(cause(reason(9, [click, bright])), knowledge);
    expect(brief === null ? "" : speech.wording.phrase(brief, "en")).toBe(
      "for it: One click and They stay bright",
    );
    expect(briefReason(cause(reason(0.4)), knowledge)).toBeNull();
    expect(plainReason(cause(reason(-9)), knowledge)).toEqual([]);
    expect(plainReason(cause(reason(9)), knowledge)).toHaveLength(1);
  });

  it("say an act's outcome with the act's name: alone it would be about nothing", () => {
    const jump = { observation: "jump-start", state: "no-change" };
    const isAct = knowledge.acts.has(jump.observation);
    expect(isAct).toBe(true);
    const brief = briefReason(cause(reason(9, [], jump)), knowledge);
    expect(brief === null ? "" : speech.wording.phrase(brief, "en")).toMatch(/^for it: .+: .+/);
  });

  it("say only 'the same' where another cause has the very answers of the first", () => {
    const others = [cause(reason(-5, [click], bright)), cause(reason(4))];
    const causes = [cause(reason(9, [bright])), cause(reason(5, [bright])), ...others];
    const words = briefReasons(causes, knowledge).map((one) =>
      one === null ? null : speech.wording.phrase(one, "en"),
    );
    expect(words).toEqual([
      "for it: One click and They stay bright",
      "for it: the same",
      "against it: the same",
      "for it: One click",
    ]);
  });

  it("stand under their cause, fully under the first alone", () => {
    const lines = causesWithReasons([cause(reason(9)), cause(reason(5))], 2, knowledge);
    const text = speech.wording.render({ lines }, "en").text.replace(/[\u00a0\u202f]/g, " ");
    expect(text.split("\n")).toEqual([
      "1. Solenoid contacts burnt: 40%",
      "• for it: What happens with the key on START: One click (+9 dB)",
      "2. Solenoid contacts burnt: 40%",
      "• for it: the same",
    ]);
  });
});
