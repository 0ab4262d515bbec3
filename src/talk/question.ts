import type { Asking } from "../domain/case-events.ts";
import { askingKey, type CaseState, type OpenQuestion } from "../domain/case-state.ts";
import type { Line, Message, Phrase } from "../domain/effects.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { Performer } from "../domain/vocabulary.ts";
import { choicesFor } from "./choices.ts";
import { button, type Decision, line, nothingToDo, phrase, say } from "./decision.ts";
import { type Desk, machineOf } from "./desk.ts";
import { restLines, trySafelyLines } from "./rest.ts";
import { tripLines } from "./trip.ts";

/** Longer than two taps lie apart, and than a paced message needs to come. */
const JUST_ASKED_MS = 10_000;

/** The question is on its way or was just read: saying it again would only be in the way. */
export function wasJustAsked(open: OpenQuestion | null, now: number): boolean {
  return open !== null && now - open.askedAt < JUST_ASKED_MS;
}

/** The name under which a question's message is found again to show what was answered. */
export const questionSlot = (asking: Asking): string => `question-${askingKey(asking)}`;

const know = (key: string): Phrase => ({ know: key });

/** The warnings that belong to something that is done by hand. */
export function cautionLines(hazards: readonly string[]): Line[] {
  return hazards.map((hazard) => line(know(wordKey("hazard", hazard, "caution")), "caution"));
}

function hazardsOf(asking: Asking, knowledge: Knowledge): readonly string[] {
  if (asking.about === "hand-back") {
    return knowledge.checks.get(asking.check ?? "")?.hazards ?? [];
  }
  if (asking.about === "trip") {
    const all = asking.checks.flatMap(
      (id) => (knowledge.checks.get(id) ?? knowledge.acts.get(id))?.hazards ?? [],
    );
    return [...new Set(all)];
  }
  if (asking.about === "check") return knowledge.checks.get(asking.check)?.hazards ?? [];
  if (asking.about === "act") return knowledge.acts.get(asking.act)?.hazards ?? [];
  if (asking.about === "remedy") return knowledge.remedies.get(asking.remedy)?.hazards ?? [];
  return [];
}

/** Warnings in full the first time this person meets them, their names in one line after that. */
export function cautionsFor(
  asking: Asking,
  given: { readonly state: CaseState; readonly to: Performer; readonly knowledge: Knowledge },
): Line[] {
  const { state, to, knowledge } = given;
  if (asking.about === "act" && asking.stage === "result") return [];
  const met = new Set(
    state.askedEver
      .filter((asked) => asked.to === to && askingKey(asked.asking) !== askingKey(asking))
      .flatMap((asked) => hazardsOf(asked.asking, knowledge)),
  );
  const hazards = hazardsOf(asking, knowledge);
  const again = hazards.filter((hazard) => met.has(hazard));
  const said = again.map((hazard) => ({ know: wordKey("hazard", hazard) }));
  const names = { list: said, parted: true } as const;
  return [
    ...cautionLines(hazards.filter((hazard) => !met.has(hazard))),
    ...(again.length === 0 ? [] : [line(phrase("cautions-as-before", { names }), "caution")]),
  ];
}

function checkLines(knowledge: Knowledge, id: string): Line[] {
  const check = knowledge.checks.get(id);
  if (check === undefined) return [];
  const observation = knowledge.observations.get(check.yields);
  const how = check.how === undefined ? [] : [line(know(wordKey("check", id, "how")))];
  const unit =
    observation?.kind === "number" && observation.unit !== undefined
      ? [line(phrase("type-a-reading", { unit: observation.unit }))]
      : [];
  const ask = line(know(wordKey("check", id, "ask")), "heading");
  return [ask, ...how, ...unit];
}

function actLines(knowledge: Knowledge, id: string, stage: "offer" | "result"): Line[] {
  const act = knowledge.acts.get(id);
  if (act === undefined) return [];
  if (stage === "result") return [line(phrase("try-again-now"), "heading")];
  const how = act.how === undefined ? [] : [line(know(wordKey("act", id, "how")))];
  return [line(know(wordKey("act", id, "ask")), "heading"), ...how];
}

function remedyLines(knowledge: Knowledge, id: string): Line[] {
  const remedy = knowledge.remedies.get(id);
  if (remedy === undefined) return [];
  const parts = { list: remedy.parts.map((part) => ({ know: wordKey("part", part) })) };
  return [
    line(know(wordKey("remedy", id)), "heading"),
    line(know(wordKey("remedy", id, "text"))),
    ...(remedy.parts.length === 0 ? [] : [line(phrase("step-parts", { parts }))]),
  ];
}

const photoOf = (subject: string | undefined): Phrase =>
  phrase(subject === undefined ? "ask-photo" : `ask-photo-${subject}`);

function storyLines(photo: string | undefined): Line[] {
  const shown = photo === undefined ? [] : [line(photoOf(photo))];
  return [line(phrase("ask-story"), "heading"), line(phrase("ask-story-how")), ...shown];
}

