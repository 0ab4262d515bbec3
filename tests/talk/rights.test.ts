import { describe, expect, it } from "vitest";
import { acts, may, type Standing } from "../../src/talk/rights.ts";

const allowed = (standing: Standing) => acts.filter((act) => may(standing, act));

describe("who may do what", () => {
  it("gives a stranger nothing, and a technician nothing in a case that was not handed over", () => {
    expect(allowed("stranger")).toEqual([]);
    expect(allowed("technician")).toEqual(["roster"]);
  });

  it("lets whoever has the call-outs answer for a danger and take the case, and decide no more", () => {
    const may = allowed("on-duty");
    expect(may).toEqual(expect.arrayContaining(["see", "seen", "assign"]));
    for (const act of ["decide", "book", "ask", "invite", "set-duty"])
      expect(may).not.toContain(act);
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
      "on-duty",
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
      "on-duty",
      "operator",
      "stranger",
    ];
    expect(standings.filter((one) => may(one, "visit"))).toEqual(["handed-technician"]);
  });
});
