/** `npm run bench`: what a book of 5,000 shots costs, beside a floor that no engine of its kind can go under. Never fails. */
import { composeBook } from '../../src/book/composeBook.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { SHARED_COUNT } from '../../src/yardages/sharedEffects.ts';
import { makeGolfer } from '../golfers/golfer.ts';
import { base } from '../golfers/worlds.ts';
import { benchWeather } from './benchWeather.ts';

const SHOTS = 5000;
const WARM_UP = 12;
const RUNS = 31;
const BUDGET_ms = 50;

/** Kinds of strike that a shot is weighed against, one exp each: how often all shots are read follows from the exps counted. */
const KINDS_OF_STRIKE = 9;
/** Multiply-adds for one kind of strike of one shot: residual, density, and its share in weight, pull, scatter and missing information. */
const PER_KIND = 24;
/** Unknowns that one shot speaks of: its cell, its day and a handful of shared effects. */
const PER_SHOT = 6;

/** One golfer who logged a great deal: several shots a day, every club, one season. */
function longSeason(): { logbook: Logbook; asOf: string } {
  const { logbook, asOf } = makeGolfer({ ...base, name: 'benchmark', activity: [500, 500], mostShots: 900 }, 1);
  if (logbook.shots.length < SHOTS) throw new RangeError(`only ${logbook.shots.length} of ${SHOTS} shots were made`);
  const every = logbook.shots.length / SHOTS;
  return {
    logbook: { ...logbook, shots: Array.from({ length: SHOTS }, (_, i) => logbook.shots[Math.floor(i * every)]) },
    asOf,
  };
}

function median_ms(run: () => void): number {
  for (let i = 0; i < WARM_UP; i++) run();
  const times = Array.from({ length: RUNS }, () => {
    const since = performance.now();
    run();
    return performance.now() - since;
  });
  return times.sort((a, b) => a - b)[RUNS >> 1];
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

let sink = 0;

/** Bare loops of that many exps and multiply-adds, on numbers that lie in the cache. */
function floor(exps: number, multiplyAdds: number): void {
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
  sink += sum + a + b + c + d;
}

const { logbook, asOf } = longSeason();
const book = composeBook(logbook, asOf);
const exps = countExps(() => composeBook(logbook, asOf));
const readings = exps / (SHOTS * KINDS_OF_STRIKE);
const unknowns = book.cells.length + SHARED_COUNT;
const solving = (readings + 12) * unknowns ** 3;
const multiplyAdds = Math.round(exps * PER_KIND + readings * SHOTS * ((PER_SHOT * (PER_SHOT + 1)) / 2) + solving);

const cost_ms = median_ms(() => {
  sink += composeBook(logbook, asOf).cells.length;
});
const floor_ms = median_ms(() => floor(exps, multiplyAdds));

console.log(`One book: ${SHOTS} shots, ${book.cells.length} cells, ${logbook.rounds.length} days, Node ${process.versions.node}
  cost    ${cost_ms.toFixed(1)} ms (median of ${RUNS} after ${WARM_UP} to warm up; budget ${BUDGET_ms} ms)
  floor   ${floor_ms.toFixed(1)} ms (bare loops: ${(exps / 1e3).toFixed(0)} thousand exp, ${(multiplyAdds / 1e6).toFixed(1)} million multiply-adds)
  ratio   ${(cost_ms / floor_ms).toFixed(1)}${Number.isFinite(sink) ? '' : ' (the loops went astray)'}`);

console.log(benchWeather(logbook, asOf));
