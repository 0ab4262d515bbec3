import { describe, expect, it } from "vitest";
import { type EarlierCase, earlierLines, earlierOf } from "../../src/talk/earlier-cases.ts";
import { slipMessage } from "../../src/talk/slip.ts";
import { sheetMessage } from "../../src/talk/visit-sheet.ts";
import { Dialog, speech } from "../helpers/dialog.ts";

const now = {
  id: "9ZZZ",
  profile: "4F7K",
  operator: { id: "1", name: "", chat: "1", language: "en" },
};
const past = (id: string, more: Partial<EarlierCase> = {}): EarlierCase => ({
  ...{ id, operator: "1", profile: "4F7K", cause: "battery-worn-out", closedAt: 1 },
  ...more,
});
const ids = (cases: readonly EarlierCase[]) => earlierOf(now, cases).map(({ id }) => id);

describe("earlier cases of the same machine", () => {
  it("are those of its owner's machine, that of its first report among them, the newest first", () => {
    const first = past("4F7K", { profile: null, closedAt: 1 });
    const cases = [first, past("B", { closedAt: 3 }), past("C", { closedAt: 2 })];
    expect(ids(cases)).toEqual(["B", "C", "4F7K"]);
  });

  it("are not those of another machine, another person or the case itself", () => {
    const cases = [past("B", { profile: "X" }), past("C", { operator: "2" }), past("9ZZZ")];
    expect(ids(cases)).toEqual([]);
    expect(earlierOf({ ...now, profile: null }, [past("B")])).toEqual([]);
  });

  it("are named in one line, with their cause where one was found", () => {
    const none = past("C", { cause: null });
    const [said, ...more] = earlierLines([past("B"), none, past("D"), past("E")]);
    expect(more).toEqual([]);
    const text = said === undefined ? "" : speech.wording.phrase(said.say, "en");
    expect(text).toMatch(/^This machine before: B \(.+: .+\), C \([^:]+\) and D/);
    expect(text).not.toContain("E (");
    expect(earlierLines([])).toEqual([]);
  });

  it("stand on the slip and on the visit sheet", () => {
    const dialog = new Dialog().say("petrol ride-on mower, one click");
    const earlier = [past("4F7K")];
    const desk = { ...dialog.desk, earlier: () => earlier };
    const [wanted] = earlierLines(earlier);
    for (const message of [slipMessage, sheetMessage]) {
      expect(message(dialog.state, desk).lines).toContainEqual(wanted);
      expect(message(dialog.state, dialog.desk).lines).not.toContainEqual(wanted);
    }
  });
});
