import type { Book, BookCell } from '../../src/book/book.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { WEDGE_SWINGS } from '../../src/golf/swing.ts';
import { METRES_PER_YARD } from '../../src/units/yards.ts';
import { type Golfer, makeGolfer } from './golfer.ts';
import { cellKey, type TrueCell } from './trueCells.ts';
import type { World } from './worlds.ts';

/** The engine under test. */
export type ComposeBook = (logbook: Logbook, asOf: string) => Book;

/** One cell of one golfer: truth against the book's answer and against the plain median. Distances in yards. */
export interface ScoredCell {
  readonly golfer: number;
  readonly kind: string;
  readonly loft_deg: number;
  readonly swing: string;
  readonly shots: number;
  readonly stock_yd: number;
  /** Answer less truth. */
  readonly error_yd: number;
  /** Median of the measured carries less truth; null without any. */
  readonly rawError_yd: number | null;
  readonly inside: boolean;
  readonly width_yd: number;
  /** True probability that the next ball falls between P10 and P90. */
  readonly nextBall: number;
}

/** What a number of cells comes to. Shares are 0 to 1; NaN where there is no such cell. */
export interface Summary {
  readonly cells: number;
  readonly rmse_yd: number;
  readonly raw_yd: number;
  /** RMSE of the stock carries ÷ RMSE of the plain medians. */
  readonly ratio: number;
  /** Mean of ln(answer ÷ truth). */
  readonly bias: number;
  /** Share of 80 % intervals that hold the true stock carry. */
  readonly coverage: number;
  readonly nextBall: number;
  readonly width_yd: number;
}

export interface WorldScore {
  readonly world: string;
  readonly golfers: number;
  /** Cells with at least one measured shot. */
  readonly all: Summary;
  /** Of those, the partial swings. */
  readonly partial: Summary;
  readonly byShots: readonly { readonly shots: string; readonly summary: Summary }[];
  readonly orderViolations: number;
  readonly unanswered: number;
  readonly cells: readonly ScoredCell[];
}

const median = (values: readonly number[]) => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
};
const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
const rms = (values: readonly number[]) => Math.sqrt(mean(values.map((v) => v * v)));

export function summarise(cells: readonly ScoredCell[]): Summary {
  const rmse_yd = rms(cells.map((cell) => cell.error_yd));
  const raw_yd = rms(cells.flatMap((cell) => (cell.rawError_yd === null ? [] : [cell.rawError_yd])));
  return {
    cells: cells.length,
    rmse_yd,
    raw_yd,
    ratio: rmse_yd / raw_yd,
    bias: mean(cells.map((cell) => Math.log1p(cell.error_yd / cell.stock_yd))),
    coverage: mean(cells.map((cell) => (cell.inside ? 1 : 0))),
    nextBall: mean(cells.map((cell) => cell.nextBall)),
    width_yd: mean(cells.map((cell) => cell.width_yd)),
  };
}

/** Whether a cell is answered in full: finite and in order, with all 19 quantiles of the next ball. */
function isAnswer(cell: BookCell | undefined): cell is BookCell {
  if (cell?.next_m.length !== 19) return false;
  const figures = [cell.lo80_m, cell.stock_m, cell.hi80_m, ...cell.next_m];
  if (!figures.every((m) => Number.isFinite(m) && m > 0)) return false;
  if (cell.lo80_m > cell.stock_m || cell.stock_m > cell.hi80_m) return false;
  return cell.next_m.every((m, i) => i === 0 || m >= cell.next_m[i - 1]);
}

/** Cells that must have an answer: every club full, every wedge at its swings, as the clubs are built now. */
function unansweredIn(golfer: Golfer, answers: ReadonlyMap<string, BookCell>): number {
  let count = 0;
  for (const club of golfer.logbook.clubs) {
    if (club.kind === 'putter') continue;
    const spec = club.specPeriods[club.specPeriods.length - 1];
    for (const swing of club.kind === 'wedge' ? ['full', ...WEDGE_SWINGS] : ['full']) {
      if (!isAnswer(answers.get(cellKey(club.id, spec.id, swing)))) count++;
    }
  }
  return count;
}

