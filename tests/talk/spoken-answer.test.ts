import { describe, expect, it } from "vitest";
import { choicesFor } from "../../src/talk/choices.ts";
import { isWritten, spokenAnswer } from "../../src/talk/spoken-answer.ts";
import { Dialog, settings, workshop } from "../helpers/dialog.ts";

const shop = { ...settings, languages: ["en", "es", "de"] };
const safetyAsked = (language = "en") =>
  new Dialog(language, { shop }).say("petrol ride-on mower, one click");
const kindAsked = (language = "en") => {
  const dialog = new Dialog(language).send({ kind: "command", name: "start", argument: "" });
  const revision = dialog.state.revision;
  const press = { case: dialog.state.id, revision, act: "answer", value: "clear" };
  return dialog.send({ kind: "press", press });
};
const aboutOf = ({ state }: Dialog) => state.open.operator?.asking.about;

describe("the question about safety, answered in words", () => {
  it.each([
    ["en", "all good"],
    ["en", "Yes, everybody is safe."],
    ["en", "none of these"],
    ["en", "1"],
    ["en", "one"],
    ["es", "todo bien"],
    ["es", "No hay peligro"],
    ["es", "uno"],
    ["de", "alles gut"],
    ["de", "keiner verletzt"],
    // A foreign worker writes in the other language of the shop.
    ["en", "todo bien"],
  ])("is over in %s with: %s", (language, text) => {
    const dialog = safetyAsked(language);
    expect(aboutOf(dialog)).toBe("safety");
    dialog.say(text);
    expect(dialog.state.safety).toBe("clear");
    expect(aboutOf(dialog)).not.toBe("safety");
  });

  it.each(["no", "not safe", "all hurt", "all good but I smell petrol"])(
    "is not over with: %s",
    (text) => {
      expect(safetyAsked().say(text).state.safety).not.toBe("clear");
    },
  );

  it.each([
    ["en", "don't know"],
    ["es", "no lo sé"],
    ["de", "weiß ich nicht"],
  ])("takes a don't-know, warns, and is not put again (%s: %s)", (language, text) => {
    const dialog = safetyAsked(language).say(text);
    expect(dialog.state.safety).toBe("unasked");
    expect(aboutOf(dialog)).not.toBe("safety");
    expect(dialog.last()).toContain(dialog.desk.words({ key: "safety-unsure" }, language));
    dialog.press(dialog.labels()[0] ?? "");
    expect(dialog.state.askedEver.filter(({ asking }) => asking.about === "safety")).toHaveLength(
      1,
    );
  });
});

describe("the question about the machine, answered in words", () => {
  it("leads to the other kinds, and on where it is none of those either", () => {
    const dialog = kindAsked();
    expect(aboutOf(dialog)).toBe("kind");
    dialog.say("none of these");
    expect(dialog.state.open.operator?.asking).toEqual({ about: "kind", family: "families" });
    dialog.say("None of them");
    expect(aboutOf(dialog)).toBe("check");
    expect(dialog.state.machine.kind).toBeUndefined();
  });

  it.each([
    ["en", "I don't know"],
    ["es", "no sé"],
    ["de", "keine Ahnung"],
  ])("takes a don't-know (%s: %s)", (language, text) => {
    const dialog = kindAsked(language).say(text);
    expect(aboutOf(dialog)).toBe("check");
  });

  it.each([
    ["en", "two"],
    ["es", "dos"],
    ["de", "Zwei"],
    ["en", "2)"],
  ])("takes a place in the list (%s: %s)", (language, text) => {
    expect(kindAsked(language).say(text).state.machine.kind).toBe("zero-turn");
  });
});

describe("a danger that stands", () => {
  it.each(["It is safe now", "danger over", "ya no hay peligro"])("is over with: %s", (text) => {
    const dialog = safetyAsked().say("i smell petrol, there is a puddle").say(text);
    expect(dialog.state.safety).toBe("clear");
  });

  it.each(["yes", "ok", "all good thanks, what now", "back", "more", "All is safe", "1"])(
    "is not over with, and nothing is asked after: %s",
    (text) => {
      const dialog = safetyAsked().say("i smell petrol, there is a puddle").say(text);
      expect(dialog.state.safety).toBe("not-clear");
      expect(dialog.last()).toContain("Stop.");
    },
  );

  it.each(["start", "back", "nonsense"])("is not passed by with the command %s", (name) => {
    const dialog = safetyAsked().say("i smell petrol, there is a puddle");
    dialog.send({ kind: "command", name, argument: "" });
    expect(dialog.last()).toContain("Stop.");
  });

  it("leaves the way to a person and to the end", () => {
    const danger = () => safetyAsked().say("i smell petrol, there is a puddle");
    expect(danger().say("I want to talk to a person").state.personWanted).toBe(true);
    expect(danger().say("stop").state.closed?.end).toBe("called-off");
  });
});

describe("words for an answer that has another label", () => {
  const { state, desk } = safetyAsked();
  const given = { state, desk };

  it("never name an answer that is not on offer", () => {
    const asking = { about: "fuel" } as const;
    const choices = choicesFor(asking, state, workshop.knowledge);
    const spoken = (text: string) =>
      spokenAnswer(text, { asking, choices, isReading: false }, given);
    expect(spoken("nine")).toBeNull();
    expect(spoken("9")).toBeNull();
    expect(spoken("all good")).toBeNull();
    expect(spoken("none of these")).toBe("?");
  });

  it("leave a number alone where a reading is asked for", () => {
    const asking = { about: "check", check: "battery-rest-volts" } as const;
    const choices = [{ value: "?", label: { key: "answer-dont-know" } }];
    expect(spokenAnswer("1", { asking, choices, isReading: true }, given)).toBeNull();
    expect(spokenAnswer("1", { asking, choices, isReading: false }, given)).toBe("?");
  });

  it("are whole messages", () => {
    expect(isWritten("All good!", "word-all-clear", given)).toBe(true);
    expect(isWritten("all good but hot", "word-all-clear", given)).toBe(false);
  });
});
