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

/** A job on one or two pages: what the technician takes along, or what is kept of it. */
export interface JobSheet<Words> {
  readonly kind: "sheet";
  readonly name: string;
  readonly made: number;
  readonly title: Words;
  readonly head: readonly SheetLine<Words>[];
  readonly causes?: {
    readonly title: Words;
    readonly bars: readonly {
      readonly name: Words;
      /** Probability, in [0, 1]. */
      readonly share: number;
      readonly shareText: Words;
      readonly reason?: Words;
    }[];
  };
  /** The machine whose starting circuit is drawn, and the fault whose parts are marked. */
  readonly circuit?: {
    readonly title: Words;
    readonly kind: string;
    readonly fuel?: string;
    readonly volts?: number;
    readonly fault?: string;
  };
  readonly sections: readonly {
    readonly heading: Words;
    readonly lines: readonly SheetLine<Words>[];
  }[];
}

/** A table for spreadsheets; its first row names the columns. Ids and figures, no words. */
export interface Table {
  readonly kind: "table";
  readonly name: string;
  readonly rows: readonly (readonly (string | number | null)[])[];
}

/** A file of our own making, drawn up when it is sent, in the reader's language. */
export type Paper<Words> = CalendarEntry<Words> | JobSheet<Words> | Table;

/** The same paper with every piece of its words put into another form. */
export function wordPaper<A, B>(paper: Paper<A>, word: (words: A) => B): Paper<B> {
  if (paper.kind === "table") return paper;
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
            bars: causes.bars.map(({ name, shareText, reason, share }) => ({
              share,
              name: word(name),
              shareText: word(shareText),
              ...(reason === undefined ? {} : { reason: word(reason) }),
            })),
          },
        }),
    ...(circuit === undefined ? {} : { circuit: { ...circuit, title: word(circuit.title) } }),
    sections: sections.map(({ heading, lines }) => ({
      heading: word(heading),
      lines: lines.map(line),
    })),
  };
}
