import { describe, expect, it } from "vitest";
import { openOffice } from "../helpers/office-desk.ts";

const toastKey = (received: { toast?: unknown }) => received.toast;
const NOT_ALLOWED = { key: "not-allowed" };
const OPERATOR = "9";
const STRANGER = "8";
const [OWNER, DISPATCHER, TECHNICIAN, OTHER] = ["1", "2", "3", "4"];

/** A case that was handed to a technician. */
async function handed() {
  const office = await openOffice();
  await office.say(OPERATOR, "petrol garden tractor, one click, lights stay bright");
  const id = office.directory.cases({})[0]?.id ?? "";
  await office.pressIn(DISPATCHER, id, "assign", { value: TECHNICIAN });
  return { office, id };
}

describe("who may do what, tried the forbidden way", () => {
  it("believes no button whose data was forged", async () => {
    const { office } = await handed();
    expect(toastKey(await office.press(DISPATCHER, null))).toEqual(NOT_ALLOWED);
  });

  it.each([
    ["a stranger", STRANGER],
    ["the operator", OPERATOR],
    ["a technician who was not handed it", OTHER],
    ["the technician who was", TECHNICIAN],
  ])("lets %s do nothing with a button of the counter that was passed on", async (_, who) => {
    const { office, id } = await handed();
    const old = ["take-back", "assign", "end", "book", "merge", "pay", "ask", "history"];
    for (const act of [...old, "help", "mark", "unmark", "sticker", "pass", "noticed"]) {
      const before = await office.state(id);
      await office.pressIn(who, id, act, { revision: 1, value: "called-off" });
      expect(await office.state(id), act).toEqual(before);
    }
  });

  it.each([
    ["a stranger", STRANGER],
    ["the operator", OPERATOR],
    ["the dispatcher", DISPATCHER],
    ["another technician", OTHER],
  ])("lets %s do nothing with a button of the visit", async (_, who) => {
    const { office, id } = await handed();
    const visit = ["begin", "found", "short", "record", "sheet", "set-out", "reading-of"];
    for (const act of [...visit, "result", "cause", "undo", "skip-step"]) {
      const before = await office.state(id);
      expect(toastKey(await office.pressIn(who, id, act)), act).toEqual(NOT_ALLOWED);
      expect(await office.state(id), act).toEqual(before);
    }
  });

  it("shows nobody a case whose number they guessed", async () => {
    const { office, id } = await handed();
    await office.say(STRANGER, "my mower does nothing");
    const before = (await office.heard(STRANGER)).length;
    for (const act of [
      "slip",
      "files",
      "paper",
      "sheet",
      "causes",
      "circuit",
      "answer",
      "more",
      "reopen",
    ]) {
      await office.pressIn(STRANGER, id, act);
    }
    expect(await office.heard(STRANGER)).toHaveLength(before);
  });

  it("takes from the technician where the probes were, and from nobody else of the shop", async () => {
    const { office, id } = await handed();
    await office.pressIn(TECHNICIAN, id, "begin");
    await office.say(TECHNICIAN, "battery 12.6 V at rest");
    const places = async () =>
      (await office.state(id)).answers.map(({ report }) => report.probes).filter(Boolean);
    const value = "battery-rest-volts:clamp";
    for (const who of [OTHER, DISPATCHER, STRANGER]) {
      await office.pressIn(who, id, "probes", { value });
      expect(await places(), who).toEqual([]);
    }
    await office.pressIn(TECHNICIAN, id, "probes", { value });
    expect(await places()).toEqual(["clamp"]);
  });

  it("takes everything from somebody who was taken out of the shop, at once", async () => {
    const { office, id } = await handed();
    await office.press(OWNER, { revision: 0, act: "change-member", value: `${TECHNICIAN}:out` });
    await office.press(OWNER, { revision: 0, act: "change-member", value: `${DISPATCHER}:out` });
    const before = await office.state(id);
    await office.pressIn(TECHNICIAN, id, "begin");
    await office.pressIn(DISPATCHER, id, "take-back", { revision: 1 });
    expect(await office.state(id)).toEqual(before);
  });

  it("asks before somebody is taken out", async () => {
    const { office } = await handed();
    const value = `${TECHNICIAN}:out?`;
    await office.press(OWNER, { revision: 0, act: "change-member", value });
    expect((await office.heard(OWNER)).at(-1)).toContain("Take Ilse out of the shop?");
    expect(office.directory.shop()?.members).toHaveLength(4);
  });

  it("answers in words when somebody who was taken out still writes about their case", async () => {
    const { office, id } = await handed();
    await office.press(OWNER, { revision: 0, act: "change-member", value: `${TECHNICIAN}:out` });
    const before = await office.state(id);
    await office.say(TECHNICIAN, "12.6 V at the battery");
    const answer = (await office.heard(TECHNICIAN)).at(-1) ?? "";
    expect(answer).toContain("do not belong to the people of Hill Farm workshop any more");
    expect(answer).toContain("555 0100");
    expect(await office.state(id)).toEqual(before);
  });

  it("still takes what they report as an operator of their own machine", async () => {
    const { office } = await handed();
    await office.press(OWNER, { revision: 0, act: "change-member", value: `${TECHNICIAN}:out` });
    await office.command(TECHNICIAN, "new");
    await office.say(TECHNICIAN, "my ride-on mower does nothing");
    expect(office.directory.cases({ operator: TECHNICIAN })).toHaveLength(1);
  });

  it("tells whoever is taken out, and gives their cases back to the counter", async () => {
    const { office, id } = await handed();
    await office.press(OWNER, { revision: 0, act: "change-member", value: `${TECHNICIAN}:out` });
    expect((await office.heard(TECHNICIAN)).at(-1)).toContain("do not belong");
    await office.carryOver();
    expect((await office.state(id)).technician).toBeNull();
    expect((await office.heard(DISPATCHER)).join("\n")).toContain(
      `Ilse is not in the shop any more: case ${id}`,
    );
  });

  it("lets nobody but the owner change who belongs to the shop, and nobody put the owner out", async () => {
    const { office } = await handed();
    const change = (who: string, value: string) =>
      office.press(who, { revision: 0, act: "change-member", value });
    await change(DISPATCHER, `${TECHNICIAN}:out`);
    await change(TECHNICIAN, `${TECHNICIAN}:dispatcher`);
    await change(STRANGER, `${TECHNICIAN}:out`);
    await change(OWNER, `${OWNER}:out`);
    expect(office.directory.shop()?.members.map((one) => one.role)).toEqual([
      ...["owner", "dispatcher", "technician", "technician"],
    ]);
  });

  it("politely refuses to make a strange group its counter, and is silent there otherwise", async () => {
    const { office } = await handed();
    const inGroup = (from: string, what: Parameters<typeof office.send>[1]) =>
      office.send(from, what, false);
    await inGroup(STRANGER, { kind: "text", text: "my mower does nothing" });
    expect(await office.heard("-100")).toEqual([]);
    await inGroup(STRANGER, { kind: "command", name: "counter", argument: "" });
    expect((await office.heard("-100")).join()).toContain("only in the shop's own group");
    expect(office.directory.cases({ operator: STRANGER })).toEqual([]);
    await inGroup(OWNER, { kind: "command", name: "counter", argument: "" });
    expect(await office.heard("-100")).toHaveLength(2);
  });

  it("knows who has blocked the bot, and writes again to whoever came back", async () => {
    const { office, id } = await handed();
    await office.send(OPERATOR, { kind: "reachable", reachable: false });
    expect(office.directory.person(OPERATOR)?.reachable).toBe(false);
    expect((await office.state(id)).closed).toBeNull();
    await office.send(OPERATOR, { kind: "reachable", reachable: true });
    expect(office.directory.person(OPERATOR)?.reachable).toBe(true);
  });

  it("opens the shop's lists to its own people only", async () => {
    const { office } = await handed();
    for (const [who, name] of [
      [STRANGER, "calls"],
      [TECHNICIAN, "calls"],
      [TECHNICIAN, "report"],
      [OPERATOR, "find"],
    ] as const) {
      await office.command(who, name, "garden");
      const last = (await office.heard(who)).at(-1) ?? "";
      expect(last, `${who} ${name}`).not.toMatch(/C\d|open call|closed/);
    }
  });

  it("gives an invite's role once", async () => {
    const office = await openOffice();
    await office.press(OWNER, { revision: 0, act: "invite", value: "technician" });
    const link = (await office.heard(OWNER)).join("\n").match(/token-\d+/)?.[0] ?? "";
    await office.command("5", "start", link);
    await office.command("6", "start", link);
    const members = office.directory.shop()?.members.map((one) => one.person);
    expect(members).toContain("5");
    expect(members).not.toContain("6");
  });
});

