import { createHash } from "node:crypto";
import {
  type Invite,
  type Member,
  type Role,
  roles,
  type ShopDocument,
} from "../domain/documents.ts";

/** The id of the shop's only document. */
export const SHOP = "shop";

/** Long enough for somebody who is in the field today. */
export const INVITE_LIFE_MS = 7 * 24 * 60 * 60 * 1000;

/** Only this is kept of a link's token: whoever reads the disk cannot use the link. */
export function digestOf(token: string): string {
  return createHash("sha256").update(token).digest("base64url");
}

export type ShopBody = Pick<
  ShopDocument,
  "members" | "invites" | "counter" | "duty" | "stickers" | "secret"
>;

/** Adds a single-use link; a second owner link replaces the first. */
export function withInvite(
  shop: ShopBody,
  invite: { readonly token: string; readonly role: Role; readonly by: string },
  now: number,
): ShopBody {
  const others = shop.invites.filter(
    (one) => one.expires > now && !(invite.role === "owner" && one.role === "owner"),
  );
  const added: Invite = {
    digest: digestOf(invite.token),
    role: invite.role,
    expires: now + INVITE_LIFE_MS,
    by: invite.by,
  };
  return { ...shop, invites: [...others, added] };
}

/** An owner who tries the link made for somebody else stays the owner. */
const isHigher = (one: Role, other: Role) => roles.indexOf(one) < roles.indexOf(other);

export type Redeemed =
  | { readonly outcome: "joined"; readonly shop: ShopBody; readonly role: Role }
  | { readonly outcome: "expired" | "unknown" };

/** Uses a link up. A role already held is kept where it is the higher one. */
export function redeem(
  shop: ShopBody,
  token: string,
  given: { readonly member: Omit<Member, "role">; readonly now: number },
): Redeemed {
  const digest = digestOf(token);
  const invite = shop.invites.find((one) => one.digest === digest);
  if (invite === undefined) return { outcome: "unknown" };
  if (invite.expires <= given.now) return { outcome: "expired" };
  const { person } = given.member;
  const before = shop.members.find((one) => one.person === person);
  const held = before?.role;
  const role = held !== undefined && isHigher(held, invite.role) ? held : invite.role;
  const skills = before?.skills === undefined ? {} : { skills: before.skills };
  const member: Member = { ...given.member, role, ...skills };
  return {
    outcome: "joined",
    role,
    shop: {
      ...shop,
      invites: shop.invites.filter((one) => one !== invite),
      members: [...shop.members.filter((one) => one.person !== person), member],
    },
  };
}

const SKILL = "skill:";

/** The member with a skill more, or with one fewer where they had it. */
function withSkill(member: Member, skill: string): Member {
  const { skills = [] } = member;
  const has = skills.includes(skill);
  return { ...member, skills: has ? skills.filter((one) => one !== skill) : [...skills, skill] };
}

/**
 * Gives a member another role, notes or strikes out a skill (`skill:electrics`), or takes them out
 * of the shop (`out`).
 * @returns null where there is no such member, or it is an owner: an owner is not put out by a press
 */
export function withChange(shop: ShopBody, person: string, change: string): ShopBody | null {
  const member = shop.members.find((one) => one.person === person);
  if (member === undefined) return null;
  const others = shop.members.filter((one) => one !== member);
  if (change.startsWith(SKILL)) {
    const skilled = withSkill(member, change.slice(SKILL.length));
    return { ...shop, members: shop.members.map((one) => (one === member ? skilled : one)) };
  }
  if (member.role === "owner") return null;
  if (change === "out") return { ...shop, members: others };
  if (change !== "dispatcher" && change !== "technician") return null;
  return { ...shop, members: [...others, { ...member, role: change }] };
}
