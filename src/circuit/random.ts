/** Numbers that look like chance but follow from a seed alone. */
export interface Random {
  /** Even in [0, 1). */
  next(): number;
  /** Normal with mean 0 and standard deviation 1. */
  normal(): number;
}

/**
 * Opens a stream of random numbers.
 * @param seed any whole number; its lowest 32 bits count
 * @param stream name of the stream: different names under one seed are unrelated
 * @returns a generator; equal arguments give equal numbers for ever
 * @source sfc32, a small fast counting generator by Chris Doty-Humphrey, public domain; normal
 *   numbers by the polar method of Marsaglia
 */
export function createRandom(seed: number, stream: string): Random {
  let a = seed | 0;
  let b = hashText(stream);
  let c = hashText(`${stream}/${seed | 0}`);
  let counter = 1;
  const word = (): number => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + sum;
    c |= 0;
    return sum >>> 0;
  };
  for (let i = 0; i < 12; i++) word();
  const next = () => word() / 4294967296;
  let spare: number | undefined;
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    let u = 0;
    let v = 0;
    let square = 0;
    do {
      u = 2 * next() - 1;
      v = 2 * next() - 1;
      square = u * u + v * v;
    } while (square >= 1 || square === 0);
    const stretch = Math.sqrt((-2 * Math.log(square)) / square);
    spare = v * stretch;
    return u * stretch;
  };
  return { next, normal };
}

/** A 32-bit hash of a text (FNV-1a, by Fowler, Noll and Vo, public domain). */
export function hashText(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  }
  return hash | 0;
}
