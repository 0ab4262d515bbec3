import { describe, expect, it } from "vitest";
import { read, says } from "../helpers/english-reader.ts";

const replaced = (text: string) => read(text).replaced.map((one) => one.id);
const flags = (text: string) => read(text).redFlags.map((one) => one.id);

describe("parts already replaced", () => {
  it.each([
    ["changed the starter and the solenoid last month", ["starter", "solenoid"]],
    ["I've changed the plug, the oil and the fuel filter", ["spark-plug", "oil", "fuel-filter"]],
    ["the battery was replaced", ["battery"]],
    ["new battery, new plugs, still nothing", ["battery", "spark-plug"]],
    ["do I need a new starter?", []],
    ["I want to buy a new battery", []],
    ["we have not replaced the battery", []],
    ["the starter is nearly new", []],
    ["the starter whines", []],
  ])("%s", (text, parts) => expect(replaced(text)).toEqual(parts));

  it("answer that parts were replaced and what was worked on", () =>
    expect(says("fitted a new starter")).toEqual([
      "recent-event=parts-replaced",
      "recent-work=starter-work",
    ]));
});

describe("red flags", () => {
  it.each([
    ["smoke coming from the starter", ["smoke-or-hot-wires"]],
    ["white smoke out of the exhaust", []],
    ["black smoke when cranking", []],
    ["no smoke", []],
    ["I smell petrol", ["fuel-leak"]],
    ["it's on fire", ["fire-or-injury"]],
    ["it is not on fire", []],
    ["my brother got hurt", ["fire-or-injury"]],
    ["the battery is swollen", ["battery-damaged"]],
    ["I put petrol in the diesel", ["wrong-fluid"]],
    ["the starter will not stop", ["will-not-stop"]],
    ["one click", []],
  ])("%s", (text, expected) => expect(flags(text)).toEqual(expected));
});

describe("urgency and fuel", () => {
  it("hears what is urgent and what is not", () => {
    expect(read("hay is down and rain is coming").urgency).toBe("high");
    expect(read("no rush").urgency).toBe("low");
    expect(read("it clicks").urgency).toBeNull();
  });

  it("hears the fuel", () => {
    expect(read("it's a diesel").machine.fuel).toBe("diesel");
    expect(read("runs on gasoline").machine.fuel).toBe("petrol");
  });
});

describe("work done in vain", () => {
  it("came after the trouble, and is no work that may have brought it", () => {
    expect(says("replaced the starter, no change")).toEqual(["recent-event=parts-replaced"]);
    expect(says("replaced the starter last week")).toContain("recent-work=starter-work");
  });
});
