const plain = (text: string) =>
  text
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[\p{P}\p{S}]/gu, " ")
    .replace(/\s+/g, " ")
    .trim();

/** True where two texts are the same words, whatever their case and marks. */
export const sameWords = (text: string, label: string) => plain(text) === plain(label);
