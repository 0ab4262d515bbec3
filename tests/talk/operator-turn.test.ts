import { describe, expect, it } from "vitest";
import { machineKinds } from "../../src/domain/vocabulary.ts";
import { Dialog, settings, speech, workshop } from "../helpers/dialog.ts";

const symptoms = new Set(
  [...workshop.knowledge.checks.values()]
    .filter((check) => check.yields === "on-start")
    .map(({ id }) => id),
);
const symptomOpen = (dialog: Dialog) => {
  const asking = dialog.state.open.operator?.asking;
  return asking?.about === "check" && symptoms.has(asking.check);
};
const word = (key: string) => speech.word(key, "en");

/** Presses by which an operator gets from a bare greeting to the symptom question. */
function tapsTo(kind: string): number {
  const dialog = new Dialog().say("good morning");
  let taps = 0;
  while (!symptomOpen(dialog) && taps < 9) {
    const name = word(`machine-${kind}`);
    const family = workshop.knowledge.machines.get(kind as "other")?.family ?? "";
    const wanted = ["All is safe", name, word(`machine-${family}-family`), "Another machine"];
    const label = wanted.find((one) => dialog.labels().includes(one));
    if (label === undefined) throw new Error(`${kind}: nothing to press in ${dialog.labels()}`);
    dialog.press(label);
    taps += 1;
  }
  return taps;
}

describe("the first minute", () => {
  it("answers the first message first: greeting, what was understood, one safety question", () => {
    const dialog = new Dialog().say("my ride-on mower just clicks once, lights stay bright");
    expect(dialog.sentToOperator).toBe(1);
    expect(dialog.last()).toContain(settings.name);
    expect(dialog.last()).toContain("Noted:");
    expect(dialog.labels()).toContain("All is safe");
  });

  it.each(machineKinds)(
    "takes at most 3 taps to the symptom for the commonest kinds, 4 for %s",
    (kind) => {
      const offers = [...workshop.knowledge.machines.values()]
        .map((one) => one.offer || 99)
        .sort((a, b) => a - b);
      const commonest = (workshop.knowledge.machines.get(kind)?.offer || 99) <= (offers[4] ?? 0);
      expect(tapsTo(kind)).toBeLessThanOrEqual(commonest ? 3 : 4);
    },
  );

  it("asks neither kind nor symptom again where the words said them", () => {
    const dialog = new Dialog().say(
      "my petrol garden tractor does nothing at all when i turn the key",
    );
    dialog.press("All is safe");
    expect(dialog.state.open.operator?.asking.about).toBe("check");
    expect(symptomOpen(dialog)).toBe(false);
  });

  it("begins with a photo or a bare /start just as well", () => {
    const photo = new Dialog().send({ kind: "file", file: { id: "f1", kind: "photo" } });
    expect(photo.labels()).toContain("All is safe");
    const bare = new Dialog().send({ kind: "command", name: "start", argument: "" });
    expect(bare.labels()).toContain("All is safe");
  });
});

