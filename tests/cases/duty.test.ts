import { describe, expect, it } from "vitest";
import { openOffice } from "../helpers/office-desk.ts";

const [OWNER, DISPATCHER, TECHNICIAN] = ["1", "2", "3"];
const press = (value: string) => ({ revision: 0, act: "duty", value });

describe("the duty roster", () => {
  it("is set by a person and a span, and both are told", async () => {
    const office = await openOffice();
    await office.command(DISPATCHER, "duty");
    expect((await office.heard(DISPATCHER)).at(-1)).toContain("Nobody has the call-outs now");
    await office.press(DISPATCHER, press(TECHNICIAN));
    expect((await office.heard(DISPATCHER)).at(-1)).toContain("For how long shall Ilse");
    await office.press(DISPATCHER, press(`${TECHNICIAN}:week`));
    expect((await office.heard(DISPATCHER)).at(-1)).toContain("Ilse has the call-outs");
    expect((await office.heard(TECHNICIAN)).at(-1)).toContain("You have the call-outs");
    await office.command(TECHNICIAN, "duty");
    expect((await office.heard(TECHNICIAN)).at(-1)).toContain("Ilse has the call-outs until");
  });

  it("takes hours that were typed, and says how they are written where it takes none", async () => {
    const office = await openOffice();
    await office.command(DISPATCHER, "duty", "Ilse tonight");
    expect((await office.heard(DISPATCHER)).at(-1)).toContain("/duty Jonas 17:00-22:00");
    expect(office.directory.shop()?.duty).toBeUndefined();
    await office.command(DISPATCHER, "duty", "Ilse 00:00-23:59");
    expect((await office.heard(DISPATCHER)).at(-1)).toContain("Ilse has the call-outs");
    expect((await office.heard(TECHNICIAN)).at(-1)).toContain("You have the call-outs");
    const [shift, ...more] = office.directory.shop()?.duty ?? [];
    expect(more).toEqual([]);
    expect(shift?.person).toBe(TECHNICIAN);
    expect((shift?.until ?? 0) - (shift?.from ?? 0)).toBe((24 * 60 - 1) * 60_000);
    await office.command(TECHNICIAN, "duty", "Jonas 00:00-23:59");
    expect((await office.heard(TECHNICIAN)).at(-1)).toContain("not yours");
    await office.command("9", "duty", "Ilse 00:00-23:59");
    expect(office.directory.shop()?.duty).toHaveLength(1);
  });

  it("is set by nobody but the counter", async () => {
    const office = await openOffice();
    for (const who of [TECHNICIAN, "9"]) await office.press(who, press(`${who}:week`));
    expect(office.directory.shop()?.duty).toBeUndefined();
  });

  it("outlives an invitation, and ends when nobody shall have them", async () => {
    const office = await openOffice();
    await office.press(OWNER, press(`${TECHNICIAN}:night`));
    await office.press(OWNER, { revision: 0, act: "invite", value: "technician" });
    expect(office.directory.shop()?.duty).toHaveLength(1);
    await office.press(OWNER, press("-"));
    await office.command(OWNER, "duty");
    expect((await office.heard(OWNER)).at(-1)).toContain("Nobody has the call-outs now");
  });

  it("lets a danger reach the technician who has the call-outs", async () => {
    const office = await openOffice();
    await office.press(OWNER, press(`${TECHNICIAN}:week`));
    await office.say("9", "petrol garden tractor, fuel is leaking and running out");
    const [known] = office.directory.cases({});
    expect(known?.alarm).toBe(true);
    expect((await office.heard(TECHNICIAN)).join("\n")).toContain("Danger in case");
    await office.pressIn(TECHNICIAN, known?.id ?? "", "seen", {
      value: known?.flags[0]?.flag ?? "",
    });
    expect(office.directory.case(known?.id ?? "")?.alarm).toBe(false);
  });
});
