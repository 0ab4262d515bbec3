import type { Member } from "../domain/documents.ts";
import type { Message } from "../domain/effects.ts";
import { line, phrase } from "../talk/decision.ts";
import type { Desk } from "../talk/desk.ts";
import { dutyMessage } from "../talk/duty.ts";
import { handAllMessage } from "../talk/hand-all.ts";
import {
  inviteMessage,
  type ListedCase,
  listMessage,
  memberMessage,
  peopleMessage,
} from "../talk/lobby.ts";
import { reportMessage } from "../talk/report-message.ts";
import { type CaseAct, may } from "../talk/rights.ts";
import { momentIn } from "../talk/urgency.ts";
import { createCallQueue } from "./call-queue.ts";
import { search } from "./case-lists.ts";
import type { CaseSummary } from "./case-summary.ts";
import type { Directory } from "./directory.ts";
import { reportOf } from "./report.ts";
import { caseTable, rateTable } from "./tables.ts";
import { createUrgencyNow } from "./urgency-now.ts";

const ON_A_PAGE = 10;
/** Cases in a table that is sent into a chat: a file for a look, not the archive. */
const MOST_ROWS = 2_000;

/** What a member asks for besides the name of the list. */
export interface Asked {
  readonly member: Member;
  /** Words after the command, or a button's value. */
  readonly argument: string;
  /** The first one shown of a long list. */
  readonly from: number;
  /** Milliseconds since 1970 UTC. */
  readonly now: number;
  /** When this member last looked at the calls; 0: never. */
  readonly lookedAt: number;
}

/** What a member of the shop gets for a command or a button, by its name. */
export type ForMembers = Readonly<Record<string, (asked: Asked) => Message>>;

const refused: Message = { lines: [line(phrase("not-allowed"))] };

/** Open cases that this member looks after. */
export const lookedAfter = (directory: Directory, member: Member): readonly CaseSummary[] =>
  directory.cases({ open: true }).filter((one) => one.shopSaw === member.person);

/** The lists that members can call up; each checks that this member may see it. */
export function createLists(directory: Directory, desk: () => Desk): ForMembers {
  const figures = () => directory.cases({}).map((one) => one.figures);

  const urgencyNow = createUrgencyNow(() => desk().urgency);
  const queue = createCallQueue(directory, urgencyNow);
  const momentOf = ({ now }: Asked) => momentIn(desk().shop.timeZone, now);

  /** @param shown the cases of this page alone @param count all of the list */
  function page(
    { shown, count }: { readonly shown: readonly CaseSummary[]; readonly count: number },
    about: "calls" | "jobs" | "find",
    asked: Asked,
  ): Message {
    const moment = momentOf(asked);
    const listed = shown.map(
      (one): ListedCase => ({
        ...{ id: one.id, opening: one.opening, alarm: one.alarm },
        urgency: urgencyNow(one, moment).level,
        machine: one.machine.kind ?? "other",
        isNew: about === "calls" && asked.lookedAt > 0 && one.touchedAt > asked.lookedAt,
        isClosed: one.closed !== null,
      }),
    );
    const more = asked.from + ON_A_PAGE < count ? asked.from + ON_A_PAGE : null;
    return listMessage(listed, about, { count, more, argument: asked.argument });
  }

  const pageOf = (cases: readonly CaseSummary[], { from }: Asked) => ({
    shown: cases.slice(from, from + ON_A_PAGE),
    count: cases.length,
  });

  function calls(asked: Asked): Message {
    const moment = momentOf(asked);
    const shown = queue.slice(moment, asked.from, ON_A_PAGE);
    return page({ shown, count: queue.count(moment) }, "calls", asked);
  }

  function find(asked: Asked): Message {
    const { words } = desk();
    const named = (kind: string) => words({ know: `machine-${kind}` }, asked.member.language);
    if (asked.argument.trim() === "") return { lines: [line(phrase("find-what"))] };
    const found = search(directory.cases({}), asked.argument, named);
    return page(pageOf(found, asked), "find", asked);
  }

  function table({ argument }: Asked): Message {
    const { shop, knowledge } = desk();
    const all = figures();
    const isRates = argument === "rates";
    const rows = isRates
      ? rateTable(all, knowledge, shop.comebackDays)
      : caseTable(all.slice(0, MOST_ROWS), shop.comebackDays);
    return { lines: [], paper: { kind: "table", name: isRates ? "rates" : "cases", rows } };
  }

  const where = (act: CaseAct, message: (asked: Asked) => Message) => (asked: Asked) =>
    may(asked.member.role, act) ? message(asked) : refused;
  return {
    jobs: (asked) => {
      const jobs = directory.cases({ technician: asked.member.person, open: true });
      return page(pageOf(jobs, asked), "jobs", asked);
    },
    calls: where("see", calls),
    find: where("see", find),
    call: where("note", () => ({ lines: [line(phrase("call-how"))] })),
    invite: where("invite", inviteMessage),
    duty: where("roster", ({ member, now }) => dutyMessage({ ...desk(), now }, member)),
    handover: where("decide", ({ member }) =>
      handAllMessage(desk().members, member, lookedAfter(directory, member).length),
    ),
    people: where("see", ({ member }) => peopleMessage(desk().members, member)),
    member: where("remove-member", ({ argument }) =>
      memberMessage(desk().members, argument, Object.keys(desk().shop.skills)),
    ),
    report: where("report", () =>
      reportMessage(reportOf(figures(), desk().shop.comebackDays), desk()),
    ),
    table: where("report", table),
  };
}
