/** Runs work one after another where it has the same key, side by side where it has not. */
export type InTurn = <T>(key: string, work: () => Promise<T>) => Promise<T>;

export function createTurns(): InTurn {
  const last = new Map<string, Promise<unknown>>();
  return (key, work) => {
    const before = last.get(key) ?? Promise.resolve();
    const turn = before.then(work, work);
    last.set(key, turn);
    const forget = () => {
      if (last.get(key) === turn) last.delete(key);
    };
    turn.then(forget, forget);
    return turn;
  };
}
