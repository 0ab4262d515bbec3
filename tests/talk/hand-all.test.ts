import { describe, expect, it } from "vitest";
import { openOffice } from "../helpers/office-desk.ts";

const [OWNER, DISPATCHER, TECHNICIAN] = ["1", "2", "3"];
const handAll = (to: string) => ({ revision: 0, act: "hand-all", value: to });

/** Two cases that the dispatcher looks after, and one that nobody does. */
async function shift() {
  const office = await openOffice();
  const ids: string[] = [];
  for (const person of ["7", "8", "9"]) {
    await office.say(person, "petrol garden tractor, one click, lights stay bright");
    const [own] = office.directory.cases({ operator: person });
    ids.push(own?.id ?? "");
  }
  const [first = "", second = "", third = ""] = ids;
  await office.pressIn(DISPATCHER, first, "noticed");
  await office.pressIn(DISPATCHER, second, "noticed");
  return { office, first, second, third };
}

describe("handing over at the end of a shift", () => {
  it("gives everything that one looks after to another, who gets the list of it", async () => {
    const { office, first, second, third } = await shift();
    await office.command(DISPATCHER, "handover");
    expect((await office.heard(DISPATCHER)).at(-1)).toContain("the 2 cases that you look after");
    await office.press(DISPATCHER, handAll(OWNER));
    await office.carryOver();
    expect((await office.state(first)).shopSaw).toBe(OWNER);
    expect((await office.state(second)).shopSaw).toBe(OWNER);
    expect((await office.state(third)).shopSaw).toBeNull();
    expect((await office.heard(OWNER)).join("\n")).toContain("Jonas has handed 2 cases to you");
    expect((await office.state(first)).history.at(-1)).toMatchObject({
      type: "case.passed-on",
      by: DISPATCHER,
    });
  });

  it("can be handed back the same way, and does nothing twice", async () => {
    const { office, first } = await shift();
    await office.press(DISPATCHER, handAll(OWNER));
    await office.carryOver();
    await office.carryOver();
    const passes = async () =>
      (await office.state(first)).history.filter((one) => one.type === "case.passed-on").length;
    expect(await passes()).toBe(1);
    await office.press(OWNER, handAll(DISPATCHER));
    await office.carryOver();
    expect((await office.state(first)).shopSaw).toBe(DISPATCHER);
    expect(await passes()).toBe(2);
  });

  it("leaves a case alone that somebody else took in between", async () => {
    const { office, first } = await shift();
    await office.press(DISPATCHER, handAll(OWNER));
    await office.pressIn(DISPATCHER, first, "end", { value: "called-off" });
    await office.carryOver();
    expect((await office.state(first)).shopSaw).toBe(DISPATCHER);
  });

  it("is nothing for technicians, neither to hand over nor to get", async () => {
    const { office, first } = await shift();
    await office.press(TECHNICIAN, handAll(OWNER));
    await office.press(DISPATCHER, handAll(TECHNICIAN));
    await office.carryOver();
    expect((await office.state(first)).shopSaw).toBe(DISPATCHER);
  });
});
