import { describe, expect, it } from "vitest";
import { Dialog, settings } from "../helpers/dialog.ts";

const ended = () =>
  new Dialog()
    .say("diesel compact tractor, one click, lights stay bright, it can wait")
    .press("All is safe")
    .happened({ type: "interview.ended", because: "not-worth-asking" }, { type: "shop.told" });

/** Goes on to the last message. */
function toTheEnd(dialog: Dialog): Dialog {
  dialog.send({ kind: "location", latitude: 52, longitude: 5 });
  for (let n = 0; n < 6 && dialog.state.open.operator !== null; n += 1) dialog.press("Skip this");
  return dialog;
}

describe("the summary to pass on", () => {
  it("holds machine, complaint, what was told, and the shop, and no buttons", () => {
    const dialog = toTheEnd(ended());
    dialog.press("Summary to pass on");
    const text = dialog.last();
    for (const part of [dialog.state.id, "Compact tractor", "One click", settings.phone]) {
      expect(text).toContain(part);
    }
    expect(dialog.shown.at(-1)?.rendered.buttons).toEqual([]);
  });

  it("can be had more than once, and changes nothing", () => {
    const dialog = toTheEnd(ended());
    const before = dialog.state;
    dialog.press("Summary to pass on").press("Summary to pass on");
    expect(dialog.state).toEqual(before);
  });
});
