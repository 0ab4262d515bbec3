import { describe, expect, it } from "vitest";
import { readerModel } from "../../src/reading/reader-model.ts";
import { shippedKnowledge, shippedReader } from "../helpers/shipped.ts";

const reader = await shippedReader(readerModel(await shippedKnowledge()), "en");
const read = (text: string) => reader.read(text, { languages: ["en"] });

const told = (text: string) => {
  const { understood, denied } = read(text);
  const part = (one: { readonly observation: string; readonly state?: string }) =>
    one.observation === "found-bad" ? [one.state ?? ""] : [];
  return {
    bad: understood.flatMap((one) => ("state" in one ? part(one) : [])),
    good: denied.flatMap(part),
  };
};

describe("a part that somebody looked at", () => {
  it.each([
    ["the relay tested good", "start-relay"],
    ["nothing wrong with the injection pump", "injection-pump"],
    ["fuel pump is good", "fuel-pump"],
    ["it is not the battery", "battery"],
    ["ruled out the ignition coil", "coil"],
    ["starter tested, good", "starter"],
    ["alternator checked, no faults found", "alternator"],
  ])("%s: it is not bad", (text, part) => expect(told(text)).toEqual({ bad: [], good: [part] }));

  it.each([
    ["the ignition coil is no good", "coil"],
    ["the fuel pump is not good", "fuel-pump"],
    ["lift pump was the culprit", "fuel-pump"],
    ["starter looks to be the fault", "starter"],
  ])("%s: it is bad", (text, part) => expect(told(text)).toEqual({ bad: [part], good: [] }));

  it.each([
    "replaced the relay",
    "jumped from a good battery",
    "is the injection pump below it",
    "relay not checked, fine weather",
  ])("%s says neither", (text) => expect(told(text)).toEqual({ bad: [], good: [] }));
});
