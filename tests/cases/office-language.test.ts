import { describe, expect, it } from "vitest";
import { openOffice } from "../helpers/office-desk.ts";

const OPERATOR = "9";

/** An operator with an open question, in a shop that speaks two languages. */
async function asked() {
  const office = await openOffice(["en", "es"]);
  await office.say(OPERATOR, "petrol garden tractor, one click, lights stay bright");
  const id = office.directory.cases({})[0]?.id ?? "";
  return { office, id };
}

describe("the language of a person", () => {
  it("changes by a tap, in their cases as well, and the open question comes in it", async () => {
    const { office, id } = await asked();
    const before = (await office.heard(OPERATOR)).length;
    await office.press(OPERATOR, { revision: 0, act: "language", value: "es" });
    expect((await office.state(id)).operator.language).toBe("es");
    expect(office.directory.person(OPERATOR)?.language).toBe("es");
    expect((await office.heard(OPERATOR)).length).toBe(before + 1);
    expect((await office.state(id)).open.operator?.asking.about).toBe("safety");
  });

  it("stays what it is where the shop does not speak the other", async () => {
    const { office, id } = await asked();
    await office.press(OPERATOR, { revision: 0, act: "language", value: "de" });
    expect((await office.state(id)).operator.language).toBe("en");
    expect(office.directory.person(OPERATOR)?.language).toBe("en");
  });
});
