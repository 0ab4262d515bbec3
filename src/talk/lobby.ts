import type { Member, Role } from "../domain/documents.ts";
import type { Line, Message } from "../domain/effects.ts";
import { button, line, phrase } from "./decision.ts";

/** The commands each kind of person sees in the app's list; all of them also work as words. */
export const commandsFor: Readonly<Record<Role | "operator", readonly string[]>> = {
  operator: ["new", "person", "help", "language", "forget"],
  technician: ["jobs", "new", "help", "language"],
  dispatcher: ["calls", "invite", "new", "help", "language"],
  owner: ["calls", "invite", "people", "new", "help", "language"],
};

/** Commands that belong to no case. */
export const lobbyCommands: ReadonlySet<string> = new Set([
  "help",
  "new",
  "language",
  "forget",
  "jobs",
  "calls",
  "invite",
  "people",
  "counter",
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
}

/** Open calls, the one touched last first; a press shows the slip or sheet again. */
export function listMessage(cases: readonly ListedCase[], about: "calls" | "jobs"): Message {
  if (cases.length === 0) return { lines: [line(phrase(`no-${about}`))] };
  return {
    lines: [line(phrase(`list-${about}`, { count: cases.length }), "heading")],
    buttons: cases.map((one) =>
      button(
        phrase(one.alarm ? "list-case-alarm" : "list-case", {
          number: one.id,
          machine: { know: `machine-${one.machine}` },
        }),
        { case: one.id, revision: 0, act: about === "calls" ? "slip" : "sheet" },
      ),
    ),
  };
}

/** Who belongs to the shop. */
export function peopleMessage(members: readonly Member[]): Message {
  const people = members.map((one) => {
    const role = { phrase: phrase(`role-${one.role}`) };
    return line(phrase("people-one", { name: one.name, role }), "bullet");
  });
  return { lines: [line(phrase("people-list"), "heading"), ...people] };
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
