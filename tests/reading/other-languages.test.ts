import { describe, expect, it } from "vitest";
import { coreModel } from "../helpers/core-model.ts";
import { shippedReader } from "../helpers/shipped.ts";

const reader = await shippedReader(coreModel(), "en", "de", "es");
const read = (language: string, text: string) =>
  reader.read(text, { languages: [language], now: Date.UTC(2026, 2, 20) });
const says = (language: string, text: string) =>
  read(language, text).understood.map(
    (one) => `${one.observation}=${"state" in one ? one.state : one.value}`,
  );

describe("what the grammar of other languages does differently", () => {
  it.each([
    ["es", "la cosechadora no arranca", "combine"],
    ["es", "cortacésped de asiento parado", "ride-on-mower"],
    ["de", "Rasentraktor springt nicht an", "ride-on-mower"],
    ["de", "der Mähdrescher steht", "combine"],
    // What the knowledge calls them is understood as well.
    ["de", "skid steer", "skid-steer"],
  ])("%s: %s names its kind", (language, text, kind) => {
    expect(read(language, text).machine.kind).toBe(kind);
    expect(read(language, text).machine.certainty).toBeGreaterThan(0.4);
  });

  it("counts the time from a word in front of it", () => {
    expect(says("es", "lo usé hace tres semanas")).toContain("last-use=weeks");
    expect(says("de", "vor drei Wochen zuletzt benutzt")).toContain("last-use=weeks");
  });

  it("takes the volts behind the battery's name for its kind, and a reading for a reading", () => {
    expect(read("es", "batería de 12 voltios nueva").machine.volts).toBe(12);
    expect(says("es", "batería de 12 voltios")).not.toContain("battery-rest-volts=12");
    expect(says("es", "batería en reposo 12,6 voltios")).toContain("battery-rest-volts=12.6");
  });

  it.each([
    ["es", "menos diez grados esta mañana", "outdoors=hard-frost"],
    ["es", "tres grados bajo cero", "outdoors=frost"],
    ["es", "diez bajo cero", "outdoors=hard-frost"],
    ["de", "minus zehn Grad heute morgen", "outdoors=hard-frost"],
    ["de", "zehn Grad unter Null", "outdoors=hard-frost"],
    ["de", "drei Grad minus", "outdoors=frost"],
  ])("%s: %s is below zero", (language, text, state) =>
    expect(says(language, text)).toEqual([state]),
  );

  it('doubts what follows "weiß nicht ob", and does not deny it', () => {
    const [found] = read("de", "weiß nicht ob die Sicherungen gut sind").understood;
    expect(found).toMatchObject({ observation: "fuse-look", state: "good" });
    expect(found?.hedge).toBeGreaterThan(0.3);
  });

  it("tells how long a machine stood from since when it is not used", () =>
    expect(says("es", "hace tres semanas que no se usa")).toContain("last-use=weeks"));
});
