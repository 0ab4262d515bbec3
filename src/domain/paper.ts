/** An appointment as calendars take it. `Words` is a phrase before, a text after the wording. */
export interface CalendarEntry<Words> {
  readonly kind: "calendar";
  /** Stays the same when the appointment moves. */
  readonly uid: string;
  /** Counts the changes of it. */
  readonly sequence: number;
  /** When it was made; all moments in milliseconds since 1970 UTC. */
  readonly made: number;
  readonly from: number;
  readonly until: number;
  readonly cancelled: boolean;
  readonly title: Words;
  readonly where?: Words;
  readonly about: readonly Words[];
  readonly place?: { readonly latitude: number; readonly longitude: number };
}

export interface SheetLine<Words> {
  readonly words: Words;
  /** `tick`: a box to tick off; `turn`: where the line before leads otherwise. */
  readonly style?: "step" | "tick" | "turn" | "caution" | "quote";
}

/** A cause as a bar of a picture. */
export interface CauseBar<Words> {
  readonly name: Words;
  /** Probability, in [0, 1]. */
  readonly share: number;
  readonly shareText: Words;
  readonly reason?: Words;
  /** No cause of its own ("something else"): drawn hollow. */
  readonly hollow?: boolean;
}

/** The machine whose starting circuit is drawn, and the fault whose parts are marked. */
export interface CircuitWish<Words> {
  readonly title: Words;
  readonly kind: string;
  readonly fuel?: string;
  readonly volts?: number;
  readonly fault?: string;
  /** Headings over the rows of the drawing; absent: in English. */
  readonly headings?: {
    readonly supply: Words;
    readonly control: Words;
    readonly power: Words;
  };
  /** What the meter should show, by the observation that it answers; those not drawn are left out. */
  readonly readings?: readonly { readonly point: string; readonly words: Words }[];
}

/** The likely causes as a picture to look at. */
export interface CausesCard<Words> {
  readonly kind: "causes";
  readonly name: string;
  readonly title: Words;
  readonly subtitle?: Words;
  readonly bars: readonly CauseBar<Words>[];
  readonly note?: Words;
}

/** The starting circuit with its test points and what the meter should show there. */
export interface CircuitCard<Words> {
  readonly kind: "circuit";
  readonly name: string;
  readonly circuit: CircuitWish<Words>;
}

/** A job on one or two pages: what the technician takes along, or what is kept of it. */
export interface JobSheet<Words> {
  readonly kind: "sheet";
  readonly name: string;
  readonly made: number;
  readonly title: Words;
  readonly head: readonly SheetLine<Words>[];
  readonly causes?: { readonly title: Words; readonly bars: readonly CauseBar<Words>[] };
  readonly circuit?: CircuitWish<Words>;
  readonly sections: readonly {
    readonly heading: Words;
    readonly lines: readonly SheetLine<Words>[];
  }[];
}

/** A sticker for a machine: whoever scans it begins a chat in which that machine is known. */
export interface MachineSticker<Words> {
  readonly kind: "sticker";
  readonly name: string;
  readonly title: Words;
  /** The address in the code. */
  readonly link: string;
  readonly lines: readonly Words[];
}

/** A table for spreadsheets; its first row names the columns. Ids and figures, no words. */
export interface Table {
  readonly kind: "table";
  readonly name: string;
  readonly rows: readonly (readonly (string | number | null)[])[];
}

/** A file of our own making, drawn up when it is sent, in the reader's language. */
export type Paper<Words> =
  | CalendarEntry<Words>
  | JobSheet<Words>
  | CausesCard<Words>
  | CircuitCard<Words>
  | MachineSticker<Words>
  | Table;

function wordBar<A, B>(bar: CauseBar<A>, word: (words: A) => B): CauseBar<B> {
  const { name, shareText, reason, ...rest } = bar;
  return {
    ...rest,
    name: word(name),
    shareText: word(shareText),
    ...(reason === undefined ? {} : { reason: word(reason) }),
  };
}

function wordCircuit<A, B>(circuit: CircuitWish<A>, word: (words: A) => B): CircuitWish<B> {
  const { title, readings, headings, ...rest } = circuit;
  return {
    ...rest,
    title: word(title),
    ...(headings === undefined
      ? {}
      : {
          headings: {
            supply: word(headings.supply),
            control: word(headings.control),
            power: word(headings.power),
          },
        }),
    ...(readings === undefined
      ? {}
      : { readings: readings.map(({ point, words }) => ({ point, words: word(words) })) }),
  };
}

function wordCauses<A, B>(card: CausesCard<A>, word: (words: A) => B): CausesCard<B> {
  const { title, subtitle, note, bars, ...rest } = card;
  return {
    ...rest,
    title: word(title),
    ...(subtitle === undefined ? {} : { subtitle: word(subtitle) }),
    ...(note === undefined ? {} : { note: word(note) }),
    bars: bars.map((bar) => wordBar(bar, word)),
  };
}

/** The same paper with every piece of its words put into another form. */
export function wordPaper<A, B>(paper: Paper<A>, word: (words: A) => B): Paper<B> {
  if (paper.kind === "table") return paper;
  if (paper.kind === "sticker") {
    return { ...paper, title: word(paper.title), lines: paper.lines.map(word) };
  }
  if (paper.kind === "causes") return wordCauses(paper, word);
  if (paper.kind === "circuit") return { ...paper, circuit: wordCircuit(paper.circuit, word) };
  if (paper.kind === "calendar") {
    const { title, where, about, ...rest } = paper;
    return {
      ...rest,
      title: word(title),
      ...(where === undefined ? {} : { where: word(where) }),
      about: about.map(word),
    };
  }
  const { title, head, causes, circuit, sections, ...rest } = paper;
  const line = ({ words, ...style }: SheetLine<A>): SheetLine<B> => ({
    ...style,
    words: word(words),
  });
  return {
    ...rest,
    title: word(title),
    head: head.map(line),
    ...(causes === undefined
      ? {}
      : {
          causes: {
            title: word(causes.title),
            bars: causes.bars.map((bar) => wordBar(bar, word)),
          },
        }),
    ...(circuit === undefined ? {} : { circuit: wordCircuit(circuit, word) }),
    sections: sections.map(({ heading, lines }) => ({
      heading: word(heading),
      lines: lines.map(line),
    })),
  };
}
