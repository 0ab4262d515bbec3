import { describe, expect, it } from "vitest";
import type { CauseGroup } from "../../src/domain/vocabulary.ts";
import { photoSubject } from "../../src/talk/photo-subject.ts";
import { Dialog, speech } from "../helpers/dialog.ts";

const dialog = new Dialog().say("petrol ride-on mower, one click");
const triage = dialog.desk.triage(dialog.state, "operator");
const [leader] = triage.ranking.causes;

/** What is asked for where the belief is so. */
function subjectFor(shares: readonly (readonly [CauseGroup, number])[]): string {
  if (leader === undefined) throw new Error("no cause");
  const causes = shares.map(([group, probability]) => ({ ...leader, group, probability }));
  const ranking = { ...triage.ranking, causes };
  return photoSubject(dialog.state, { ...dialog.desk, triage: () => ({ ...triage, ranking }) });
}

describe("the one photo", () => {
  it("shows what most of the belief could be seen on", () => {
    expect(
      subjectFor([
        ["fuse-breaker", 0.6],
        ["battery", 0.3],
      ]),
    ).toBe("fuse");
    expect(
      subjectFor([
        ["fuse-breaker", 0.4],
        ["battery", 0.3],
        ["ground", 0.2],
      ]),
    ).toBe("battery");
    expect(
      subjectFor([
        ["fuel", 0.7],
        ["ignition", 0.2],
      ]),
    ).toBe("fuel");
  });

  it("is of the battery where nothing is known", () => expect(subjectFor([])).toBe("battery"));

  it("is asked for in words of its own, whatever it shows", () => {
    for (const group of [
      "battery",
      "fuse-breaker",
      "starter-motor",
      "fuel",
      "ignition",
      "interlock",
    ] as const) {
      const key = `ask-photo-${subjectFor([[group, 1]])}`;
      expect(speech.wording.phrase({ key }, "en")).toContain("send one photo");
    }
  });
});
