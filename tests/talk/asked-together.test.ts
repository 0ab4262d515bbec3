import { describe, expect, it } from "vitest";
import type { Asking } from "../../src/domain/case-events.ts";
import { Dialog } from "../helpers/dialog.ts";

const underWay = () => new Dialog().say("petrol ride-on mower, one click").press("All is safe");
const aboutOf = ({ state }: Dialog) => state.open.operator?.asking.about;
/** The interview is over, and the shop wants to know where to come to. */
const whereAsked = () => {
  const dialog = underWay().happened(
    { type: "interview.ended", because: "enough" },
    { type: "urgency.told", urgency: "normal" },
  );
  return dialog.asked({ about: "where", phone: true });
};

describe("place and number, asked for in one breath", () => {
  it("are both taken from one line", () => {
    const { state } = whereAsked().say("Hill farm, gate by the silo, 0172 555-0199");
    expect(state.where?.words).toContain("gate by the silo");
    expect(state.phone).toBe("0172 555-0199");
  });

  it("leave the number to be asked where only the place was told", () => {
    const dialog = whereAsked().say("lower meadow, gate 3");
    expect(dialog.state.phone).toBeNull();
    expect(aboutOf(dialog)).toBe("phone");
  });

  it("leave the place to be asked where only the number came, without the number once more", () => {
    const dialog = whereAsked();
    dialog.send({ kind: "contact", phone: "+1 555 0199", own: true, name: "Pat" });
    expect(aboutOf(dialog)).toBe("where");
    expect(dialog.last()).not.toContain("which number");
  });

  it("are both left out by one press", () => {
    const dialog = whereAsked().press("Skip this");
    expect(aboutOf(dialog)).not.toBe("phone");
    expect(dialog.state.phone).toBeNull();
  });
});

describe("the story and the photo, asked for in one breath", () => {
  const story = () => underWay().press("Yes, beside it");

  it("are for somebody who stands beside the machine", () => {
    const asking = story().state.open.operator?.asking;
    expect(asking).toMatchObject({ about: "story", photo: expect.any(String) });
    expect(story().last()).toContain("send one photo");
    const away = underWay().press("No").state.open.operator?.asking;
    expect(away?.about === "story" && "photo" in away).toBe(false);
  });

  it("leave the story open once the photo is there, and ask for no other photo", () => {
    const dialog = story().send({ kind: "file", file: { id: "f1", kind: "photo" } });
    expect(aboutOf(dialog)).toBe("story");
    expect(dialog.last()).toContain("What happened");
    expect(dialog.last()).not.toContain("send one photo");
    dialog.say("it stood all winter");
    const asked: (Asking["about"] | undefined)[] = [];
    for (let n = 0; n < 12 && dialog.state.open.operator !== null; n += 1) {
      asked.push(aboutOf(dialog));
      dialog.say("I don't know");
    }
    expect(asked).not.toContain("photo");
  });
});

describe("the plate, asked for with the last message", () => {
  const ended = () => {
    const dialog = underWay().press("Yes, beside it");
    dialog.happened(
      { type: "interview.ended", because: "enough" },
      { type: "urgency.told", urgency: "normal" },
      { type: "phone.told", phone: "555 0199" },
    );
    return dialog.asked({ about: "where" }).say("yard");
  };

  it("is asked for once", () => {
    const dialog = ended();
    expect(dialog.last()).toContain("the plate");
    dialog.say("we also hear a hum");
    expect(dialog.last()).not.toContain("the plate");
  });

  it("is kept with the machine where its number is typed", () => {
    expect(ended().say("AB 12345-7").state.machine.serial).toBe("AB 12345-7");
    expect(ended().say("it stands at gate 3").state.machine.serial).toBeUndefined();
  });
});
