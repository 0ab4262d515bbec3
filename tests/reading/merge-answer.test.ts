import { describe, expect, it } from "vitest";
import { model } from "../helpers/english-reader.ts";
import { shippedReader } from "../helpers/shipped.ts";

const reader = await shippedReader(model, "en", "de", "es");
const answered = (text: string, language = "en") =>
  reader
    .read(text, { languages: [language], expecting: { observation: "on-start" } })
    .understood.flatMap((one) =>
      one.observation === "on-start" && "state" in one ? [one.state] : [],
    );

describe("an answer and what else the words say", () => {
  it.each([
    ["en", ["cranks", "turns over", "it cranks fine", "just turns over", "cranks but won't start"]],
    ["es", ["gira", "gira bien", "solo gira"]],
    ["de", ["dreht", "orgelt", "dreht normal"]],
  ])(
    "that it cranks, said when asked what goes wrong, is that it does not fire: %s",
    (language, texts) => {
      for (const text of texts)
        expect([text, ...answered(text, language)]).toEqual([text, "turns-no-fire"]);
    },
  );

  it("gives way to what more of the words say", () => {
    expect(answered("turns over then stops")).toEqual(["turns-then-stops"]);
    expect(answered("cranks slow")).toEqual(["slow"]);
    expect(answered("it fires, then dies")).toEqual(["fires-then-dies"]);
  });
});
