import { describe, expect, it } from "vitest";
import { readCase } from "../../src/cases/case-file.ts";
import { simulateInterview } from "../../src/cases/simulated-interview.ts";
import { parseCases } from "../../src/commands/case-files.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { workshop } from "../helpers/dialog.ts";

function played(text: string, most?: number) {
  const parsed = parseCases(text, "case.yaml");
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  const [file] = parsed.value.cases;
  if (file === undefined) throw new Error("no case");
  const read = readCase(file, workshop);
  return simulateInterview(read, compileModel(workshop.knowledge, read.machine), most);
}

const QUIET = "id: q\nmachine: { kind: ride-on mower, fuel: petrol }\nopening: it will not start\n";

describe("an interview with somebody who knows what the case file says", () => {
  const told = played(
    `${QUIET}operator: { on-start: one-click, lights-at-start: stay-bright, pattern: every-time }\n`,
  );

  it("begins with the symptom where the opening did not tell it", () => {
    expect(told.questions[0]).toBe("hear-start");
    const opened = played(`${QUIET.replace("will not start", "just clicks once")}`);
    expect(opened.questions).not.toContain("hear-start");
  });

  it("asks nothing twice and stops by itself", () => {
    expect(new Set(told.questions).size).toBe(told.questions.length);
    expect(told.asked).toBe(told.questions.length);
    expect(told.asked).toBeLessThan(25);
  });

  it("gets only what is asked and what the file says", () => {
    const known = told.evidence.reports.map((report) => report.observation);
    expect(known).toContain("on-start");
    expect(told.answered).toBeLessThanOrEqual(told.asked);
    expect(played(QUIET).answered).toBe(0);
  });

  it("hears the story first: what needs no look, and what nobody is sent to do", () => {
    const facts = "operator: { last-use: months, cylinder-liquid: liquid, fuse-look: blown }\n";
    const story = played(`${QUIET}${facts}`, 2);
    expect(story.questions).toEqual(["hear-start", "story"]);
    const known = story.evidence.reports.map(({ observation }) => observation);
    expect(known).toEqual(expect.arrayContaining(["last-use", "cylinder-liquid"]));
    expect(known).not.toContain("fuse-look");
  });

  describe("and sends the photo that is asked for with the story", () => {
    const QUITE_DEAD = QUIET.replace("will not start", "goes click click click, lights dim");
    const photo = "operator: { photo-would-show: battery clamp corroded }\n";
    const known = (text: string) => {
      const { questions, evidence } = played(text, 1);
      expect(questions).toEqual(["story"]);
      return evidence.reports.map(({ observation }) => observation);
    };

    it("hears what it shows where the subject is the true one", () => {
      expect(known(`${QUITE_DEAD}${photo}`)).toContain("joint-look");
    });

    it("hears nothing of it where something else was asked for", () => {
      const noFuel = QUIET.replace("will not start", "cranks well but will not fire");
      expect(known(`${noFuel}${photo}`)).not.toContain("joint-look");
    });

    it("hears nothing of it from somebody who is not there", () => {
      const away = photo.replace("{ ", "{ at-machine: no, ");
      expect(known(`${QUITE_DEAD}${away}`)).not.toContain("joint-look");
    });
  });

  it("hears the whole entry that answers a question", () => {
    const entry = "operator: { lights-on: the lights are bright and the fuse is blown }\n";
    const heard = played(`${QUIET.replace("will not start", "just clicks once")}${entry}`);
    const known = heard.evidence.reports.map(({ observation }) => observation);
    expect(heard.questions).toContain("see-lights");
    expect(known).toEqual(expect.arrayContaining(["lights-on", "fuse-look"]));
  });

  it("stops after as many questions as it is allowed", () => {
    expect(played(QUIET, 3).asked).toBe(3);
    expect(played(QUIET, 0).asked).toBe(0);
  });
});
