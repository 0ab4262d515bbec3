/**
 * A stream of numbers in [0, 1), the same for the same seed.
 * Source: xorshift32, Marsaglia 2003.
 */
export function createRandom(seed: number): () => number {
  let state = (Math.trunc(seed) ^ 0x9e3779b9) | 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}
