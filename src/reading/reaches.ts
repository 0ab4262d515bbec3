import type { Clauses } from "./clauses.ts";
import type { Quantity } from "./quantity.ts";

/**
 * Which words tell where a number was measured: those of its clause, and of the clauses beside it
 * that have no number of their own and are joined to it without a comma ("8.8 V while cranking").
 * A clause that is nothing but a number belongs to all that leads up to it in its sentence ("stud,
 * key on start: 8.9 V"), and one behind a colon to what stands before it ("trigger: 11.8 V on start").
 *
 * @returns a number for each token, the same for tokens within one another's reach
 */
export function reachesOf(text: Clauses, quantities: readonly Quantity[]): readonly number[] {
  const bounds = clauseBounds(text);
  const measured = bounds.map(({ from, to }) =>
    quantities.filter((one) => one.from >= from && one.from < to),
  );
  const groups: number[] = [];
  let holdsNumber = false;
  // Where the clauses began that lead up to the next number, all of one sentence.
  let leading = 0;
  bounds.forEach(({ from, to }, index) => {
    const own = measured[index] ?? [];
    const isBare = own.length > 0 && standsBare(text, { from, to }, own);
    const sameSentence = text.sentences[from] === text.sentences[bounds[index - 1]?.from ?? from];
    if (!sameSentence) leading = from;
    const free = !holdsNumber || own.length === 0;
    const belongs = index > 0 && free && sameSentence && (text.joined(from) || isBare);
    const group = belongs ? (groups[from - 1] ?? 0) : from;
    if (belongs && isBare) groups.fill(group, leading, from);
    holdsNumber = own.length > 0 || (belongs && holdsNumber);
    for (let at = from; at < to; at += 1) groups.push(group);
    if (own.length > 0) leading = to;
  });
  return groups;
}

/** Nothing but numbers, or behind the name of what was measured. */
function standsBare(
  text: Clauses,
  { from, to }: { readonly from: number; readonly to: number },
  own: readonly Quantity[],
): boolean {
  const words = to - from - own.reduce((sum, one) => sum + one.to - one.from, 0);
  return words === 0 || text.tokens[from]?.gap === "colon";
}

function clauseBounds(text: Clauses): readonly { readonly from: number; readonly to: number }[] {
  const bounds: { from: number; to: number }[] = [];
  text.clauses.forEach((clause, at) => {
    const last = bounds.at(-1);
    if (last !== undefined && text.clauses[last.from] === clause) last.to = at + 1;
    else bounds.push({ from: at, to: at + 1 });
  });
  return bounds;
}
