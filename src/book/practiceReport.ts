import type { Logbook } from '../golf/logbook.ts';
import type { Swing } from '../golf/swing.ts';
import { DEVIATE_80 } from '../yardages/gaps.ts';
import { type PracticeRung, practicePlans, practiceWorth } from '../yardages/practicePlan.ts';
import { approachesFaced } from './approachesFaced.ts';
import type { FittedBook } from './fitBook.ts';

/** One number to practise: so many balls, and what they are expected to be worth. */
export interface PracticeRow {
  readonly clubId: string;
  readonly swing: Swing;
  readonly balls: number;
  /** Own shots so far. */
  readonly shots: number;
  /** Expected leave saved on every approach, m. */
  readonly gain_m: number;
  /** Half the 80 % interval of the stock carry, m: now, and as expected after the balls. */
  readonly before_m: number;
  readonly after_m: number;
}

/** What to practise. */
export interface PracticeSheet {
  /** Every cell of the bag by what its next ten balls are worth, the most first. */
  readonly worth: readonly PracticeRow[];
  /** The wedge ladder in sessions of 20, 40 and 60 balls; none without wedges. */
  readonly plans: readonly { readonly balls: number; readonly rungs: readonly PracticeRow[] }[];
}

const NEXT_BALLS = 10;
const SESSIONS = [20, 40, 60];
/** Distances up to this many times the longest wedge count for the ladder. */
const LADDER_REACH = 1.1;

/** Where the next balls pay most, for every cell of the bag and as sessions on the wedge ladder. */
export function practiceReport(logbook: Logbook, book: FittedBook): PracticeSheet {
  const { cells, theta, model, shotsOf } = book;
  const inBag = cells.flatMap((cell, i) => (cell.current && cell.played && cell.kind !== 'driver' ? [i] : []));
  const ladder = inBag.filter((i) => cells[i].kind === 'wedge');
  const ground = {
    cells,
    theta,
    covariance: model.covariance,
    forecasts: book.forecasts,
    scatter2: model.scatter2,
    mishits: book.mishits,
    approaches: approachesFaced(logbook, book)[0].approaches,
  };
  const row = ({ cell, balls, gain_m, before, after }: PracticeRung): PracticeRow => {
    const half = DEVIATE_80 * Math.exp(theta[cell]);
    const { clubId, swing } = cells[cell];
    const shots = shotsOf[cell].length;
    return { clubId, swing, balls, shots, gain_m, before_m: half * before, after_m: half * after };
  };
  const reach = LADDER_REACH * Math.max(0, ...ladder.map((i) => Math.exp(theta[i])));
  return {
    worth: practiceWorth(ground, inBag, NEXT_BALLS).map(row),
    plans:
      ladder.length === 0
        ? []
        : practicePlans(ground, inBag, ladder, SESSIONS, reach).map(({ balls, rungs }) => ({
            balls,
            rungs: rungs.map(row),
          })),
  };
}
