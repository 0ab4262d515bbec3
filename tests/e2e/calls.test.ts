import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { loadKnowledge } from "../../src/knowledge/load.ts";
import { isHandedOut, isPosted, Play, plainly, said } from "../helpers/e2e-play.ts";
import { killPrograms, programHome, removeFolder } from "../helpers/e2e-program.ts";

// Each call has a shop, a data folder and a process of its own. They run side by side, because most
// of their time is spent waiting for the pace at which messages may follow each other.
const MOST_MILLISECONDS = 170_000;

let home: string;
/** A fault's name as people read it. */
let title: (fault: string) => string;

beforeAll(async () => {
  home = programHome();
  const knowledge = await loadKnowledge("flows");
  if (!knowledge.ok) throw new Error(JSON.stringify(knowledge.problems));
  title = (fault) => knowledge.value.faults.get(fault)?.title ?? fault;
}, 90_000);
afterAll(() => {
  killPrograms();
  removeFolder(home);
});

/** A cause to choose from stands there with its chance. */
const starting = (words: string) => new RegExp(`^${words} \\(`);

const usual = [
  { press: "All is safe" },
  { press: "Yes, beside it" },
  { press: "Nothing more" },
  { press: "Every time" },
];

const withPhoto = [{ when: "send one photo", photo: true }, ...usual];

describe("a whole call through the chat, with the program killed in the middle of it", () => {
  it.concurrent(
    "single click, a corroded earth: the technician finds it",
    () =>
      Play.call(home, usual, async (call) => {
        const { operator, technician } = call;
        operator.say(
          "Diesel compact tractor won't start. One click every time, lights stay bright",
        );
        await operator.turn();
        await operator.asked();
        await operator.turn();
        await operator.asked();
        await call.killedWhen(isPosted("operator"), () => operator.turn());
        // The question came again: whoever answers both copies has answered once.
        const { text } = await operator.asked();
        const copies = operator.transcript.filter(
          (one) => one.buttons.length > 0 && one.text === text,
        );
        expect(copies).toHaveLength(2);
        await operator.pressAll(copies);
        await operator.asked();
        await call.killedOverMessage("resetBefore", () => operator.turn());
        operator.say("I want to talk to a person");
        await call.handOver();
        await technician.press("Start at the machine");
        await technician.press("Could not do it, next");
        await call.killedWhen(isHandedOut, () => technician.say("ground drop 1.4 V"));
        await technician.sees("Earth side bad");
        await technician.press("I found the cause");
        await technician.press(starting(title("earth-strap-corroded")));
        await technician.until("is closed");
        await operator.sees(`is closed. It was: ${title("earth-strap-corroded")}`);
        const { events, state } = await call.finish();
        expect(said(events, "on-start")).toEqual([plainly("one-click")]);
        expect(said(events, "lights-at-start")).toEqual([plainly("stay-bright")]);
        expect(said(events, "ground-drop-volts")).toEqual([{ kind: "value", value: 1.4 }]);
        expect(state.closed).toMatchObject({
          end: "visit",
          complaint: "one-click",
          cause: "earth-strap-corroded",
        });
        expect(state.closed?.correction).not.toBe("");
      }),
    MOST_MILLISECONDS,
  );

  it.concurrent(
    "nothing at all, the PTO engaged: moving the controls ends it by chat",
    () =>
      Play.call(
        home,
        [...withPhoto, { press: "Done" }, { press: "Then it started" }],
        async (call) => {
          const { operator, dispatcher, technician, shop } = call;
          operator.say("My petrol garden tractor does nothing at all when I turn the key");
          await operator.turn();
          operator.say("I want to talk to a person");
          await call.handOver();
          await technician.sees("Nothing at all");
          await operator.asked();
          await call.killedWhen(isHandedOut, () => operator.turn());
          const ending = () => shop.newest("operator")?.text.includes("Good, it runs") === true;
          await call.killedWhen(
            (event) => isPosted("operator")(event) && ending(),
            () => operator.until("Good, it runs"),
          );
          await technician.sees("the operator got the machine running");
          await dispatcher.sees(`Closed. Cause: ${title("pto-left-engaged")}`);
          const { events, state } = await call.finish();
          expect(said(events, "controls-moved")).toEqual([plainly("then-started")]);
          expect(state.confirmed?.how).toBe("ran-after-this");
          expect(state.closed).toMatchObject({
            end: "solved-by-chat",
            complaint: "nothing",
            cause: "pto-left-engaged",
            correction: "move-controls",
          });
        },
      ),
    MOST_MILLISECONDS,
  );

  it.concurrent(
    "slow in the cold, a weak battery: the technician measures it",
    () =>
      Play.call(home, withPhoto, async (call) => {
        const { operator, technician } = call;
        operator.say("Diesel utility tractor turns very slowly this morning, we had frost");
        await operator.turn();
        await operator.asked();
        await call.killedWhen(isPosted("operator"), () => operator.turn());
        await operator.asked();
        await call.killedOverMessage("resetAfter", () => operator.turn());
        operator.say("I want to talk to a person");
        await call.handOver();
        await technician.press("Start at the machine");
        await technician.press("Could not do it, next");
        await call.killedWhen(isPosted("technician"), () =>
          technician.say("battery 11.6 V at rest"),
        );
        await technician.sees("Charge it before anything else");
        await technician.press("I found the cause");
        const battery = await technician.press(/^Battery (?!is )/);
        await technician.until("is closed");
        await operator.sees("is closed. It was: Battery");
        const { events, state } = await call.finish();
        expect(said(events, "on-start")).toEqual([plainly("slow")]);
        expect(said(events, "outdoors")).toEqual([plainly("frost")]);
        expect(said(events, "battery-rest-volts")).toEqual([{ kind: "value", value: 11.6 }]);
        expect(state.closed).toMatchObject({ end: "visit", complaint: "slow" });
        expect(state.closed?.cause, battery).toMatch(/^battery-/);
        expect(state.closed?.correction).not.toBe("");
      }),
    MOST_MILLISECONDS,
  );
});
