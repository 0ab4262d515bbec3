import type { CaseState } from "../domain/case-state.ts";
import type { Reader, ReadingResult } from "../domain/reading.ts";
import { choicesFor } from "../talk/choices.ts";
import type { Desk } from "../talk/desk.ts";
import type { Side } from "./case-of.ts";

/** What typed words say, heard as an answer to what is open on that side of the case. */
export function readWords(
  reader: Reader,
  text: string,
  given: { readonly state: CaseState; readonly side: Side; readonly desk: Desk },
): ReadingResult {
  const { state, side, desk } = given;
  const open = side === "visit" ? state.open.technician : state.open.operator;
  const asking = open?.asking;
  const yields =
    asking?.about === "check" ? desk.knowledge.checks.get(asking.check)?.yields : undefined;
  const language = side === "visit" ? state.technician?.language : state.operator.language;
  const speaks = language ?? "en";
  const offered =
    asking === undefined
      ? []
      : choicesFor(asking, state, desk.knowledge).flatMap((choice) =>
          choice.state === undefined
            ? []
            : [{ state: choice.state, title: desk.words(choice.label, speaks) }],
        );
  return reader.read(text, {
    languages: [speaks, ...desk.shop.languages.filter((one) => one !== speaks)],
    now: desk.now,
    ...(state.machine.volts === undefined ? {} : { volts: state.machine.volts }),
    ...(yields === undefined ? {} : { expecting: { observation: yields, offered } }),
  });
}
