import { describe, expect, it } from "vitest";
import { createKnowledgeWords } from "../../src/wording/knowledge-words.ts";

describe("the knowledge's words", () => {
  const word = createKnowledgeWords({
    english: new Map([
      ["fault-earth", "Corroded earth strap {1}"],
      ["fault-new", "New"],
    ]),
    translations: { de: "fault-earth = Masseband korrodiert\nfault-odd = { $volts } zu viel\n" },
  });

  it("are English as they stand in the knowledge, not interpreted", () => {
    expect(word("fault-earth", "en")).toBe("Corroded earth strap {1}");
  });

  it("are translated where a translation is there, else unknown", () => {
    expect(word("fault-earth", "de")).toBe("Masseband korrodiert");
    expect(word("fault-new", "de")).toBeNull();
    expect(word("fault-earth", "fr")).toBeNull();
    expect(word("nothing", "en")).toBeNull();
  });

  it("are unknown where the translation wants what nobody gives", () => {
    expect(word("fault-odd", "de")).toBeNull();
  });
});
