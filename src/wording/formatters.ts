/** The number, date and list forms of one language. */
export interface Formatters {
  number(value: number, options?: Intl.NumberFormatOptions): string;
  date(time: number, options: Intl.DateTimeFormatOptions): string;
  list(members: readonly string[]): string;
}

/** Makes the forms of a language; each is built once, for building them costs more than using them. */
export function createFormatters(locale: string): Formatters {
  const numbers = remember(
    (options: Intl.NumberFormatOptions) => new Intl.NumberFormat(locale, options),
  );
  const dates = remember(
    (options: Intl.DateTimeFormatOptions) => new Intl.DateTimeFormat(locale, options),
  );
  const lists = remember(() => new Intl.ListFormat(locale, { type: "conjunction" }));
  return {
    number: (value, options = {}) => numbers(options).format(value),
    date: (time, options) => dates(options).format(time),
    list: (members) => lists({}).format(members),
  };
}

/** @param make a function of options that are few, small and plain data */
function remember<Options extends object, Made>(make: (options: Options) => Made) {
  const made = new Map<string, Made>();
  return (options: Options): Made => {
    const key = JSON.stringify(options);
    const known = made.get(key) ?? make(options);
    made.set(key, known);
    return known;
  };
}