describe("photos of a technician", () => {
  const photo = (id: string) => ({ kind: "file", file: { id, kind: "photo" } }) as const;
  const filesOf = async (office: Awaited<ReturnType<typeof openOffice>>, id: string) =>
    (await office.state(id)).files.map((one) => one.file.id);

  it("still go to the case they closed, until the day is over", async () => {
    const { office, id } = await handed();
    await office.pressIn(DISPATCHER, id, "end", { value: "collected" });
    await office.send(TECHNICIAN, photo("late"));
    expect(await filesOf(office, id)).toEqual(["late"]);
    expect((await office.heard(TECHNICIAN)).at(-1)).toContain(`Kept with case ${id}`);
    await office.wait(13 * 60 * 60 * 1000);
    await office.send(TECHNICIAN, photo("much later"));
    expect(await filesOf(office, id)).toEqual(["late"]);
  });

  it("go to the machine they are at, where they are at one", async () => {
    const { office, id } = await handed();
    await office.say("7", "diesel compact tractor, one click, lights stay bright");
    const [other] = office.directory.cases({ operator: "7" });
    await office.pressIn(DISPATCHER, other?.id ?? "", "assign", { value: TECHNICIAN });
    await office.pressIn(DISPATCHER, id, "end", { value: "collected" });
    await office.send(TECHNICIAN, photo("of the first"));
    await office.pressIn(TECHNICIAN, other?.id ?? "", "begin");
    await office.send(TECHNICIAN, photo("of the second"));
    expect(await filesOf(office, id)).toEqual(["of the first"]);
    expect(await filesOf(office, other?.id ?? "")).toEqual(["of the second"]);
  });
});

