/** `npm run bench`: what a book of 5,000 shots costs, beside a floor that no engine of its kind can go under. Never fails. */
import { composeBook } from '../../src/book/composeBook.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { makeGolfer } from '../golfers/golfer.ts';
import { base } from '../golfers/worlds.ts';
import { arithmeticOf, floorRun, medianOf } from './arithmeticFloor.ts';

const SHOTS = 5000;
const WARM_UP = 12;
const RUNS = 31;
const BUDGET_ms = 50;

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
  return medianOf(
    Array.from({ length: RUNS }, () => {
      const since = performance.now();
      run();
      return performance.now() - since;
    }),
  );
}

let sink = 0;
const { logbook, asOf } = longSeason();
const cells = composeBook(logbook, asOf).cells.length;
const arithmetic = arithmeticOf(logbook, asOf);
const cost_ms = median_ms(() => {
  sink += composeBook(logbook, asOf).cells.length;
});
const floor_ms = median_ms(() => {
  sink += floorRun(arithmetic);
});

console.log(`One book: ${SHOTS} shots, ${cells} cells, ${logbook.rounds.length} days, Node ${process.versions.node}
  cost    ${cost_ms.toFixed(1)} ms (median of ${RUNS} after ${WARM_UP} to warm up; budget ${BUDGET_ms} ms)
  floor   ${floor_ms.toFixed(1)} ms (bare loops: ${(arithmetic.exps / 1e3).toFixed(0)} thousand exp, ${(arithmetic.multiplyAdds / 1e6).toFixed(1)} million multiply-adds)
  ratio   ${(cost_ms / floor_ms).toFixed(1)}${Number.isFinite(sink) ? '' : ' (the loops went astray)'}`);
