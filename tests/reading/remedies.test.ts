import { describe, expect, it } from "vitest";
import { readerModel } from "../../src/reading/reader-model.ts";
import { shippedKnowledge, shippedReader } from "../helpers/shipped.ts";

const reader = await shippedReader(readerModel(await shippedKnowledge()), "en", "de", "es");
const acts = (label: string, text: string, mended = true, language = "en") => {
  const read = reader.read(text, { languages: [language], label, mended });
  return {
    done: read.acts.map(({ act, outcome }) => `${act} ${outcome}`),
    isAfter: read.afterwards,
  };
};

describe("an entry that tells what put the machine right", () => {
  it.each([
    ["fixed by", "new battery", "replace-battery cured"],
    ["replaced", "solenoid, 25 starts in a row", "replace-solenoid cured"],
    ["result", "coil fitted, gap set with a card", "renew-coil cured"],
    ["new starter", "fitted, 40 minutes", "replace-starter cured"],
  ])("%s: %s", (label, text, act) => {
    expect(acts(label, text)).toEqual({ done: [act], isAfter: true });
  });

  it("was in vain where the trouble is told of it", () => {
    expect(acts("new battery", "still will not fire").done).toEqual(["replace-battery no-change"]);
    expect(acts("new coil", "no change").done).toEqual(["renew-coil no-change"]);
  });

  it("is none while the machine still stands: what was renewed did not help", () => {
    expect(acts("replaced", "battery and solenoid", false)).toEqual({ done: [], isAfter: false });
  });

  it("is known in each language", () => {
    expect(acts("solución", "batería nueva", true, "es").isAfter).toBe(true);
    expect(acts("Abhilfe", "neue Batterie", true, "de").isAfter).toBe(true);
  });
});
