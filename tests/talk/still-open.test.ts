import { describe, expect, it } from "vitest";
import { Dialog } from "../helpers/dialog.ts";

/** An operator with a question of the engine before them. */
const underWay = () =>
  new Dialog().say("petrol ride-on mower, one click, lights stay bright").press("All is safe");
const asking = (dialog: Dialog) => dialog.state.open.operator?.asking;

describe("a question that something else came in between", () => {
  it.each([
    ["a place", { kind: "location", latitude: 52, longitude: 5 }],
    ["a phone number", { kind: "contact", phone: "555 0199", own: true, name: "Marit" }],
    ["a remark about something else", { kind: "text", text: "the mower is 8 years old" }],
    ["a photo", { kind: "file", file: { id: "f", kind: "photo" } }],
  ] as const)("stays open after %s", (_, what) => {
    const dialog = underWay();
    const before = dialog.state.open.operator;
    dialog.send(what);
    const said = dialog.state.open.operator?.before;
    expect(dialog.state.open.operator).toEqual({ ...before, before: said });
    dialog.press(dialog.labels()[0] ?? "");
    expect(asking(dialog)).not.toEqual(before?.asking);
  });

  it("stays open over a danger that is over", () => {
    const dialog = underWay();
    const before = asking(dialog);
    dialog.say("i smell petrol, there is a puddle").press("It is safe now, go on");
    expect(asking(dialog)).toEqual(before);
  });

  it("is done with once words have answered it", () => {
    const dialog = new Dialog().say("hello").press("All is safe");
    expect(asking(dialog)?.about).toBe("kind");
    dialog.say("it is a diesel combine");
    expect(asking(dialog)?.about).not.toBe("kind");
  });

  it("comes again after going back and answering the one before", () => {
    const dialog = new Dialog()
      .say("petrol ride-on mower, one click, lights stay bright")
      .press("All is safe")
      .press("Yes, beside it")
      .press("Nothing more");
    const first = asking(dialog);
    dialog.press(dialog.labels()[0] ?? "");
    const second = asking(dialog);
    dialog.press("More …").press("Go back one question");
    expect(asking(dialog)).toEqual(first);
    dialog.press(dialog.labels()[0] ?? "");
    expect(asking(dialog)).toEqual(second);
  });
});

describe("a pause", () => {
  const paused = () => underWay().press("More …").press("Pause");

  it("ends with an answer by button, which counts", () => {
    const dialog = underWay();
    const answer = dialog.pressOf(dialog.labels()[0] ?? "");
    dialog.press("More …").press("Pause").send({ kind: "press", press: answer });
    expect(dialog.state.interview).toBe("running");
    expect(dialog.state.open.operator?.revision).not.toBe(answer.revision);
  });

  it("does not swallow what ends it", () => {
    expect(paused().say("the battery is at 12.4 V at rest").state.answers).toEqual(
      expect.arrayContaining([
        expect.objectContaining({
          report: expect.objectContaining({ observation: "battery-rest-volts" }),
        }),
      ]),
    );
    expect(paused().say("I want to talk to a person").state.personWanted).toBe(true);
    expect(paused().say("stop").state.closed?.end).toBe("called-off");
  });
});

describe("the greeting", () => {
  it.each(["back", "more", "/more"])("comes first whatever is written: %s", (text) => {
    const dialog = new Dialog().say(text);
    expect(asking(dialog)?.about).toBe("safety");
  });

  it("lets a person be asked for by the first command", () => {
    const dialog = new Dialog().send({ kind: "command", name: "person", argument: "" });
    expect(dialog.state.personWanted).toBe(true);
  });
});
