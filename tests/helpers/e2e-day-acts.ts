import type { Day, Phone } from "./e2e-day.ts";
import { GOOD_RESULTS } from "./hand-back.ts";

/** What people do on a day in the shop, one act a call. */
export function actsOf(day: Day) {
  /** Somebody reports a machine and answers the first question. @returns the case's number */
  async function reports(operator: Phone, words: string, safety = "All is safe"): Promise<string> {
    const before = new Set(day.cases().map((one) => one.id));
    await operator.say(words);
    await operator.press(safety);
    const id = day.cases().find((one) => !before.has(one.id))?.id;
    if (id === undefined) throw new Error(`No case was opened:\n${operator.told()}`);
    return id;
  }

  /** ... and is put through to the counter. */
  async function calls(name: string, words: string): Promise<{ operator: Phone; id: string }> {
    const operator = day.phone(name);
    const id = await reports(operator, words);
    await operator.say("I want to talk to a person");
    return { operator, id };
  }

  async function handTo(dispatcher: Phone, id: string, technician: RegExp): Promise<void> {
    await dispatcher.press("Hand to a technician", id);
    await dispatcher.press(technician, `Who takes case ${id}?`);
  }

  /** The repair is done, it runs, and it goes back safely. */
  const closes = (technician: Phone, id: string) =>
    technician.pressUntil(`Case ${id} is closed`, [
      "Done – it runs",
      "Yes, all of it",
      ...GOOD_RESULTS,
    ]);

  async function repairs(technician: Phone, id: string, minutes: number): Promise<string> {
    await technician.press("Start at the machine", id);
    await day.later(minutes);
    await technician.press("I found the cause");
    const cause = await technician.press(/\(\d+%\)$/, "Which was the cause?");
    await closes(technician, id);
    return cause;
  }

  const eventsOf = (id: string) => day.cases().find((one) => one.id === id)?.events ?? [];
  const typesOf = (id: string) => eventsOf(id).map((one) => one.type);
  const endOf = (id: string) => eventsOf(id).findLast((one) => one.type === "case.closed")?.["end"];

  async function endsAs(dispatcher: Phone, id: string, how: string): Promise<void> {
    await dispatcher.press("More acts …", id);
    await dispatcher.press("Close the case", `Case ${id}: what next?`);
    await dispatcher.press(how, "How did it end?");
  }

  return { reports, calls, handTo, closes, repairs, eventsOf, typesOf, endOf, endsAs };
}
