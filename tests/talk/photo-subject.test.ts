import { describe, expect, it } from "vitest";
import type { CauseGroup } from "../../src/domain/vocabulary.ts";
import { isSeenOn, likeliestSubject, photoSubject } from "../../src/talk/photo-subject.ts";
import { Dialog, speech, workshop } from "../helpers/dialog.ts";

const dialog = new Dialog().say("petrol ride-on mower, one click");
const triage = dialog.desk.triage(dialog.state, "operator");
const [leader] = triage.ranking.causes;

/** What is asked for where the belief is so. */
function subjectFor(shares: readonly (readonly [CauseGroup, number])[]): string | null {
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

  it("is asked for in words of its own in every language, whatever it shows", () => {
    const subjects = [...(workshop.knowledge.photos?.keys() ?? [])];
    expect(subjects.length).toBeGreaterThan(4);
    for (const language of ["en", "es", "de"]) {
      const words = subjects.map((one) =>
        speech.wording.phrase({ key: `ask-photo-${one}` }, language),
      );
      expect(new Set(words).size).toBe(subjects.length);
      for (const text of words) expect(text).toMatch(/photo|foto/i);
    }
  });

  it("is of nothing in particular where no list says what photos show", () => {
    const { photos: _, ...bare } = workshop.knowledge;
    expect(likeliestSubject(triage.ranking.causes, bare)).toBeNull();
  });

  it("shows what belongs to it and nothing else", () => {
    const shown = (subject: string, observation: string) =>
      isSeenOn(subject, observation, workshop.knowledge);
    expect(shown("battery", "joint-look")).toBe(true);
    expect(shown("fuse", "joint-look")).toBe(false);
    expect(shown("fuse", "fuse-look")).toBe(true);
    // A voltage is read, not seen.
    expect(shown("battery", "battery-start-volts")).toBe(false);
  });
});
