import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line } from "../domain/effects.ts";
import type { IncomingContent } from "../domain/incoming.ts";
import { advance } from "./advance.ts";
import { operatorReporter } from "./answer.ts";
import { type Decision, line, phrase, revise, together } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import { repeatOpen } from "./more-menu.ts";
import { goOn } from "./operator-press.ts";
import { factsIn } from "./understand.ts";

interface Given {
  readonly heard: Heard;
  readonly desk: Desk;
  readonly opening: readonly Line[];
}

/**
 * Keeps a photo, voice note or file and shows it to the shop. Only a file that answers the open
 * question moves the interview on: an album of ten must not bring ten questions.
 */
export function takeFile(
  state: CaseState,
  what: Extract<IncomingContent, { kind: "file" }>,
  given: Given,
): Decision {
  const { heard, desk } = given;
  const kept: CaseHappening = {
    type: "file.received",
    file: what.file,
    from: "operator",
    ...(what.caption === undefined ? {} : { caption: what.caption }),
  };
  const facts =
    heard.reading === null
      ? []
      : factsIn(heard.reading, {
          state,
          knowledge: desk.knowledge,
          reporter: operatorReporter(state),
        });
  const happenings = [kept, ...facts];
  if (facts.some((fact) => fact.type === "flag.raised")) {
    return goOn(state, { happenings, before: [] }, given);
  }
  const open = state.open.operator;
  const about = open?.asking.about;
  const isStory = about === "story" && what.file.kind !== "photo";
  const awaited = about === "photo" || about === "plate" || isStory;
  if (awaited && open !== null) {
    const gotLabel = isStory ? "answer-noted" : "answer-photo-got";
    const passed: CaseHappening = { type: "question.passed", asking: open.asking, why: "skipped" };
    const answered = { question: open, label: phrase(gotLabel) };
    return goOn(state, { happenings: [...happenings, passed], before: [], answered }, given);
  }
  if (open === null) {
    const before = [...given.opening, line(phrase("file-kept", { count: 1 }))];
    return goOn(state, { happenings, before }, given);
  }
  const after = advance(state, happenings, heard);
  const count = after.files.length;
  // The photo was asked for together with the story: the first one leaves the rest of the question.
  const isFirst = open.asking.about === "story" && state.files.length === 0;
  if (isFirst) {
    const again = repeatOpen(after, phrase("file-kept", { count }), given);
    return together({ happenings, effects: [] }, again);
  }
  const thanks = revise(state.operator, { lines: [line(phrase("file-kept", { count }))] }, "files");
  return together({ happenings, effects: [thanks] });
}
