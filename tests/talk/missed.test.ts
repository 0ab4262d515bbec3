import { describe, expect, it } from "vitest";
import { Dialog, settings, speech } from "../helpers/dialog.ts";

const shop = { ...settings, languages: ["en", "es", "de"] };
const opening = { en: "petrol ride-on mower, one click", es: "hola", de: "hallo" } as const;
type Language = keyof typeof opening;
const safetyAsked = (language: Language = "en") =>
  new Dialog(language, { shop }).say(opening[language]);
const aboutOf = ({ state }: Dialog) => state.open.operator?.asking.about;
const says = (key: string, language: string) => speech.wording.phrase({ key }, language);

describe("somebody who cannot spell, at the question about safety", () => {
  it.each([
    ["en", "all gud"],
    ["en", "evrybody is saef"],
    ["en", "nothin"],
    ["en", "everybody is save"],
    ["es", "todo bn"],
    ["es", "estmos todos bein"],
    ["de", "ales gut"],
    ["de", "kein gefar"],
  ] as const)("is understood to be safe (%s: %s)", (language, text) => {
    const dialog = safetyAsked(language).say(text);
    expect(dialog.state.safety).toBe("clear");
    expect(aboutOf(dialog)).not.toBe("safety");
  });

  it.each([
    ["en", "dont no"],
    ["en", "i dont kno"],
    ["en", "not shure"],
    ["es", "nose"],
    ["es", "ni idia"],
    ["de", "weis nich"],
    ["de", "kene Ahnung"],
  ] as const)("is understood not to know, and told to look first (%s: %s)", (language, text) => {
    const dialog = safetyAsked(language).say(text);
    expect(dialog.state.safety).toBe("unasked");
    expect(aboutOf(dialog)).not.toBe("safety");
    expect(dialog.last()).toContain(says("safety-unsure", language));
  });

  it.each(["everything is fire", "fire", "not safe", "my leg is stuck under it"])(
    "is not taken to be safe for: %s",
    (text) => expect(safetyAsked().say(text).state.safety).not.toBe("clear"),
  );
});

describe("words that answer nothing", () => {
  const words = ["glrb frmpf", "zzk ploink"] as const;

  it.each(["en", "es", "de"] as const)(
    "are met once with the question and its buttons, then with the next question (%s)",
    (language) => {
      const dialog = safetyAsked(language).say(words[0]);
      expect(aboutOf(dialog)).toBe("safety");
      expect(dialog.last()).toContain(says("not-understood", language));
      expect(dialog.labels()).toContain(says("answer-all-clear", language));
      dialog.say(words[1]);
      expect(aboutOf(dialog)).not.toBe("safety");
      expect(dialog.state.safety).toBe("unasked");
      expect(dialog.last()).toContain(says("passed-unclear", language));
      expect(dialog.last()).toContain(says("safety-unsure", language));
      expect(dialog.state.words).toContain(words[1]);
    },
  );

  it("written in one breath count as one", () => {
    const dialog = safetyAsked().say(words[0]);
    dialog.send({ kind: "text", text: words[1] }, "1", 2_000);
    expect(aboutOf(dialog)).toBe("safety");
  });

  it("lead through a whole interview to its end, each question put once", () => {
    const dialog = safetyAsked();
    for (let n = 0; dialog.state.open.operator !== null; n += 1) {
      expect(n, dialog.last()).toBeLessThan(80);
      dialog.say(words[n % 2] ?? "");
    }
    expect(dialog.state.interview).toBe("ended");
    expect(dialog.state.flags).toEqual([]);
  });
});

describe("what may be left out", () => {
  const at = (asking: Parameters<Dialog["asked"]>[0], language: Language = "en") =>
    safetyAsked(language).press(says("answer-all-clear", language)).asked(asking);

  it.each([
    ["en", "can't"],
    ["en", "no photo"],
    ["es", "no puedo"],
    ["de", "geht nicht"],
  ] as const)("is left out for: %s, %s", (language, text) => {
    expect(aboutOf(at({ about: "photo", of: "battery" }, language).say(text))).not.toBe("photo");
  });

  it("is not the place of the machine", () => {
    expect(at({ about: "where" }).say("no").state.where).toBeNull();
  });

  it("is never the safety question", () => {
    expect(aboutOf(safetyAsked().say("skip"))).toBe("safety");
  });
});

describe("a question said again", () => {
  it("shows the words of its newest message once it is answered, not those of its first", () => {
    const dialog = new Dialog("en", { shop }).say("hello");
    const greeting = dialog.last().split("\n")[0] ?? "";
    dialog.say("it goes click click click, lights go dim").press("All is safe");
    const record = dialog.shown.findLast(({ rendered }) => rendered.text.includes("All is safe"));
    expect(record?.rendered.text).not.toContain(greeting);
    expect(record?.rendered.text).toContain("Noted");
  });
});
