import { describe, expect, it } from "vitest";
import { openOffice } from "../helpers/office-desk.ts";

const OPERATOR = "9";

/** An operator whose case was called off, so that its machine is kept. */
async function withMachine() {
  const office = await openOffice();
  await office.say(OPERATOR, "diesel compact tractor, one click, lights stay bright");
  const id = office.directory.cases({})[0]?.id ?? "";
  await office.say(OPERATOR, "stop");
  await office.carryOver();
  return { office, id };
}

const last = async (office: Awaited<ReturnType<typeof openOffice>>) =>
  (await office.heard(OPERATOR)).at(-1) ?? "";
const own = (value: string) => ({ revision: 0, act: "own-machine", value });

describe("a person's own machines", () => {
  it("are listed, and shown with fuel and past cases", async () => {
    const { office, id } = await withMachine();
    await office.command(OPERATOR, "machines");
    expect(await last(office)).toContain("Your machines");
    await office.press(OPERATOR, own(id));
    expect(await last(office)).toContain("Runs on: Diesel");
    expect(await last(office)).toContain(id);
  });

  it("are put right by button and by word, and what is told is there the next time", async () => {
    const { office, id } = await withMachine();
    await office.press(OPERATOR, own(`${id}:volts:24`));
    await office.press(OPERATOR, own(`${id}:serial`));
    await office.say(OPERATOR, "CT 4711-B");
    await office.press(OPERATOR, own(`${id}:title`));
    await office.say(OPERATOR, "the little one");
    const [machine] = office.directory.person(OPERATOR)?.machines ?? [];
    expect(machine).toMatchObject({
      title: "the little one",
      facts: { kind: "compact-tractor", fuel: "diesel", volts: 24, serial: "CT 4711-B" },
    });
    await office.say(OPERATOR, "hello");
    const fresh = office.directory.cases({ operator: OPERATOR, open: true })[0]?.id ?? "";
    await office.pressIn(OPERATOR, fresh, "answer", { revision: 1, value: "clear" });
    expect(await last(office)).toContain("What kind of machine");
    await office.pressIn(OPERATOR, fresh, "answer", { revision: 2, value: "0" });
    expect((await office.state(fresh)).machine).toMatchObject({ volts: 24, serial: "CT 4711-B" });
  });

  it("take no value from outside that no machine has", async () => {
    const { office, id } = await withMachine();
    const before = office.directory.person(OPERATOR)?.machines;
    for (const change of ["volts:13", "fuel:coal", "constructor:x", ""]) {
      await office.press(OPERATOR, own(`${id}:${change}`));
    }
    expect(office.directory.person(OPERATOR)?.machines).toEqual(before);
  });

  it("leave the list when their owner says so", async () => {
    const { office, id } = await withMachine();
    await office.press(OPERATOR, own(`${id}:out`));
    expect(office.directory.person(OPERATOR)?.machines).toEqual([]);
  });

  it("are somebody's own: nobody changes another's", async () => {
    const { office, id } = await withMachine();
    await office.press("8", own(`${id}:out`));
    expect(office.directory.person(OPERATOR)?.machines).toHaveLength(1);
  });

  it("never stand in the way of a danger", async () => {
    const { office, id } = await withMachine();
    await office.press(OPERATOR, own(`${id}:title`));
    await office.say(OPERATOR, "there is fire and smoke, the tractor burns");
    const flagged = office.directory.cases({ operator: OPERATOR }).some((one) => one.alarm);
    expect(flagged).toBe(true);
  });
});

describe("commands written out as words", () => {
  it.each([
    ["forget", "Remove everything"],
    ["Forget me!", "Remove everything"],
    ["my machines", "No machine is kept"],
    ["language", "Which language"],
    ["export", "everything that is kept"],
    ["help", "tell me what your machine does"],
  ])("%s does what its command does", async (text, shown) => {
    const office = await openOffice();
    await office.say("7", text);
    expect((await office.heard("7")).at(-1)).toContain(shown);
    expect(office.directory.cases({ operator: "7" })).toEqual([]);
  });

  it("do it in the middle of a case too, which goes on", async () => {
    const office = await openOffice();
    await office.say(OPERATOR, "diesel compact tractor, one click");
    await office.say(OPERATOR, "forget");
    expect(await last(office)).toContain("Remove everything");
    const [open] = office.directory.cases({ operator: OPERATOR, open: true });
    expect((await office.state(open?.id ?? "")).open.operator?.asking.about).toBe("safety");
  });
});

describe("a copy of what is kept of a person", () => {
  it("holds their words, answers and machines, and nobody else's name", async () => {
    const { office, id } = await withMachine();
    await office.pressIn("2", id, "slip");
    await office.command(OPERATOR, "export");
    const text = await office.attached(OPERATOR);
    expect(text).toContain("one click, lights stay bright");
    expect(text).toContain("compact-tractor");
    expect(JSON.parse(text ?? "")).toMatchObject({ name: "Person 9", cases: [{ number: id }] });
    for (const other of ["Jonas", "Ilse", '"2"']) expect(text).not.toContain(other);
  });

  it("holds nothing any more once they were forgotten", async () => {
    const { office } = await withMachine();
    await office.press(OPERATOR, { revision: 0, act: "forget", value: "yes" });
    await office.command(OPERATOR, "export");
    expect(JSON.parse((await office.attached(OPERATOR)) ?? "")).toMatchObject({
      machines: [],
      cases: [],
    });
  });
});

describe("the language of somebody of the shop", () => {
  const [DISPATCHER, TECHNICIAN] = ["2", "3"];
  const german = { revision: 0, act: "language", value: "de" };

  it("is the one they chose last, at the counter and on the visit alike", async () => {
    const office = await openOffice(["en", "de"]);
    await office.say(OPERATOR, "petrol garden tractor, one click, lights stay bright");
    const id = office.directory.cases({})[0]?.id ?? "";
    await office.pressIn(DISPATCHER, id, "assign", { value: TECHNICIAN });
    for (const who of [DISPATCHER, TECHNICIAN]) {
      await office.say(who, "hello");
      await office.press(who, german);
    }
    await office.pressIn(DISPATCHER, id, "hand-over");
    expect((await office.heard(DISPATCHER)).at(-1)).toContain("Wer übernimmt");
    await office.pressIn(TECHNICIAN, id, "begin");
    expect((await office.state(id)).technician?.language).toBe("de");
    expect((await office.state(id)).operator.language).toBe("en");
    expect((await office.heard(TECHNICIAN)).at(-1)).toMatch(/Spannung|Vorsicht|Werkzeug/);
  });
});