describe("a call by phone", () => {
  const NOTE = "Miller, baler tractor, only clicks, lights bright, lower meadow";
  async function called() {
    const office = await openOffice();
    await office.command(DISPATCHER, "call", NOTE);
    return { office, id: office.directory.cases({})[0]?.id ?? "" };
  }

  it("becomes a case with what was understood and the next questions to read aloud", async () => {
    const { office, id } = await called();
    const state = await office.state(id);
    expect(state.answers.map((one) => one.report.observation)).toContain("lights-on");
    expect(state.shopSaw).toBe(DISPATCHER);
    const reply = (await office.heard(DISPATCHER)).join("\n");
    expect(reply).toContain("Read aloud");
    expect(reply).toContain("3.");
  });

  it("takes the answers in one line, in the order in which the questions stood", async () => {
    const { office, id } = await called();
    await office.say(DISPATCHER, "all is safe, utility tractor, diesel");
    const { safety, machine } = await office.state(id);
    expect(safety).toBe("clear");
    expect(machine).toMatchObject({ kind: "utility-tractor" });
  });

  it("lets the operator into the case by a link that works once", async () => {
    const { office, id } = await called();
    await office.pressIn(DISPATCHER, id, "start-link");
    const token = (await office.heard(DISPATCHER)).join("\n").match(/token-\d+/)?.[0] ?? "";
    await office.command(OPERATOR, "start", token);
    await office.command(STRANGER, "start", token);
    expect((await office.state(id)).operator).toMatchObject({ id: OPERATOR, chat: OPERATOR });
    expect((await office.heard(STRANGER)).join("\n")).toContain("used up");
  });

  it("is opened by nobody outside the shop", async () => {
    const office = await openOffice();
    await office.command(TECHNICIAN, "call", NOTE);
    expect(office.directory.cases({})).toEqual([]);
  });
});

describe("a question of the shop", () => {
  it("comes back to the dispatcher who asked, as the operator's own words", async () => {
    const { office, id } = await handed();
    await office.pressIn(DISPATCHER, id, "ask");
    await office.say(DISPATCHER, "Is the fuel tap open?");
    expect((await office.heard(OPERATOR)).at(-1)).toContain("Is the fuel tap open?");
    await office.say(OPERATOR, "yes it is open");
    const heard = (await office.heard(DISPATCHER)).join("\n");
    expect(heard).toContain("yes it is open");
    expect((await office.state(id)).askedBack).toBeNull();
  });
});

describe("the list of calls", () => {
  it("marks what changed since the dispatcher last looked", async () => {
    const { office, id } = await handed();
    await office.pressIn(OPERATOR, id, "person");
    await office.command(DISPATCHER, "calls");
    expect(office.directory.person(DISPATCHER)?.lookedAt).toBeDefined();
  });

  it("finds a case by a word", async () => {
    const { office, id } = await handed();
    await office.command(DISPATCHER, "find", "garden");
    expect((await office.heard(DISPATCHER)).at(-1)).toContain("One case found");
    await office.command(DISPATCHER, "find", id);
    expect((await office.heard(DISPATCHER)).at(-1)).toContain("One case found");
  });
});

describe("what the operator hears of the visit", () => {
  it("is that somebody is at the machine, once", async () => {
    const { office, id } = await handed();
    await office.pressIn(TECHNICIAN, id, "begin");
    await office.pressIn(TECHNICIAN, id, "begin");
    const told = (await office.heard(OPERATOR)).filter((text) => text.includes("at your machine"));
    expect(told).toHaveLength(1);
  });
});
