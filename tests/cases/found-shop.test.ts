import { describe, expect, it } from "vitest";
import { foundShop } from "../../src/cases/found-shop.ts";
import { redeem, SHOP } from "../../src/cases/invites.ts";
import { createOfficeParts } from "../helpers/office-parts.ts";

function counting() {
  let count = 0;
  return {
    caseId: () => "C",
    seed: () => 1,
    token: () => {
      count += 1;
      return `token-${count}`;
    },
  };
}

describe("the first start of a shop", () => {
  it("makes a secret for its buttons and a link for its owner", async () => {
    const parts = await createOfficeParts();
    const { secret, ownerToken } = await foundShop({ ...parts, chance: counting() });
    expect(secret).not.toBe(ownerToken);
    expect(parts.directory.shop()).toMatchObject({ secret, invites: [{ role: "owner" }] });
  });

  it("keeps the secret, and makes the link anew as long as nobody took it", async () => {
    const parts = await createOfficeParts();
    const chance = counting();
    const first = await foundShop({ ...parts, chance });
    const second = await foundShop({ ...parts, chance });
    expect(second.secret).toBe(first.secret);
    expect(second.ownerToken).not.toBe(first.ownerToken);
    expect(parts.directory.shop()?.invites).toHaveLength(1);
  });

  it("makes no link once the shop has an owner", async () => {
    const parts = await createOfficeParts();
    const chance = counting();
    const { ownerToken } = await foundShop({ ...parts, chance });
    await parts.commit({ kind: "shop", id: SHOP }, "u1", (shop, now) => {
      if (shop === null || ownerToken === null) return null;
      const member = { person: "1", name: "Olga", chat: "1", language: "en" };
      const done = redeem(shop, ownerToken, { member, now });
      return done.outcome === "joined" ? { body: done.shop, effects: [] } : null;
    });
    expect((await foundShop({ ...parts, chance })).ownerToken).toBeNull();
    expect(parts.directory.shop()?.members).toMatchObject([{ name: "Olga", role: "owner" }]);
  });
});
