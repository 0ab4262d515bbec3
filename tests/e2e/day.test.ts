import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { reportCommand } from "../../src/commands/report.ts";
import { runCommand } from "../helpers/command-io.ts";
import { Day, type Phone } from "../helpers/e2e-day.ts";
import { actsOf } from "../helpers/e2e-day-acts.ts";
import { comparable, recomputedReport } from "../helpers/recomputed-report.ts";

const MOST_MILLISECONDS = 150_000;
const CLICK = "Diesel compact tractor won't start. One click every time, lights stay bright";

let day: Day;
let acts: ReturnType<typeof actsOf>;
let bo: Phone;
let phones: Record<"jonas" | "petra" | "ilse" | "tomas" | "rahel", Phone>;

beforeAll(async () => {
  day = await Day.open();
  acts = actsOf(day);
  const [jonas, petra] = [day.phone("Jonas"), day.phone("Petra")];
  const [ilse, tomas, rahel] = [day.phone("Ilse"), day.phone("Tomas"), day.phone("Rahel")];
  phones = { jonas, petra, ilse, tomas, rahel };
  await day.seat(jonas, [
    [petra, "dispatcher"],
    ...[ilse, tomas, rahel].map((one) => [one, "technician"] as const),
  ]);
}, MOST_MILLISECONDS);
afterAll(() => day.close());

const SAYS_NOTHING = "My petrol garden tractor does nothing at all when I turn the key";
const AT_THE_MACHINE = [
  ...["Yes, beside it", "Every time", "Done", "Then it started"],
  ...["I don't know", "Skip this", "None of these", "Nothing more", "Go on"],
];

