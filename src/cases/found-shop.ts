import type { Commit } from "./commit.ts";
import type { Directory } from "./directory.ts";
import { SHOP, withInvite } from "./invites.ts";
import type { Chance } from "./ports.ts";

export interface FoundedShop {
  /** Signs the data of buttons. */
  readonly secret: string;
  /** The token of a fresh owner link, where the shop has no owner yet. */
  readonly ownerToken: string | null;
}

/** Makes the shop's document at the first start; as long as nobody owns it, makes an owner link. */
export async function foundShop(parts: {
  readonly directory: Directory;
  readonly commit: Commit;
  readonly chance: Chance;
}): Promise<FoundedShop> {
  const { directory, commit, chance } = parts;
  const owned = directory.shop()?.members.some((member) => member.role === "owner") ?? false;
  const token = chance.token();
  const secret = directory.shop()?.secret ?? chance.token();
  if (!owned) {
    await commit({ kind: "shop", id: SHOP }, null, (shop, now) => ({
      body: withInvite(
        shop ?? { members: [], invites: [], secret },
        { token, role: "owner", by: "turnrow" },
        now,
      ),
      effects: [],
    }));
  }
  return { secret, ownerToken: owned ? null : token };
}