/**
 * Pairs that the book puts out of order: a full swing carrying further than one of less loft, or a
 * partial swing further than a longer one of the same wedge. A pair that truly is out of order is none.
 */
function orderViolationsIn(golfer: Golfer, answers: ReadonlyMap<string, BookCell>): number {
  const order = ['full', '10:30', '9:00', '7:30'];
  const current = [...golfer.cells.values()].filter((cell) => cell.current);
  const loft = (cell: TrueCell) => cell.club.specPeriods[cell.club.specPeriods.length - 1].loft_deg;
  let count = 0;
  for (const longer of current) {
    for (const shorter of current) {
      const lofts = longer.swing === 'full' && shorter.swing === 'full' && loft(longer) < loft(shorter);
      const swings = longer.club === shorter.club && order.indexOf(longer.swing) < order.indexOf(shorter.swing);
      if (!(lofts || swings) || longer.stock_m < shorter.stock_m) continue;
      const far = answers.get(cellKey(longer.club.id, longer.specId, longer.swing));
      const near = answers.get(cellKey(shorter.club.id, shorter.specId, shorter.swing));
      if (far && near && near.stock_m > far.stock_m + 1e-6) count++;
    }
  }
  return count;
}

/** Share of an ascending sample between two values, both included. */
function shareBetween(sample: readonly number[], least: number, most: number): number {
  return sample.filter((value) => value >= least && value <= most).length / sample.length;
}

function scoreCell(golfer: number, truth: TrueCell, answer: BookCell): ScoredCell {
  const yd = (m: number) => m / METRES_PER_YARD;
  const raw = truth.measured_m.length > 0 ? yd(median(truth.measured_m) - truth.stock_m) : null;
  return {
    golfer,
    kind: truth.club.kind,
    loft_deg: truth.club.specPeriods.find((spec) => spec.id === truth.specId)?.loft_deg ?? Number.NaN,
    swing: truth.swing,
    shots: truth.measured_m.length,
    stock_yd: yd(truth.stock_m),
    error_yd: yd(answer.stock_m - truth.stock_m),
    rawError_yd: raw,
    inside: answer.lo80_m <= truth.stock_m && truth.stock_m <= answer.hi80_m,
    width_yd: yd(answer.hi80_m - answer.lo80_m),
    nextBall: shareBetween(truth.nextBalls_m, answer.next_m[1], answer.next_m[17]),
  };
}

const BUCKETS: readonly (readonly [string, number, number])[] = [
  ['0', 0, 0],
  ['1', 1, 1],
  ['2–4', 2, 4],
  ['5–9', 5, 9],
  ['10+', 10, Number.POSITIVE_INFINITY],
];

/**
 * How well the engine knows the golfers of a world.
 *
 * @param golfers how many, seeds `firstSeed` and on.
 */
export function scoreWorld(world: World, golfers: number, composeBook: ComposeBook, firstSeed = 1): WorldScore {
  const cells: ScoredCell[] = [];
  let orderViolations = 0;
  let unanswered = 0;
  for (let seed = firstSeed; seed < firstSeed + golfers; seed++) {
    const golfer = makeGolfer(world, seed);
    const book = composeBook(golfer.logbook, golfer.asOf);
    const answers = new Map(book.cells.map((cell) => [cellKey(cell.clubId, cell.specId, cell.swing), cell]));
    orderViolations += orderViolationsIn(golfer, answers);
    unanswered += unansweredIn(golfer, answers);
    for (const [key, truth] of golfer.cells) {
      const answer = answers.get(key);
      if (isAnswer(answer)) cells.push(scoreCell(seed, truth, answer));
      else if (truth.measured_m.length > 0) unanswered++;
    }
  }
  const hit = cells.filter((cell) => cell.shots > 0);
  return {
    world: world.name,
    golfers,
    all: summarise(hit),
    partial: summarise(hit.filter((cell) => cell.swing !== 'full')),
    byShots: BUCKETS.map(([shots, least, most]) => ({
      shots,
      summary: summarise(cells.filter((cell) => cell.shots >= least && cell.shots <= most)),
    })),
    orderViolations,
    unanswered,
    cells,
  };
}
