import { describe, expect, it } from "vitest";
import { readerModel } from "../../src/reading/reader-model.ts";
import { shippedKnowledge, shippedReader } from "../helpers/shipped.ts";

const languages = ["en", "es", "de"];
const reader = await shippedReader(readerModel(await shippedKnowledge()), ...languages);
// Made ready before the tests, as that takes longer than any of them.
for (const language of languages) reader.read("", { languages: [language] });

const says = (language: string, text: string) =>
  reader
    .read(text, { languages: [language] })
    .understood.map((one) => `${one.observation}=${"state" in one ? one.state : one.value}`);

describe("what is asked, planned, supposed or told of another machine", () => {
  it.each([
    ["en", "could it be the battery is dead?"],
    ["en", "would a bad earth do that?"],
    ["en", "is it normal that it clicks once?"],
    ["en", "should I charge the battery?"],
    ["en", "do you think the starter is burnt out?"],
    ["en", "I was going to charge the battery tonight"],
    ["en", "we are going to fit a new battery"],
    ["en", "I will change the fuel filter next week"],
    ["en", "he wants to replace the starter"],
    ["en", "the customer will check the fuse"],
    ["en", "if the solenoid was stuck it would keep cranking"],
    ["en", "if the battery was flat the lights would be dim"],
    ["en", "my other tractor clicks just the same"],
    ["en", "our other mower had no spark last year"],
    ["en", "the machine in that yard had a flat battery"],
    ["en", "same thing on the other quad with no spark"],
    ["es", "¿puede ser que la batería esté muerta?"],
    ["es", "iba a cargar la batería esta noche"],
    ["es", "la semana que viene cambio la batería"],
    ["es", "si fuera la batería no habría luces"],
    ["es", "mi otro tractor hace un solo clac"],
    ["de", "kann es sein dass die Batterie tot ist?"],
    ["de", "ich wollte die Batterie heute laden"],
    ["de", "nächste Woche Batterie neu"],
    ["de", "wenn es die Batterie wäre würde kein Licht brennen"],
    ["de", "mein anderer Traktor macht nur klack"],
  ])("is no fact (%s): %s", (language, text) => expect(says(language, text)).toEqual([]));

  it.each([
    ["en", "I was going to charge it but it just clicks once", "on-start=one-click"],
    ["en", "my other tractor clicks, this one does nothing at all", "on-start=nothing"],
    ["en", "could it be the battery, it barely turns", "on-start=slow"],
    ["en", "should I change the starter, all it does is one click", "on-start=one-click"],
    ["en", "I was mowing and the tractor stalled. Now nothing happens", "on-start=nothing"],
    ["es", "iba a cargarla pero solo hace un clac", "on-start=one-click"],
    ["es", "mi otro tractor va bien, este no hace nada", "on-start=nothing"],
    ["de", "ich wollte laden, aber er macht nur einmal klack", "on-start=one-click"],
    ["de", "der andere Traktor läuft, dieser sagt keinen Mucks", "on-start=nothing"],
  ])("ends before the machine itself comes up again (%s): %s", (language, text, state) =>
    expect(says(language, text)).toContain(state),
  );
});

describe("what only looks like a state", () => {
  it.each([
    ["no lights on this model"],
    ["there are no lights fitted to this mower"],
    ["never had any lights"],
    ["it comes without lights"],
    ["headlights not fitted"],
    ["earth: green wire"],
    ["the earth is the green wire"],
    ["the brown one goes to the starter"],
    ["a green and yellow wire goes to the frame"],
    ["ground is a green lead"],
    ["we live on a hill"],
    ["our farm is on a hill"],
    ["kept outside over 5 years"],
    ["it has lived outside for years"],
    ["on Sunday it would not start"],
    ["plug looks brand new"],
  ])("is none: %s", (text) => expect(says("en", text)).toEqual([]));

  it.each([
    ["coil only 3 ohms where it wants 8", "found-bad=coil"],
    ["stator reads half of what it should", "found-bad=alternator"],
    ["rail pressure well below spec", "found-bad=rail"],
    ["big drop across the earth strap", "found-bad=earth-cable"],
    ["huge voltage drop on the positive cable", "found-bad=plus-cable"],
    ["the relay is done for", "found-bad=start-relay"],
  ])("is one where it is compared with what should be: %s", (text, state) =>
    expect(says("en", text)).toContain(state),
  );

  it.each([
    ["en", "turns over but nothing"],
    ["en", "cranks fine but no joy"],
    ["en", "it turns over fine, but nothing"],
    ["es", "gira bien, pero nada"],
    ["de", "er dreht, aber nix"],
    ["es", "gira pero nada"],
    ["es", "da vueltas pero no pasa nada"],
    ["de", "dreht aber nix"],
    ["de", "orgelt gut, aber nichts passiert"],
  ])("is told of the engine's firing where it turns (%s): %s", (language, text) => {
    expect(says(language, text)).toContain("on-start=turns-no-fire");
    expect(says(language, text)).not.toContain("on-start=nothing");
  });

  it("is asked where a battery is told by its rating alone", () => {
    const asked = (text: string) =>
      reader
        .read(text, { languages: ["en"] })
        .ambiguous.flatMap(({ options }) => options.map(({ observation }) => observation));
    expect(asked("battery tested 62 of 250 CCA")).toContain("load-test");
    expect(asked("tester shows 480 CCA out of 500")).toContain("load-test");
  });

  it("clears a part that is named in front of a colon", () => {
    const denied = (text: string) =>
      reader.read(text, { languages: ["en"] }).denied.map(({ state }) => state);
    expect(denied("battery: tested, no fault")).toEqual(["battery"]);
    expect(denied("relay: checked, fine")).toEqual(["start-relay"]);
    expect(denied("coil, checked, good")).toEqual(["coil"]);
  });
});
