import { describe, expect, it } from "vitest";
import { says } from "../helpers/english-reader.ts";

describe("which words tell where a number was measured", () => {
  it.each([
    // Joined without a comma: the second clause belongs to the number of the first.
    ["8.8 V across the battery while cranking", ["battery-start-volts=8.8"]],
    // Each clause has a number of its own.
    [
      "12.6 V at the battery, 9.1 V at the battery while cranking",
      ["battery-rest-volts=12.6", "battery-start-volts=9.1"],
    ],
    // The key's position is no place: the number belongs to all that leads up to it.
    ["solenoid small terminal, key on start: 11.8 V", ["trigger-start-volts=11.8"]],
    // What stands before a colon names the place.
    ["S terminal: 11.8 V on start", ["trigger-start-volts=11.8"]],
  ])("%s", (text, expected) => expect(says(text)).toEqual(expected));

  it("are not those of the next sentence", () => {
    expect(says("The battery has 12.6 V. It clicks once on start.")).toContain(
      "battery-rest-volts=12.6",
    );
  });
});
