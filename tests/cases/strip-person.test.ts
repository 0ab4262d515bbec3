import { describe, expect, it } from "vitest";
import { stripPerson } from "../../src/cases/strip-person.ts";
import { type CaseHappening, stamped } from "../../src/domain/case-events.ts";
import type { CaseDocument } from "../../src/domain/documents.ts";
import { foldCase } from "../../src/domain/fold-case.ts";
import { caseDocument } from "../helpers/documents.ts";
import { told } from "../helpers/told.ts";

const by = (who: string, happening: CaseHappening) =>
  stamped(happening, { at: 9, by: who, update: "u9" });
const SECRET = "quillwort";

const full: CaseDocument = {
  ...caseDocument(),
  events: [
    by("op", {
      type: "case.opened",
      operator: "op",
      name: SECRET,
      chat: "11",
      language: "en",
      knowledge: "k",
      seed: 1,
    }),
    by("op", { type: "words.said", text: SECRET }),
    by("op", { type: "answer.given", report: told("on-start", "one-click") }),
    by("op", { type: "phone.told", phone: SECRET }),
    by("op", { type: "where.told", words: SECRET }),
    by("op", { type: "urgency.told", urgency: "high", words: SECRET }),
    by("op", { type: "file.received", file: { id: SECRET, kind: "photo" }, from: "operator" }),
    by("op", { type: "note.added", text: SECRET, from: "operator" }),
    by("disp", { type: "operator.asked", text: SECRET, photo: false }),
    by("op", { type: "operator.replied", text: SECRET }),
    by("op", {
      type: "machine.described",
      facts: { kind: "combine", words: SECRET, serial: SECRET },
    }),
    by("turnrow", {
      type: "question.asked",
      to: "operator",
      asking: { about: "known", machines: [{ id: "m", title: SECRET, facts: { kind: "other" } }] },
      revision: 1,
    }),
    by("tech", { type: "note.added", text: "strap green", from: "technician" }),
    by("tech", {
      type: "case.closed",
      end: "visit",
      complaint: SECRET,
      cause: "earth-strap-corroded",
      correction: "clean-earth",
    }),
  ],
  outbox: [
    { ...message("11"), id: "a", sequence: 1 },
    { ...message("-5"), id: "b", sequence: 2 },
  ],
  sent: { "question@11": { chat: "11", message: "4" }, "slip@-5": { chat: "-5", message: "9" } },
};

function message(chat: string) {
  const effect = { do: "say", to: { chat }, language: "en", message: { lines: [] } } as const;
  return { effect, notBefore: 0, attempts: 0 };
}

describe("a case without its person", () => {
  const stripped = stripPerson(full);

  it("holds nothing of their name, words, number, place and files, in no corner", () => {
    expect(JSON.stringify(stripped)).not.toContain(SECRET);
    expect(stripped.events.some((event) => event.by === "op")).toBe(false);
  });

  it("knows whoever came into a phone call by its link for its person", () => {
    const opened = by("disp", {
      ...({ type: "case.opened", operator: "", name: "", chat: "" } as const),
      ...{ language: "en", knowledge: "k", seed: 1 },
    });
    const contact = { operator: "op2", name: SECRET, chat: "12", language: "en" };
    const joined = by("op2", { type: "operator.joined", ...contact });
    const outbox = [{ ...message("12"), id: "c", sequence: 3 }];
    const bare = stripPerson({ ...full, events: [opened, joined], outbox });
    expect(JSON.stringify(bare)).not.toContain(SECRET);
    expect(JSON.stringify(bare.events)).not.toContain("op2");
    expect(bare.outbox).toEqual([]);
  });

  it("keeps what was found out about the machine", () => {
    const state = foldCase(stripped.id, stripped.events);
    expect(state.answers).toHaveLength(1);
    expect(state.urgency).toBe("high");
    expect(state.notes).toMatchObject([{ text: "strap green" }]);
    expect(state.closed).toMatchObject({ cause: "earth-strap-corroded", complaint: "" });
  });

  it("sends nothing more to them, and goes on with everybody else", () => {
    expect(stripped.outbox.map((entry) => entry.id)).toEqual(["b"]);
    expect(Object.keys(stripped.sent)).toEqual(["slip@-5"]);
  });

  it("is the same when it is done twice", () => expect(stripPerson(stripped)).toEqual(stripped));
});
