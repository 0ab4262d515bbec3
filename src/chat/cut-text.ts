import type { TextEntity } from "../domain/rendered.ts";
import { splitPoints } from "../wording/split-points.ts";

/** A text with what lies over it. */
export interface MarkedText {
  readonly text: string;
  readonly entities: readonly TextEntity[];
}

/**
 * Cuts a text into pieces of at most `limit` UTF-16 units; what lies over a cut goes on after it.
 * Pieces of nothing but space are left out, because they cannot be sent.
 */
export function cutText({ text, entities }: MarkedText, limit: number): readonly MarkedText[] {
  const ends = [...splitPoints(text, limit), text.length];
  return ends
    .map((to, index) => {
      const from = ends[index - 1] ?? 0;
      return { text: text.slice(from, to), entities: within(entities, from, to) };
    })
    .filter((piece) => piece.text.trim() !== "");
}

function within(entities: readonly TextEntity[], from: number, to: number): TextEntity[] {
  return entities.flatMap((entity) => {
    const start = Math.max(entity.offset, from);
    const end = Math.min(entity.offset + entity.length, to);
    return end > start ? [{ ...entity, offset: start - from, length: end - start }] : [];
  });
}
