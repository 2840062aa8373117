/** Numbers that look random and are the same on every run. */
export interface SeededNumbers {
  /** Evenly spread in [0, 1). */
  readonly uniform: () => number;
  /** Evenly spread between two figures. */
  readonly between: (least: number, most: number) => number;
  /** Normal with mean 0 and standard deviation 1 (Box and Muller 1958). */
  readonly normal: () => number;
  readonly chance: (probability: number) => boolean;
  /** One of a list; throws RangeError when it is empty. */
  readonly pick: <T>(list: readonly T[]) => T;
}

/** A 32-bit generator (a Weyl sequence with a multiplicative finish): small, good enough for a made-up season. */
export function seededNumbers(seed: number): SeededNumbers {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let bits = Math.imul(state ^ (state >>> 15), 1 | state);
    bits = (bits + Math.imul(bits ^ (bits >>> 7), 61 | bits)) ^ bits;
    return ((bits ^ (bits >>> 14)) >>> 0) / 4294967296;
  };
  return {
    uniform,
    between: (least, most) => least + (most - least) * uniform(),
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    chance: (probability) => uniform() < probability,
    pick: (list) => {
      if (list.length === 0) throw new RangeError('nothing to pick from');
      return list[Math.floor(uniform() * list.length)];
    },
  };
}
