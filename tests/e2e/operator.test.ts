import { beforeAll, describe, expect, it } from "vitest";
import { type Called, type Caller, MADE_UP, playCalls } from "../helpers/e2e-operators.ts";

/** What people call about: every sound of the start, and troubles that come and go. */
const COMPLAINTS = [
  "nothing",
  "one-click",
  "fast-clicks",
  "slow",
  "turns-then-stops",
  "uneven",
  "kicks-back",
  "spins-alone",
  "grinds",
  "turns-no-fire",
  "fires-then-dies",
  "runs-only-while-held",
  "keeps-cranking",
].map((state) => `on-start.${state}`);
const AT_TIMES = ["pattern.sometimes", "pattern.only-hot", "pattern.only-wet"];
/** Turns slowly, and the battery is empty again each morning. */
const GOES_FLAT = ["battery-goes-flat.overnight"];

const all = [...COMPLAINTS, ...AT_TIMES, ...GOES_FLAT];
const LANGUAGES = ["en", "es", MADE_UP];
/** Those who have the same trouble stand together: the engine has just thought about it. */
const callers: Caller[] = [
  ...all.flatMap((complaint) =>
    LANGUAGES.flatMap((language) =>
      (["buttons", "text"] as const).map((manner): Caller => ({ language, manner, complaint })),
    ),
  ),
  { language: "de", manner: "buttons", complaint: "on-start.nothing" },
];

let played: Awaited<ReturnType<typeof playCalls>>;
beforeAll(async () => {
  played = await playCalls(callers);
}, 900_000);

const nameOf = ({ language, manner, complaint }: Caller) => `${complaint} ${manner} ${language}`;
const bad = (isBad: (call: Called) => boolean) => played.called.filter(isBad).map(nameOf);

/** The state told first of an observation. */
function told({ events }: Called, observation: string): unknown {
  const answers = events.flatMap(({ type, report }) =>
    type === "answer.given" && isReport(report) && report.observation === observation
      ? [Object.keys(report.said.weights ?? {})[0]]
      : [],
  );
  return answers[0];
}

/** What was asked, in order. */
const asked = ({ events }: Called) =>
  events
    .flatMap(({ type, asking }) => (type === "question.asked" ? [JSON.stringify(asking)] : []))
    .join();

function isReport(value: unknown): value is {
  readonly observation: string;
  readonly said: { readonly weights?: Readonly<Record<string, number>> };
} {
  return typeof value === "object" && value !== null && "observation" in value && "said" in value;
}

describe("whole interviews over HTTP, by buttons alone and by text alone, in three languages", () => {
  it("all come to an end, which names the case", () => {
    expect(bad((call) => !call.ended)).toEqual([]);
    const isOver = ({ events }: Called) =>
      events.some(({ type }) => type === "interview.ended" || type === "case.closed");
    expect(bad((call) => !isOver(call))).toEqual([]);
    expect(bad(({ id, texts }) => !texts.at(-1)?.includes(id))).toEqual([]);
  });

  it("note the complaint, pressed or typed, in every language", () => {
    const lost = bad((call) => {
      const [observation = "", state = ""] = call.complaint.split(".");
      return (
        told(call, observation) !== state && !call.events.some((e) => e["type"] === "flag.raised")
      );
    });
    expect(lost).toEqual([]);
  });

  // These callers know nothing but the complaint, and say so to every question.
  it("take a bearable number of messages even of somebody who knows nothing more", () => {
    expect(bad(({ messages }) => messages > 30)).toEqual([]);
  });

  it("go the same way whether pressed or typed, in whatever language", () => {
    const english = new Map(
      played.called
        .filter(({ language, manner }) => language === "en" && manner === "buttons")
        .map((call) => [call.complaint, asked(call)]),
    );
    const differ = bad((call) => english.get(call.complaint) !== asked(call));
    expect(differ).toEqual([]);
  });

  it("show nobody of another language a plain English word of ours", () => {
    const { speech, workshop } = played;
    const plain = [...workshop.knowledge.checks.values()].map(({ ask }) => ask);
    const greeting = speech.wording.phrase({ key: "ask-safety" }, "en");
    const english = [...plain, greeting].filter((text) => text.length > 12);
    const mixed = bad(
      ({ language, texts }) =>
        language !== "en" && english.some((text) => texts.join("\n").includes(text)),
    );
    expect(mixed).toEqual([]);
  });

  it("were sent without anything the chat service refused", () => {
    // The made-up language's description is longer than there is room for; no shipped one is.
    const wrong = played.logged.filter((line) => !line.startsWith("introduction-failed"));
    expect(wrong.filter((line) => /refused|failed|wording/.test(line))).toEqual([]);
  });
});
