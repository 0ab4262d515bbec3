import type { Member, Role } from "../domain/documents.ts";
import type { Line, Message, Phrase } from "../domain/effects.ts";
import { button, line, phrase } from "./decision.ts";
import { may } from "./rights.ts";

/** The commands each kind of person sees in the app's list; all of them also work as words. */
export const commandsFor: Readonly<Record<Role | "operator", readonly string[]>> = {
  operator: ["new", "person", "machines", "help", "language", "export", "forget"],
  technician: ["jobs", "duty", "new", "help", "language"],
  dispatcher: [
    "calls",
    "call",
    "find",
    "report",
    "duty",
    "handover",
    "invite",
    "new",
    "help",
    "language",
  ],
  owner: [
    "calls",
    "call",
    "find",
    "report",
    "duty",
    "handover",
    "invite",
    "people",
    "new",
    "help",
    "language",
  ],
};

/** Commands that belong to no case. */
export const lobbyCommands: ReadonlySet<string> = new Set([
  "help",
  "new",
  "language",
  "forget",
  "export",
  "machines",
  "jobs",
  "calls",
  "invite",
  "people",
  "counter",
  "find",
  "report",
  "duty",
  "handover",
]);

/** What this person can do here. */
export function helpMessage(member: Member | null, shop: { name: string; phone: string }): Message {
  const role = member?.role ?? "operator";
  const commands = commandsFor[role].map((name) =>
    line(phrase("help-command", { name, what: { phrase: phrase(`command-${name}`) } }), "bullet"),
  );
  return {
    lines: [
      line(phrase(`help-${role}`, { name: shop.name, phone: shop.phone }), "heading"),
      ...commands,
    ],
  };
}

export interface ListedCase {
  readonly id: string;
  readonly machine: string;
  readonly opening: string;
  readonly alarm: boolean;
  readonly urgency: "low" | "normal" | "high" | null;
  /** Something happened in it since this person last looked. */
  readonly isNew: boolean;
  readonly isClosed: boolean;
}

/** Longer words after a command would not fit into a button that repeats them. */
const MOST_ARGUMENT = 24;

function listLabel(one: ListedCase): Phrase {
  const words = phrase(one.alarm ? "list-case-alarm" : "list-case", {
    number: one.id,
    machine: { know: `machine-${one.machine}` },
  });
  const label = { phrase: words };
  if (one.isClosed) return phrase("list-closed", { label });
  const urgent = one.urgency === "high" && !one.alarm;
  const marked = urgent ? phrase("list-urgent", { label }) : words;
  return one.isNew ? phrase("list-new", { label: { phrase: marked } }) : marked;
}

/** One page of a list; a press shows the slip or sheet again, the last one the next page. */
export function listMessage(
  cases: readonly ListedCase[],
  about: "calls" | "jobs" | "find",
  whole: { readonly count: number; readonly more: number | null; readonly argument: string },
): Message {
  if (cases.length === 0) return { lines: [line(phrase(`no-${about}`))] };
  const argument = whole.argument.slice(0, MOST_ARGUMENT);
  const next = { revision: 0, act: "page", value: `${about}:${whole.more}:${argument}` };
  return {
    lines: [line(phrase(`list-${about}`, { count: whole.count }), "heading")],
    buttons: [
      ...cases.map((one) =>
        button(listLabel(one), {
          case: one.id,
          revision: 0,
          act: about === "jobs" ? "sheet" : "slip",
        }),
      ),
      ...(whole.more === null ? [] : [button(phrase("press-next-page"), next)]),
    ],
  };
}

/** Who belongs to the shop; the owner can change that. */
export function peopleMessage(members: readonly Member[], reader: Member): Message {
  const people = members.map((one) => {
    const role = { phrase: phrase(`role-${one.role}`) };
    return line(phrase("people-one", { name: one.name, role }), "bullet");
  });
  const buttons = may(reader.role, "remove-member")
    ? members.map((one) =>
        button({ raw: one.name }, { revision: 0, act: "member", value: one.person }),
      )
    : [];
  return { lines: [line(phrase("people-list"), "heading"), ...people], buttons };
}

/** What can be changed about one person of the shop. */
export function memberMessage(
  members: readonly Member[],
  person: string,
  skills: readonly string[] = [],
): Message {
  const member = members.find((one) => one.person === person);
  if (member === undefined) return { lines: [line(phrase("no-longer-there"))] };
  const press = (value: string) => ({ revision: 0, act: "change-member", value });
  const known = skills.map((skill) => {
    const key = member.skills?.includes(skill) === true ? "ticked" : "unticked";
    return button(phrase(key, { label: skill }), press(`${person}:skill:${skill}`));
  });
  const other = member.role === "technician" ? "dispatcher" : "technician";
  const role = { phrase: phrase(`role-${other}`) };
  // An owner is neither made less nor put out by a press.
  const changes =
    member.role === "owner"
      ? []
      : [
          button(phrase("press-make-role", { role }), press(`${person}:${other}`)),
          button(phrase("press-remove", { name: member.name }), press(`${person}:out?`)),
        ];
  return {
    lines: [line(phrase("member-what", { name: member.name }), "heading")],
    buttons: [...known, ...changes],
  };
}

/** Asks before somebody is taken out of the shop: only a new link brings them back. */
export function removalMessage(members: readonly Member[], person: string): Message {
  const name = members.find((one) => one.person === person)?.name;
  if (name === undefined) return { lines: [line(phrase("no-longer-there"))] };
  const press = { revision: 0, act: "change-member", value: `${person}:out` };
  return {
    lines: [line(phrase("remove-sure", { name }), "heading")],
    buttons: [button(phrase("remove-yes"), press)],
  };
}

/** Which role shall the new link give? */
export function inviteMessage(): Message {
  return {
    lines: [line(phrase("invite-which"), "heading")],
    buttons: (["dispatcher", "technician"] as const).map((role) =>
      button(phrase(`role-${role}`), { revision: 0, act: "invite", value: role }),
    ),
  };
}

/** The link itself, to be passed on by hand. */
export function inviteLinkMessage(role: Role, link: string): Message {
  return {
    lines: [
      line(phrase("invite-link", { role: { phrase: phrase(`role-${role}`) } }), "heading"),
      line({ raw: link }),
      line(phrase("invite-once")),
    ],
  };
}

/** Languages to choose from, each in its own name. */
export function languageMessage(languages: readonly string[]): Message {
  return {
    lines: [line(phrase("language-which"), "heading")],
    buttons: languages.map((code) =>
      button(phrase(`language-${code}`), { revision: 0, act: "language", value: code }),
    ),
  };
}

/** Asks before everything that is kept of a person is removed. */
export function forgetMessage(): Message {
  return {
    lines: [line(phrase("forget-sure"), "heading"), line(phrase("forget-what"))],
    buttons: [
      button(phrase("forget-yes"), { revision: 0, act: "forget", value: "yes" }),
      button(phrase("forget-no"), { revision: 0, act: "forget", value: "no" }),
    ],
  };
}

/** A dispatcher or technician wrote words that belong to no case. */
export function strayWords(role: Role): Line[] {
  return [line(phrase(`stray-${role === "technician" ? "technician" : "dispatcher"}`))];
}
