export interface SeenUpdates {
  has(update: string): boolean;
  add(updates: readonly string[]): void;
}

/**
 * Remembers which updates were applied, whatever document they went to.
 *
 * @param capacity how many are kept; the longest unmentioned ones go first
 */
export function createSeenUpdates(capacity: number): SeenUpdates {
  // A set keeps the order of insertion, so its first member is the oldest.
  const seen = new Set<string>();
  return {
    has: (update) => seen.has(update),
    add(updates) {
      for (const update of updates) {
        seen.delete(update);
        seen.add(update);
      }
      for (const oldest of seen) {
        if (seen.size <= capacity) break;
        seen.delete(oldest);
      }
    },
  };
}
