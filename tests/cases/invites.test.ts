import { describe, expect, it } from "vitest";
import {
  digestOf,
  INVITE_LIFE_MS,
  redeem,
  type ShopBody,
  withChange,
  withInvite,
} from "../../src/cases/invites.ts";

const shop: ShopBody = { members: [], invites: [], secret: "s" };
const ann = { person: "7", name: "Ann", chat: "7", language: "en" };
const invited = withInvite(shop, { token: "t1", role: "technician", by: "1" }, 1000);

describe("links that bring somebody into the shop", () => {
  it("keep a digest only: whoever reads the disk cannot use them", () => {
    expect(JSON.stringify(invited)).not.toContain('"t1"');
    expect(invited.invites[0]?.digest).toBe(digestOf("t1"));
  });

  it("work once", () => {
    const joined = redeem(invited, "t1", { member: ann, now: 2000 });
    expect(joined).toMatchObject({ outcome: "joined", role: "technician" });
    if (joined.outcome !== "joined") throw new Error("not joined");
    expect(joined.shop.members).toEqual([{ ...ann, role: "technician" }]);
    expect(redeem(joined.shop, "t1", { member: { ...ann, person: "8" }, now: 2000 })).toEqual({
      outcome: "unknown",
    });
  });

  it("expire, and nobody guesses one", () => {
    const late = 1000 + INVITE_LIFE_MS;
    expect(redeem(invited, "t1", { member: ann, now: late })).toEqual({ outcome: "expired" });
    expect(redeem(invited, "", { member: ann, now: 2000 })).toEqual({ outcome: "unknown" });
  });

  it("a new owner link replaces the old one; old ones that expired are swept out", () => {
    const one = withInvite(invited, { token: "o1", role: "owner", by: "1" }, 2000);
    const two = withInvite(one, { token: "o2", role: "owner", by: "1" }, 3000);
    expect(two.invites.map((invite) => invite.role)).toEqual(["technician", "owner"]);
    expect(redeem(two, "o1", { member: ann, now: 4000 })).toEqual({ outcome: "unknown" });
    const later = withInvite(two, { token: "t2", role: "technician", by: "1" }, INVITE_LIFE_MS * 2);
    expect(later.invites).toHaveLength(1);
  });

  it("take nothing from somebody who has the higher place already", () => {
    const owned = { ...invited, members: [{ ...ann, role: "owner" as const }] };
    const joined = redeem(owned, "t1", { member: ann, now: 2000 });
    expect(joined).toMatchObject({ outcome: "joined", role: "owner" });
    expect(joined.outcome === "joined" && joined.shop.members).toEqual([{ ...ann, role: "owner" }]);
  });

  it("leave a person one place in the shop", () => {
    const first = redeem(invited, "t1", { member: ann, now: 2000 });
    if (first.outcome !== "joined") throw new Error("not joined");
    const again = withInvite(first.shop, { token: "d1", role: "dispatcher", by: "1" }, 3000);
    const second = redeem(again, "d1", { member: ann, now: 3000 });
    expect(second.outcome === "joined" && second.shop.members).toEqual([
      { ...ann, role: "dispatcher" },
    ]);
  });
});

describe("a member's place", () => {
  const owner = { ...ann, person: "1", role: "owner" as const };
  const staffed = { ...shop, members: [owner, { ...ann, role: "technician" as const }] };

  it("changes, or ends", () => {
    expect(withChange(staffed, "7", "dispatcher")?.members[1]?.role).toBe("dispatcher");
    expect(withChange(staffed, "7", "out")?.members).toEqual([owner]);
  });

  it("stays where the change makes no sense, and an owner's always", () => {
    for (const change of ["out", "technician"]) {
      expect(withChange(staffed, "1", change)).toBeNull();
      expect(withChange(staffed, "9", change)).toBeNull();
    }
    expect(withChange(staffed, "7", "owner")).toBeNull();
  });
});

describe("a member's skills", () => {
  const owner = { ...ann, person: "1", role: "owner" as const };
  const staffed = { ...shop, members: [owner, { ...ann, role: "technician" as const }] };

  it("are noted and struck out, an owner's as well", () => {
    const once = withChange(staffed, "7", "skill:electrics");
    expect(once?.members[1]?.skills).toEqual(["electrics"]);
    const twice = once && withChange(once, "7", "skill:electrics");
    expect(twice?.members[1]?.skills).toEqual([]);
    expect(withChange(staffed, "1", "skill:fuel")?.members[0]).toMatchObject({
      role: "owner",
      skills: ["fuel"],
    });
  });

  it("outlive a change of the role and a new link", () => {
    const once = withChange(staffed, "7", "skill:electrics");
    const moved = once && withChange(once, "7", "dispatcher");
    expect(moved?.members.find((one) => one.person === "7")?.skills).toEqual(["electrics"]);
    const invited2 = withInvite(moved ?? staffed, { token: "z", role: "technician", by: "1" }, 0);
    const again = redeem(invited2, "z", { member: ann, now: 1 });
    expect(again.outcome === "joined" && again.shop.members.at(-1)?.skills).toEqual(["electrics"]);
  });
});
