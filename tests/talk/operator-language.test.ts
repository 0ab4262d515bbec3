import { describe, expect, it } from "vitest";
import { type CaseHappening, stamped } from "../../src/domain/case-events.ts";
import { applyEvent } from "../../src/domain/fold-case.ts";
import { nothingToDo } from "../../src/talk/decision.ts";
import { withLanguage } from "../../src/talk/operator-language.ts";
import { Dialog, settings, workshop } from "../helpers/dialog.ts";

const shop = { ...settings, languages: ["en", "es", "de"] };

/** What operators write, each with the language the reader took it for. */
function writing() {
  const dialog = new Dialog("en", { shop });
  let state = dialog.state;
  return (text: string, language: string) => {
    const reading = { ...workshop.reader.read(text, { languages: ["en"] }), language };
    const incoming = {
      ...{ update: "u", sentAt: 1, chat: "1", direct: true, from: { id: "1", name: "Marit" } },
      what: { kind: "text", text } as const,
    };
    const heard = { incoming, reading, member: null };
    const decided = withLanguage(state, nothingToDo, { heard, desk: dialog.desk });
    const keep = (one: CaseHappening) => stamped(one, { at: 1, by: "1", update: "u" });
    state = decided.happenings.map(keep).reduce(applyEvent, state);
    return decided.effects.flatMap(({ effect }) => (effect.do === "say" ? [effect] : []));
  };
}

describe("the language a case is spoken in", () => {
  it("is offered to change after two long messages in another language, in that language", () => {
    const write = writing();
    expect(write("el tractor no arranca hoy", "es")).toEqual([]);
    const [offer] = write("no hace nada al girar la llave", "es");
    expect(offer?.language).toBe("es");
    expect(offer?.message.buttons?.flat().map(({ press }) => press.value)).toEqual(["es", "en"]);
  });

  it("is asked for once only", () => {
    const write = writing();
    write("el tractor no arranca hoy", "es");
    write("no hace nada al girar la llave", "es");
    expect(write("sigue sin hacer nada de nada", "es")).toEqual([]);
  });

  it("does not hang on short messages, on one message, or on messages in turn", () => {
    const write = writing();
    expect(write("si", "es")).toEqual([]);
    expect(write("no hace nada", "es")).toEqual([]);
    expect(write("el tractor no arranca hoy", "es")).toEqual([]);
    expect(write("it does nothing at all today", "en")).toEqual([]);
    expect(write("no hace nada al girar la llave", "es")).toEqual([]);
    expect(write("die Maschine springt nicht an", "de")).toEqual([]);
  });

  it("is never one that the shop does not speak", () => {
    const write = writing();
    write("le tracteur ne démarre pas ce matin", "fr");
    expect(write("il ne fait rien du tout", "fr")).toEqual([]);
  });
});
