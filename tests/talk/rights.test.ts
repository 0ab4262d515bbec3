import { describe, expect, it } from "vitest";
import { acts, may, type Standing } from "../../src/talk/rights.ts";

const allowed = (standing: Standing) => acts.filter((act) => may(standing, act));

describe("who may do what", () => {
  it("gives a stranger nothing, and a technician nothing in a case that was not handed over", () => {
    expect(allowed("stranger")).toEqual([]);
    expect(allowed("technician")).toEqual([]);
  });

  it("lets an operator answer and nothing of the shop's", () => {
    expect(allowed("operator")).toEqual(["answer"]);
  });

  it("lets only the owner remove people", () => {
    const standings: Standing[] = [
      "owner",
      "dispatcher",
      "technician",
      "handed-technician",
      "operator",
      "stranger",
    ];
    expect(standings.filter((one) => may(one, "remove-member"))).toEqual(["owner"]);
  });

  it("lets nobody but the technician who has the case type readings into it", () => {
    const standings: Standing[] = [
      "owner",
      "dispatcher",
      "technician",
      "handed-technician",
      "operator",
      "stranger",
    ];
    expect(standings.filter((one) => may(one, "visit"))).toEqual(["handed-technician"]);
  });
});
