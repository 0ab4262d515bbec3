import type { Member } from "../domain/documents.ts";
import type { Message } from "../domain/effects.ts";
import { line, phrase } from "../talk/decision.ts";
import { inviteMessage, type ListedCase, listMessage, peopleMessage } from "../talk/lobby.ts";
import { type CaseAct, may } from "../talk/rights.ts";
import type { Directory } from "./directory.ts";

const CASES_LISTED = 10;

/** What a member of the shop gets for a command, by the command's name. */
export type ForMembers = Readonly<Record<string, (member: Member) => Message>>;

const refused: Message = { lines: [line(phrase("not-allowed"))] };

/** The lists that members can call up; each checks that this member may see it. */
export function createLists(directory: Directory, members: () => readonly Member[]): ForMembers {
  const listed = (about: "calls" | "jobs", person: string): ListedCase[] =>
    directory
      .cases(about === "jobs" ? { technician: person, open: true } : { open: true })
      .filter((one) => about === "jobs" || one.shopTold)
      .slice(0, CASES_LISTED)
      .map(({ id, machine, opening, alarm }) => {
        return { id, machine: machine.kind ?? "other", opening, alarm };
      });
  const where = (act: CaseAct, message: (member: Member) => Message) => (member: Member) =>
    may(member.role, act) ? message(member) : refused;
  return {
    jobs: (member) => listMessage(listed("jobs", member.person), "jobs"),
    calls: where("see", (member) => listMessage(listed("calls", member.person), "calls")),
    invite: where("invite", inviteMessage),
    people: where("see", () => peopleMessage(members())),
  };
}
