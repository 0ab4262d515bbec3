import { describe, expect, it } from "vitest";
import { alikeLines } from "../../src/talk/look-alikes.ts";
import { speech, workshop } from "../helpers/dialog.ts";

const faults = ["isolator-left-off", "earth-strap-broken"];
const [check] = workshop.knowledge.checks.keys();
const text = (alike: Parameters<typeof alikeLines>[0]["alike"]) =>
  alikeLines({ alike }).map((one) => speech.wording.phrase(one.say, "en"));

describe("causes that look alike, in words", () => {
  it("are named in one line, with what tells them apart", () => {
    const [found = ""] = text({ faults, check: check ?? "" });
    for (const id of faults) expect(found).toContain(workshop.knowledge.faults.get(id)?.title);
    expect(found).toContain(workshop.knowledge.checks.get(check ?? "")?.title);
  });

  it("are named without it where no check tells them apart", () => {
    const [found = ""] = text({ faults, check: null });
    expect(found).toContain("Not to be told apart yet");
    expect(found).not.toContain("What tells");
  });

  it("take no line where the leader stands alone", () => {
    expect(text(null)).toEqual([]);
  });
});