describe("a day of the shop", () => {
  it(
    "ends two calls by chat: the controls were moved, and it started",
    async () => {
      for (const name of ["Marit", "Cem"]) {
        const operator = day.phone(name);
        const id = await acts.reports(operator, SAYS_NOTHING);
        await operator.pressUntil("Good, it runs", AT_THE_MACHINE);
        expect(acts.endOf(id)).toBe("solved-by-chat");
      }
    },
    MOST_MILLISECONDS,
  );

  it(
    "lets one of two dispatchers who act at once have the case, and tells the other",
    async () => {
      const { jonas, petra } = phones;
      const { operator, id } = await acts.calls("Bo", CLICK);
      bo = operator;
      for (const one of [jonas, petra]) one.tap("I look after it", id);
      await day.later(1);
      expect(acts.typesOf(id).filter((type) => type === "shop.saw")).toHaveLength(1);
      for (const one of [jonas, petra]) await one.press("Hand to a technician", id);
      jonas.tap(/^Ilse/, id);
      petra.tap(/^Tomas/, id);
      await day.later(1);
      const assigned = acts.eventsOf(id).filter((one) => one.type === "case.assigned");
      expect(assigned).toHaveLength(1);
      const name = String(assigned[0]?.["name"]);
      const told = [...jonas.toasts, ...petra.toasts];
      expect(told).toContain(`Handed to ${name}`);
      expect(told).toContain(`${name} has case ${id} now`);
      expect(told.filter((one) => one.endsWith("looks after it"))).toHaveLength(1);
      await acts.repairs(name === "Ilse" ? phones.ilse : phones.tomas, id, 35);
      await operator.sees(`Case ${id} is closed. It was:`);
    },
    MOST_MILLISECONDS,
  );

  it(
    "stops at a danger, tells both dispatchers, and goes on when one has seen it",
    async () => {
      const { jonas, petra, rahel } = phones;
      const operator = day.phone("Edda");
      const id = await acts.reports(operator, CLICK, "Smell or puddle of fuel");
      await operator.sees("Do not turn the key");
      for (const one of [jonas, petra]) await one.sees(`Danger in case ${id}`);
      await petra.press("Seen", id);
      await operator.sees("Petra has read your message about the danger.");
      await operator.press("It is safe now, go on");
      await acts.handTo(petra, id, /^Rahel/);
      await acts.repairs(rahel, id, 50);
      expect(acts.typesOf(id)).toEqual(expect.arrayContaining(["flag.raised", "flag.seen"]));
    },
    MOST_MILLISECONDS,
  );

  it(
    "makes one of two calls about one trouble",
    async () => {
      const { jonas } = phones;
      const [first, second] = [await acts.calls("Fritz", CLICK), await acts.calls("Gesa", CLICK)];
      await jonas.press("More acts …", second.id);
      await jonas.press("Same trouble as another case", `Case ${second.id}: what next?`);
      await jonas.press(new RegExp(`^${first.id} `), `trouble as ${second.id}`);
      await jonas.press("Yes, they are one", second.id);
      expect(acts.endOf(second.id)).toBe("duplicate");
      expect(acts.typesOf(first.id)).toContain("case.took-in");
      await second.operator.sees(`Case ${second.id} goes on as case ${first.id}.`);
      await acts.endsAs(jonas, first.id, "solved by chat");
      expect(acts.endOf(first.id)).toBe("solved-by-chat");
    },
    MOST_MILLISECONDS,
  );

  it(
    "keeps two faults of one machine",
    async () => {
      const { petra, tomas } = phones;
      const { id } = await acts.calls(
        "Hugo",
        "Diesel utility tractor turns very slowly, we had frost",
      );
      await acts.handTo(petra, id, /^Tomas/);
      await tomas.press("Start at the machine", id);
      await tomas.say("battery 11.6 V at rest");
      await day.later(70);
      await tomas.press("I found the cause");
      await tomas.press(/^Battery .*%\)$/);
      await acts.closes(tomas, id);
      await tomas.press("There was another cause too", id);
      await tomas.press(/^(?!✓|Done)/, "What else was wrong?");
      await tomas.press("Done", "What else was wrong?");
      await tomas.press("45 min", id);
      const confirmed = acts.eventsOf(id).findLast((one) => one.type === "cause.confirmed");
      expect(confirmed?.["faults"]).toHaveLength(2);
    },
    MOST_MILLISECONDS,
  );

  it(
    "takes a call by phone, asks what is to be asked, and repairs it",
    async () => {
      const { petra, ilse } = phones;
      const before = new Set(day.cases().map((one) => one.id));
      await petra.say(
        "/call Miller, diesel baler tractor, only clicks once, lights bright, meadow",
      );
      const id = day.cases().find((one) => !before.has(one.id))?.id ?? "none";
      await petra.sees(`Case ${id}, by phone`);
      await petra.say("over 12 volts at the battery");
      await acts.handTo(petra, id, /^Ilse/);
      await ilse.sees(`Case ${id}`);
      await acts.repairs(ilse, id, 25);
      expect(acts.endOf(id)).toBe("visit");
    },
    MOST_MILLISECONDS,
  );

  it(
    "drives twice for a part that was missing",
    async () => {
      const { jonas, rahel } = phones;
      const { operator, id } = await acts.calls("Ivo", CLICK);
      await acts.handTo(jonas, id, /^Rahel/);
      await rahel.press("Start at the machine", id);
      await day.later(20);
      await rahel.press("Something is missing: second visit");
      const part = await rahel.press(/./, "What is missing for the second visit?");
      await operator.sees(`a second visit is needed. To be brought: ${part}`);
      await jonas.press("More acts …", id);
      await jonas.press("Book a visit", `Case ${id}: what next?`);
      await jonas.say("14-16");
      await operator.sees("comes");
      await day.later(180);
      await acts.repairs(rahel, id, 40);
      expect(acts.typesOf(id).filter((type) => type === "visit.started")).toHaveLength(2);
    },
    MOST_MILLISECONDS,
  );

  it.each([
    ["Juno", "machine collected or brought in", "collected"],
    ["Kai", "nothing found", "nothing-found"],
    ["Nora", "sent on to somebody else", "referred"],
  ])("ends the call of %s: %s", async (name, how, end) => {
    const { operator, id } = await acts.calls(name, CLICK);
    await acts.endsAs(phones.petra, id, how);
    expect(acts.endOf(id)).toBe(end);
    await operator.sees(`Case ${id} is closed: ${how}.`);
  });

  it("lets an operator call it off", async () => {
    const operator = day.phone("Lars");
    const id = await acts.reports(operator, CLICK);
    await operator.press(/^More/);
    await operator.press("Stop, I need no help");
    expect(acts.endOf(id)).toBe("called-off");
  });

  it(
    "repairs a machine that came back after three days",
    async () => {
      const { jonas, ilse } = phones;
      await day.later(3 * 24 * 60);
      const id = await acts.reports(bo, CLICK);
      await bo.say("I want to talk to a person");
      await acts.handTo(jonas, id, /^Ilse/);
      expect(await acts.repairs(ilse, id, 35)).toMatch(/^Solenoid contacts burnt/);
      await bo.sees(`Case ${id} is closed. It was:`);
    },
    MOST_MILLISECONDS,
  );
});

describe("the report at the end of the day", () => {
  it("says what the stored events come to when they are added up independently", async () => {
    vi.stubEnv("TURNROW_DATA", day.data);
    const { code, stdout } = await runCommand(reportCommand, ["--json"]);
    vi.unstubAllEnvs();
    expect(code).toBe(0);
    const again = recomputedReport(day.cases());
    expect(comparable(JSON.parse(stdout))).toEqual(comparable(again));
  });

  it("counts this day as it went", () => {
    expect(recomputedReport(day.cases())).toMatchObject({
      ...{ cases: 14, open: 0, closed: 14, secondTrips: 1, comebacks: 1 },
      byEnd: { "solved-by-chat": 3, visit: 6, duplicate: 1, "called-off": 1, referred: 1 },
      solvedByChat: { value: 3 / 12, of: 12 },
      firstVisitFix: { value: 4 / 6, of: 6 },
      minutes: { visits: 6 },
    });
  });

  it("stands in the chat for the owner, and for no technician", async () => {
    await phones.jonas.say("/report");
    await phones.jonas.sees("0 open, 14 closed");
    const { text = "" } = phones.jonas.messages().at(-1) ?? {};
    expect(text).toContain("Solved by chat: 25% of 12");
    expect(text).toContain("Fixed on the first visit: 67% of 6");
    expect(text).toContain("Came back within 30 days: 1");
    await phones.ilse.say("/report");
    expect(phones.ilse.told()).not.toContain("14 closed");
  });

  it("came about without anything that the chat service refused", () => {
    expect(day.logged).toEqual([]);
  });
});
