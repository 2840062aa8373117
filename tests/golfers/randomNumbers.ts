/** A stream of random numbers that is the same for the same seed, on every machine. */
export interface RandomNumbers {
  /** Evenly from 0 up to, not including, 1. */
  uniform(): number;
  between(least: number, most: number): number;
  /** A whole number, both ends included. */
  whole(least: number, most: number): number;
  chance(probability: number): boolean;
  normal(mean?: number, sd?: number): number;
  /** Gamma of the shape given and scale 1. */
  gamma(shape: number): number;
  beta(a: number, b: number): number;
  studentT(degreesOfFreedom: number): number;
  choice<T>(items: readonly T[], weights?: readonly number[]): T;
  /** A stream of its own, the same for the same label, that takes nothing from this one. */
  fork(label: string): RandomNumbers;
}

/** FNV-1a, 32 bits: spreads a text over the seeds. */
function hash(text: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  return h >>> 0;
}

/** splitmix32: turns one seed into the four words of state. */
function stateOf(seed: number): [number, number, number, number] {
  let s = seed | 0;
  const next = () => {
    s = (s + 0x9e3779b9) | 0;
    let t = Math.imul(s ^ (s >>> 16), 0x21f0aaad);
    t = Math.imul(t ^ (t >>> 15), 0x735a2d97);
    return (t ^ (t >>> 15)) | 0;
  };
  return [next(), next(), next(), next()];
}

/** The small fast counter generator sfc32 with the usual distributions on top (Box and Muller; Marsaglia and Tsang). */
export function randomNumbers(seed: number | string): RandomNumbers {
  const name = String(seed);
  let [a, b, c, d] = stateOf(hash(name));
  const uniform = () => {
    const t = (((a + b) | 0) + d) | 0;
    d = (d + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + t;
    c |= 0;
    return (t >>> 0) / 4294967296;
  };
  for (let i = 0; i < 12; i++) uniform();

  const normal = (mean = 0, sd = 1) =>
    mean + sd * Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());

  const gamma = (shape: number): number => {
    if (shape < 1) return gamma(shape + 1) * (1 - uniform()) ** (1 / shape);
    const k = shape - 1 / 3;
    const s = 1 / Math.sqrt(9 * k);
    for (;;) {
      const x = normal();
      const v = (1 + s * x) ** 3;
      if (v > 0 && Math.log(1 - uniform()) < x * x * 0.5 + k - k * v + k * Math.log(v)) return k * v;
    }
  };

  return {
    uniform,
    between: (least, most) => least + (most - least) * uniform(),
    whole: (least, most) => least + Math.floor((most - least + 1) * uniform()),
    chance: (probability) => uniform() < probability,
    normal,
    gamma,
    beta: (p, q) => {
      const x = gamma(p);
      return x / (x + gamma(q));
    },
    studentT: (n) => normal() / Math.sqrt(gamma(n / 2) / (n / 2)),
    choice: (items, weights) => {
      if (items.length === 0) throw new RangeError('nothing to choose from');
      if (!weights) return items[Math.floor(items.length * uniform())];
      let left = uniform() * weights.reduce((sum, w) => sum + w, 0);
      for (let i = 0; i < items.length; i++) {
        left -= weights[i];
        if (left < 0) return items[i];
      }
      return items[items.length - 1];
    },
    fork: (label) => randomNumbers(`${name}/${label}`),
  };
}
