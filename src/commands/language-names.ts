/** A language's name in that language itself. */
export function languageNames(tag: string): string {
  return new Intl.DisplayNames([tag], { type: "language" }).of(tag) ?? tag;
}
