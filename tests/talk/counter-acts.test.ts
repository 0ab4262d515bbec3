import { describe, expect, it } from "vitest";
import type { OtherCase } from "../../src/talk/desk.ts";
import { Dialog } from "../helpers/dialog.ts";

const first = new Dialog().say("petrol garden tractor, one click, lights stay bright");
const standing = first.desk.triage(first.state, "technician");

const other = (more: Partial<OtherCase> = {}): OtherCase => ({
  id: "8KQ2",
  machine: { kind: "garden-tractor" },
  where: null,
  booked: null,
  visit: "assigned",
  operator: { id: "1", name: "Marit" },
  technician: { id: "3" },
  openedAt: 1_700_000_000_000,
  ...more,
});

function call(others: readonly OtherCase[] = []): Dialog {
  return new Dialog("en", { triage: () => standing, others: () => others })
    .say("petrol garden tractor, one click, lights stay bright")
    .press("All is safe")
    .press("More …")
    .press("Talk to a person");
}
const acts = (dialog: Dialog) => dialog.press("More acts …", "2");
const slip = (dialog: Dialog) =>
  dialog.shown.find((one) => one.slot === "slip-2")?.rendered.text ?? "";

describe("asking the operator", () => {
  it("passes the question on in words alone, and shows that no answer has come", () => {
    const dialog = acts(call()).press("Ask the operator", "2");
    dialog.say("Is the fuel tap open?", "2");
    expect(dialog.last("1")).toContain("Is the fuel tap open?");
    expect(dialog.last("1")).not.toMatch(/\b[23]\b/);
    expect(dialog.state.askedBack?.by).toBe("2");
    expect(slip(dialog)).toContain("no answer yet");
  });

  it("asks for a photo", () => {
    const dialog = acts(call()).press("Ask for a photo", "2");
    expect(dialog.last("1")).toContain("photo");
    expect(dialog.state.askedBack?.photo).toBe(true);
  });

  it("lets the dispatcher leave it", () => {
    const dialog = acts(call()).press("Ask the operator", "2").press("Leave it", "2");
    dialog.say("not for the operator", "2");
    expect(dialog.last("1")).not.toContain("not for the operator");
    expect(dialog.state.notes.at(-1)?.text).toBe("not for the operator");
  });
});

describe("what was heard on the phone", () => {
  it("counts like answers at second hand", () => {
    const dialog = acts(call()).press("Add what was said on the phone", "2");
    dialog.say("the engine turns slowly now", "2");
    const heard = dialog.state.answers.at(-1);
    expect(heard?.report.reporter).toBe("second-hand");
    expect(dialog.state.prompt).toBeNull();
  });
});

describe("booking a visit", () => {
  const given = (others: readonly OtherCase[] = []) =>
    call(others).press("Hand to a technician", "2").press("Ilse", "2");
  const booked = (dialog: Dialog, typed: string) =>
    acts(dialog).press("Book a visit", "2").say(typed, "2");

  it("tells the operator, and gives the technician a calendar entry", () => {
    const dialog = booked(given(), "9-11");
    const { from = 0, until = 0 } = dialog.state.booked ?? {};
    expect(until - from).toBe(2 * 60 * 60 * 1000);
    expect(dialog.last("1")).toContain("09:00");
    const entry = dialog.shown.findLast((one) => one.rendered.paper !== undefined);
    expect(entry?.to).toBe("3");
    expect(entry?.rendered.paper?.paper).toMatchObject({ kind: "calendar", from, until });
  });

  it("refuses a time at which the technician is elsewhere, and says where", () => {
    const { from = 0, until = 0 } = booked(given(), "9-11").state.booked ?? {};
    const taken = other({ booked: { from, until } });
    const dialog = booked(
      call([taken]).press("Hand to a technician", "2").press("Ilse – one open job", "2"),
      "10-12",
    );
    expect(dialog.state.booked).toBeNull();
    expect(dialog.last("2")).toContain("8KQ2");
  });

  it("takes a booking back, in the calendar as well", () => {
    const dialog = booked(given(), "9-11");
    acts(dialog).press("Book a visit", "2").press("Take the booking back", "2");
    expect(dialog.state.booked).toBeNull();
    const entry = dialog.shown.findLast((one) => one.rendered.paper !== undefined);
    expect(entry?.rendered.paper?.paper).toMatchObject({ cancelled: true, sequence: 1 });
  });
});

describe("how a case ends at the counter", () => {
  it("closes it the way that was chosen, and opens it again", () => {
    const dialog = acts(call()).press("Close the case", "2").press("loan machine given", "2");
    expect(dialog.state.closed?.end).toBe("loan-machine");
    expect(dialog.last("1")).toContain("loan machine");
    dialog.press("Open the case again", "2");
    expect(dialog.state.closed).toBeNull();
    expect(dialog.last("1")).toContain("open again");
  });

  it("merges a case into another only after a second press, and tells that one what is known", () => {
    const dialog = acts(call([other()])).press("Same trouble as another case", "2");
    const choice = dialog.labels("2").find((label) => label.includes("8KQ2")) ?? "";
    dialog.press(choice, "2");
    expect(dialog.state.closed).toBeNull();
    dialog.press("Yes, they are one", "2");
    expect(dialog.state.closed?.end).toBe("duplicate");
  });

  it("merges with no case that is not there", () => {
    const dialog = acts(call()).press("Same trouble as another case", "2").say("zz99", "2");
    expect(dialog.last("2")).toContain("ZZ99");
    expect(dialog.state.closed).toBeNull();
  });

  it("notes who pays and whether the call-out charge is agreed", () => {
    const dialog = acts(call()).press("Who pays", "2").press("warranty – agreed", "2");
    expect(dialog.state.payment).toEqual({ payer: "warranty", agreed: true });
    expect(slip(dialog)).toContain("warranty");
  });
});

describe("two dispatchers at once", () => {
  it("lets the second one see what happened instead of moving the case once more", () => {
    const dialog = call().press("Hand to a technician", "2");
    const late = dialog.pressOf("Ilse", "2");
    dialog.press("Ilse", "2").press("Take back", "2");
    dialog.send({ kind: "press", press: late }, "2");
    expect(dialog.state.technician).toBeNull();
    expect(dialog.toast).toBe("Nobody has it");
  });

  it("keeps every act with who and when", () => {
    const dialog = call().press("Hand to a technician", "2").press("Ilse", "2");
    acts(dialog).press("History", "2");
    expect(dialog.last("2")).toContain("handed to a technician (Jonas)");
    expect(dialog.last("2")).toContain("opened (Marit)");
  });
});