/** What the question says, without the answers. */
export function questionLines(asking: Asking, desk: Desk): Line[] {
  switch (asking.about) {
    case "check":
      return checkLines(desk.knowledge, asking.check);
    case "act":
      return actLines(desk.knowledge, asking.act, asking.stage);
    case "meaning":
      return asking.check === undefined
        ? [line(phrase("ask-meaning"), "heading")]
        : checkLines(desk.knowledge, asking.check);
    case "safety":
      return [line(phrase("ask-safety"), "heading"), line(phrase("ask-safety-how"))];
    case "story":
      return storyLines(asking.photo);
    case "where":
      return [line(phrase(asking.phone === true ? "ask-where-phone" : "ask-where"), "heading")];
    case "trip":
      return tripLines(asking, desk.knowledge);
    case "known":
      return [line(phrase("ask-kind"), "heading")];
    case "photo":
      return [line(photoOf(asking.of), "heading")];
    case "remedy":
      return remedyLines(desk.knowledge, asking.remedy);
    default:
      return [line(phrase(`ask-${asking.about}`), "heading")];
  }
}

const sharePhone = { share: "contact", label: phrase("share-phone") } as const;

/** The place's buttons stand until the end, with the one for the number that is asked after it. */
function offerOf(asking: Asking, state: CaseState): Message["offer"] {
  const isPlaceAsked = state.askedEver.some((one) => one.asking.about === "where");
  if (asking.about === "phone") return isPlaceAsked ? undefined : sharePhone;
  if (asking.about !== "where") return undefined;
  const place = { share: "location", label: phrase("share-place") } as const;
  return asking.phone === true ? { ...place, also: sharePhone } : place;
}

/** "Show me" where there is a drawing of what to look at. */
function showButtons(asking: Asking, state: CaseState, knowledge: Knowledge) {
  const check = asking.about === "check" ? knowledge.checks.get(asking.check) : undefined;
  if (check?.drawing === undefined) return [];
  const press = { case: state.id, revision: state.revision, act: "show", value: check.id };
  return [button(phrase("answer-show"), press)];
}

/** The drawing of a check, its numbers in words under it. */
export function showCheck(state: CaseState, id: string, knowledge: Knowledge): Decision {
  const check = knowledge.checks.get(id);
  if (check?.drawing === undefined) return nothingToDo;
  const { drawing } = check;
  const message = {
    lines: [line(phrase(`drawing-${drawing}`)), line(phrase("drawing-place"))],
    picture: { drawing, machine: machineOf(state).kind },
  };
  return { happenings: [], effects: [say(state.operator, message)] };
}

/** How many more may follow; where it is more than was said before, why. */
function progressLines(state: CaseState, aboutMore: number | null): Line[] {
  if (aboutMore === null || aboutMore <= 0) return [];
  const rises = state.aboutMore !== null && aboutMore > state.aboutMore;
  const key = rises ? "about-more-rises" : "about-more";
  return [line(phrase(key, { count: aboutMore }), undefined, true)];
}

export interface QuestionParts {
  readonly asking: Asking;
  readonly revision: number;
  readonly aboutMore: number | null;
  /** Lines said first: what was understood, what was noted. */
  readonly before: readonly Line[];
}

/** Of two things asked in one breath, only what is still missing. */
function stillMissing(asking: Asking, state: CaseState): Asking {
  const isPhoneKnown = asking.about === "where" && state.phone !== null;
  const hasPhoto = state.files.some(({ file }) => file.kind === "photo");
  if (asking.about === "story" && hasPhoto) return { about: "story" };
  return isPhoneKnown ? { about: "where" } : asking;
}

/** A question as a message: what was noted, the question, its answers, and the way out. */
export function questionMessage(state: CaseState, parts: QuestionParts, desk: Desk): Message {
  const { revision } = parts;
  const asking = stillMissing(parts.asking, state);
  const press = (act: string, value?: string) => ({
    case: state.id,
    revision,
    act,
    ...(value === undefined ? {} : { value }),
  });
  const answers = choicesFor(asking, state, desk.knowledge).map((choice) =>
    button(choice.label, press("answer", choice.value)),
  );
  const offer = offerOf(asking, state);
  const more = button(phrase("answer-more"), press("more"));
  const cautions = cautionsFor(asking, { state, to: "operator", knowledge: desk.knowledge });
  const { knowledge, now } = desk;
  const safely =
    asking.about === "act" && asking.stage === "result" ? trySafelyLines(asking, state) : [];
  const question = [
    ...cautions,
    ...questionLines(asking, desk),
    ...safely,
    ...restLines(asking, { state, knowledge, now }),
  ];
  const [first, ...rest] = question;
  const spaced = first === undefined ? [] : [{ ...first, gap: parts.before.length > 0 }, ...rest];
  return {
    lines: [...parts.before, ...spaced, ...progressLines(state, parts.aboutMore)],
    buttons: [...answers, ...showButtons(asking, state, knowledge), more],
    ...(offer === undefined ? {} : { offer }),
  };
}

/** The question's message once it is answered: the same words, the answer, no buttons. */
export function answeredMessage(open: OpenQuestion, answer: Phrase, desk: Desk): Message {
  const [first, ...rest] = questionLines(open.asking, desk);
  const question = first === undefined ? [] : [{ ...first, gap: open.before.length > 0 }, ...rest];
  const answered = line(phrase("answered", { answer: { phrase: answer } }));
  return { lines: [...open.before, ...question, answered] };
}