describe("answers", () => {
  const begun = () => new Dialog().say("ride-on mower").press("All is safe");

  it("shows at most six answers and the way out on every screen", () => {
    const dialog = begun();
    expect(dialog.labels().length).toBeLessThanOrEqual(7);
    expect(dialog.labels().at(-1)).toBe("More …");
  });

  it("shows the answer on the answered question and takes its buttons away", () => {
    const dialog = begun();
    const asked = dialog.shown.findIndex((one) => one.slot === "question-safety");
    expect(dialog.shown[asked]?.rendered.text).toContain("Your answer: All is safe");
    expect(dialog.shown[asked]?.rendered.buttons).toEqual([]);
  });

  it("refuses a press for an older question and says the open one again", () => {
    const dialog = new Dialog().say("ride-on mower");
    const old = dialog.pressOf("All is safe");
    dialog.press("All is safe");
    const answers = dialog.state.answers.length;
    dialog.send({ kind: "press", press: old });
    expect(dialog.toast).toContain("closed");
    expect(dialog.state.answers).toHaveLength(answers);
    expect(dialog.labels().at(-1)).toBe("More …");
  });

  it("takes the answer from any copy of a question that was said again", () => {
    const dialog = begun();
    const shown = dialog.pressOf(dialog.labels()[0] ?? "");
    dialog.say("the cat sat on the mat");
    dialog.send({ kind: "press", press: shown });
    expect(dialog.toast).toBeNull();
    expect(dialog.state.open.operator?.revision).not.toBe(shown.revision);
  });

  it("answers a second tap with a word alone, not with the question once more", () => {
    const dialog = new Dialog().say("ride-on mower");
    const press = dialog.pressOf("All is safe");
    dialog.send({ kind: "press", press });
    const sent = dialog.sentToOperator;
    dialog.send({ kind: "press", press }, "1", 1_000);
    expect(dialog.toast).toContain("closed");
    expect(dialog.sentToOperator).toBe(sent);
  });

  it("takes typed labels, numbers of the list and plain words for the same answer", () => {
    for (const typed of ["one click", "1", "just a single click"]) {
      const dialog = begun();
      if (typed === "1") dialog.press(dialog.labels()[0] ?? "").say("2");
      else dialog.say(typed);
      expect(
        dialog.state.answers.some((one) => one.report.observation === "on-start"),
        typed,
      ).toBe(true);
    }
  });

  it("takes words that were passed on for what somebody else says", () => {
    const reporterOf = (forwarded: true | undefined) => {
      const what = { kind: "text", text: "it just clicks once" } as const;
      const dialog = begun().send(forwarded === undefined ? what : { ...what, forwarded });
      return dialog.state.answers.find(({ report }) => report.observation === "on-start")?.report
        .reporter;
    };
    expect(reporterOf(undefined)).toBe("operator");
    expect(reporterOf(true)).toBe("second-hand");
  });

  it("keeps words it does not understand and says the question again", () => {
    const dialog = begun().say("the cat sat on the mat");
    expect(dialog.last()).toContain("did not understand");
    expect(dialog.state.words).toContain("the cat sat on the mat");
  });

  it("says kindly that a reading cannot be right", () => {
    const dialog = begun().say("battery reads 48 volts at rest");
    expect(dialog.shown.map((one) => one.rendered.text).join()).toContain("cannot be right");
    expect(
      dialog.state.answers.some((one) => one.report.observation === "battery-rest-volts"),
    ).toBe(false);
  });

  it("does not let an album of ten bring ten questions", () => {
    const dialog = begun();
    const sent = dialog.sentToOperator;
    for (let n = 0; n < 10; n += 1)
      dialog.send({ kind: "file", file: { id: `f${n}`, kind: "photo" } });
    expect(dialog.sentToOperator - sent).toBe(1);
    expect(dialog.last()).toContain("10 photos");
    expect(dialog.state.files).toHaveLength(10);
  });
});

