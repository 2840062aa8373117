import { composeBook } from '../../src/book/composeBook.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { SHARED_COUNT } from '../../src/yardages/sharedEffects.ts';

/** Kinds of strike that a shot is weighed against, one exp each: how often all shots are read follows from the exps counted. */
const KINDS_OF_STRIKE = 9;
/** Multiply-adds for one kind of strike of one shot: residual, density, and its share in weight, pull, scatter and missing information. */
const PER_KIND = 24;
/** Unknowns that one shot speaks of: its cell, its day and a handful of shared effects. */
const PER_SHOT = 6;

/** What no engine of this kind can do without for one book. */
export interface Arithmetic {
  readonly exps: number;
  readonly multiplyAdds: number;
}

/** How many exps one call of a function takes. */
function countExps(run: () => void): number {
  const { exp } = Math;
  let count = 0;
  Math.exp = (x) => {
    count++;
    return exp(x);
  };
  try {
    run();
  } finally {
    Math.exp = exp;
  }
  return count;
}

/** The arithmetic of one book. The first reckoning fills the caches, so that flights already known do not count. */
export function arithmeticOf(logbook: Logbook, asOf: string): Arithmetic {
  const shots = logbook.shots.length;
  const book = composeBook(logbook, asOf);
  const exps = countExps(() => composeBook(logbook, asOf));
  const readings = exps / (shots * KINDS_OF_STRIKE);
  const unknowns = book.cells.length + SHARED_COUNT;
  const solving = (readings + 12) * unknowns ** 3;
  const multiplyAdds = Math.round(exps * PER_KIND + readings * shots * ((PER_SHOT * (PER_SHOT + 1)) / 2) + solving);
  return { exps, multiplyAdds };
}

/** Bare loops of that much arithmetic, on numbers that lie in the cache. Runs in a page too, so it leans on nothing outside it. */
export function floorRun({ exps, multiplyAdds }: Arithmetic): number {
  const x = Float64Array.from({ length: 1024 }, (_, i) => -i / 512);
  let sum = 0;
  for (let i = 0; i < exps; i++) sum += Math.exp(x[i & 1023]);
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  for (let i = 0; i < multiplyAdds; i += 4) {
    const k = i & 1023;
    a += 0.5 * x[k];
    b += 0.5 * x[k + 1];
    c += 0.5 * x[k + 2];
    d += 0.5 * x[k + 3];
  }
  return sum + a + b + c + d;
}

/** The middle one of some figures. */
export function medianOf(figures: readonly number[]): number {
  const sorted = [...figures].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}
