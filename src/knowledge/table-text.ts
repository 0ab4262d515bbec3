/** One row of a table, with the line of the file on which it begins. */
export interface Row {
  readonly cells: readonly string[];
  readonly line: number;
}

/**
 * The rows of a table written as text (RFC 4180), parted by semicolons where its first line has
 * any, as spreadsheets write it where the comma is the decimal sign. Rows without a word are
 * left out; a quote in the middle of a cell is part of it.
 */
export function readTable(text: string): readonly Row[] {
  const plain = text.replace(/^\uFEFF/, "").replaceAll("\r\n", "\n");
  const [firstLine = ""] = plain.split("\n");
  const separator = firstLine.includes(";") ? ";" : ",";
  const rows: { cells: string[]; line: number }[] = [{ cells: [""], line: 1 }];
  let [quoted, line] = [false, 1];
  const cells = () => rows.at(-1)?.cells ?? [];
  const write = (sign: string) => void cells().push((cells().pop() ?? "") + sign);
  for (let i = 0; i < plain.length; i += 1) {
    const sign = plain[i] ?? "";
    if (sign === "\n") line += 1;
    if (sign === '"' && quoted && plain[i + 1] === '"') {
      write(sign);
      i += 1;
    } else if (sign === '"' && (quoted || cells().at(-1) === "")) quoted = !quoted;
    else if (quoted) write(sign);
    else if (sign === separator) cells().push("");
    else if (sign === "\n") rows.push({ cells: [""], line });
    else write(sign);
  }
  return rows.filter((row) => row.cells.some((one) => one.trim() !== ""));
}