describe("the way out", () => {
  const underWay = () => new Dialog().say("ride-on mower, one click").press("All is safe");

  it("offers back, change, pause, person, running again, stop under More, and puts the answers back", () => {
    const dialog = underWay();
    const before = dialog.labels();
    dialog.press("More …");
    expect(dialog.labels()).toEqual([
      "Go back one question",
      "Change an earlier answer",
      "Pause",
      "Talk to a person",
      "It runs again",
      "Stop, I need no help",
      "Go on",
    ]);
    expect(dialog.press("Go on").labels()).toEqual(before);
  });

  it("goes back one question at a time, and forward again", () => {
    const dialog = underWay();
    const first = dialog.state.open.operator?.asking;
    dialog.press(dialog.labels()[0] ?? "");
    const second = dialog.state.open.operator?.asking;
    dialog.press("More …").press("Go back one question");
    expect(dialog.state.open.operator?.asking).toEqual(first);
    dialog.press(dialog.labels()[0] ?? "");
    expect(dialog.state.open.operator?.asking).toEqual(second);
  });

  it("changes an earlier answer from a list", () => {
    const dialog = underWay().press("More …").press("Change an earlier answer");
    const answer = dialog.labels().find((label) => label.includes("One click"));
    dialog.press(answer ?? "");
    expect(symptomOpen(dialog)).toBe(true);
    expect(dialog.state.answers.some((one) => one.report.observation === "on-start")).toBe(false);
  });

  it("pauses, keeps everything, and goes on with any word", () => {
    const dialog = underWay().press("More …").press("Pause");
    expect(dialog.state.interview).toBe("paused");
    dialog.say("ok here again");
    expect(dialog.state.interview).toBe("running");
    expect(dialog.labels().at(-1)).toBe("More …");
  });

  it("works as typed words too", () => {
    expect(underWay().say("I want to talk to a person").state.personWanted).toBe(true);
    expect(underWay().say("stop").state.closed?.end).toBe("called-off");
    expect(underWay().say("back").last()).toContain("again");
  });

  it("gives the number and tells the shop when a person is wanted, or says nobody reads", () => {
    const dialog = underWay().press("More …").press("Talk to a person");
    expect(dialog.last()).toContain(settings.phone);
    expect(dialog.shown.some((one) => one.to === "2")).toBe(true);
    const alone = new Dialog("en", { members: [] }).say("mower").press("All is safe");
    alone.press("More …").press("Talk to a person");
    expect(alone.last()).toContain("Nobody");
  });
});

describe("danger", () => {
  it("shows the emergency number and nothing else when somebody is hurt or something burns", () => {
    const dialog = new Dialog().say("hello");
    dialog.press(dialog.labels()[1] ?? "");
    expect(dialog.last()).toBe(`Ring ${settings.emergency} now.`);
    expect(dialog.shown.filter((one) => one.to === "2").length).toBeGreaterThan(0);
  });

  it("stops at a danger named in words, alerts the shop, and says truly that nobody has read it", () => {
    const dialog = new Dialog().say("mower won't start and i smell petrol, there is a puddle");
    expect(dialog.state.flags).toHaveLength(1);
    expect(dialog.last()).toContain("Do not try to start");
    expect(dialog.last()).toContain("Nobody of the shop has read this");
    dialog.press("Seen", "2");
    expect(dialog.last()).toContain("has read your message");
  });

  it("goes on once the person says that it is safe", () => {
    const dialog = new Dialog().say("mower won't start and i smell petrol, there is a puddle");
    dialog.press("It is safe now, go on");
    expect(dialog.labels().at(-1)).toBe("More …");
  });
});

describe("an operator who answers anything", () => {
  const seeds = [1, 2, 3, 4, 5, 6];

  it.each(seeds)(
    "never gets a question twice in an epoch and always reaches an end (%i)",
    (seed) => {
      let state = seed * 2654435761;
      const roll = (n: number) => {
        state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
        return state % n;
      };
      const dialog = new Dialog().say("hello");
      const asked = new Set<string>();
      let rounds = 0;
      for (; rounds < 60; rounds += 1) {
        // A danger told as an answer stops the questions until the person says that it is over.
        if (
          dialog.state.safety === "not-clear" &&
          dialog.labels().includes("It is safe now, go on")
        ) {
          dialog.press("It is safe now, go on");
          continue;
        }
        if (dialog.state.open.operator === null) break;
        const { asking } = dialog.state.open.operator;
        const key = `${dialog.state.epoch} ${JSON.stringify(asking)}`;
        expect(asked.has(key), key).toBe(false);
        asked.add(key);
        const labels = dialog.labels().slice(0, -1);
        // Ticks may be set and taken away again; the last button closes the list.
        const last = asking.about === "equipment" ? labels.at(-1) : labels[roll(labels.length)];
        const safe = labels.includes("All is safe") ? "All is safe" : last;
        dialog.press(safe ?? "");
      }
      expect(rounds).toBeLessThan(60);
      // What the operator tried may have ended it before the interview was done.
      const isSolved = dialog.state.closed?.end === "solved-by-chat";
      expect(isSolved || dialog.state.interview === "ended").toBe(true);
      expect(dialog.last()).toContain(dialog.state.id);
    },
    60_000,
  );
});
