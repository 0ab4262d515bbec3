import type { Line, Message } from "../domain/effects.ts";
import { wordPaper } from "../domain/paper.ts";
import type { Rendered, Wording } from "../domain/rendered.ts";
import { buttonLabel } from "./button-label.ts";
import { createLanguagePack } from "./language-pack.ts";
import { layOut } from "./lay-out.ts";
import { createSpeaker, type Speaker } from "./speaker.ts";
import { plainWords } from "./text-direction.ts";
import type { ReportTrouble } from "./trouble.ts";

export interface WordingOptions {
  /** Fluent messages of each language; English under `en`. */
  readonly locales: Readonly<Record<string, string>>;
  /** The knowledge's word in a language; null where that language lacks it. */
  readonly knowledgeWord: (key: string, language: string) => string | null;
  /** IANA name of the shop's time zone. */
  readonly timeZone: string;
  /** Hears of everything that could not be worded as meant. Default: nobody. */
  readonly report?: ReportTrouble;
}

const ENGLISH = "en";

/**
 * Makes the wording. It never throws: what is missing comes in English, or as its key in plain words,
 * and is reported. A text may be longer than one message can be (see `splitPoints`).
 */
export function createWording(options: WordingOptions): Wording {
  const { knowledgeWord, timeZone, report = () => {} } = options;
  const make = (language: string, english: Speaker | null) => {
    const pack = createLanguagePack(language, options.locales[language] ?? "", report);
    return createSpeaker({ pack, english, knowledgeWord, timeZone, report });
  };
  const english = make(ENGLISH, null);
  const speakers = new Map([[ENGLISH, english]]);
  for (const language of Object.keys(options.locales)) {
    if (language !== ENGLISH) speakers.set(language, make(language, english));
  }
  /** The language, else the same language elsewhere (`de` for `de-AT`), else English. */
  const speakerOf = (language: string) =>
    speakers.get(language) ?? speakers.get(language.split("-")[0] ?? "") ?? english;
  return {
    render: (message, language) => render(message, speakerOf(language)),
    phrase: (phrase, language) => speakerOf(language).say(phrase),
  };
}

type Offered = Pick<NonNullable<Message["offer"]>, "share" | "label">;

function render(message: Message, speaker: Speaker): Rendered {
  const { file, place, offer, endOffer, picture, card, attachment, paper } = message;
  const shared = ({ share, label }: Offered) => ({
    ...{ kind: share, label: buttonLabel(speaker.say(label)) },
  });
  return {
    ...layOut(
      message.lines.map((line) => worded(line, speaker)),
      marksOf(speaker),
    ),
    buttons: (message.buttons ?? []).map((row) =>
      row.map(({ label, press }) => ({ label: buttonLabel(speaker.say(label)), press })),
    ),
    ...(offer && { share: { ...shared(offer), ...(offer.also && { also: shared(offer.also) }) } }),
    ...(endOffer !== undefined && { endShare: endOffer }),
    ...(file && { file }),
    ...(place && { place }),
    ...(picture && { picture }),
    ...(card && { card }),
    ...(attachment && { attachment }),
    ...(paper && {
      paper: {
        paper: wordPaper(paper, (words) => plainWords(speaker.say(words))),
        language: speaker.pack.language,
        rightToLeft: speaker.pack.rightToLeft,
      },
    }),
  };
}

function worded({ say, style, gap }: Line, speaker: Speaker) {
  return { text: speaker.say(say), ...(style && { style }), ...(gap && { gap }) };
}

function marksOf(speaker: Speaker) {
  return {
    caution: () => speaker.say({ key: "mark-caution" }),
    number: (value: number) => speaker.pack.forms.number(value),
  };
}
