import type { WorldScore } from './score.ts';

/** What the engine must reach in a world; least and most are inclusive. */
export interface Bounds {
  /** RMSE of stock carries ÷ RMSE of plain medians, at most. */
  readonly ratio: number;
  /** Share of true stock carries inside the 80 % interval. */
  readonly coverage: readonly [number, number];
  /** Probability of the next ball between P10 and P90. */
  readonly nextBall: readonly [number, number];
}

/** RMSE of partial swings' stock carries ÷ RMSE of plain medians, at most, in the base world. */
export const BASE_PARTIAL_RATIO = 0.48;

const ORDINARY: Bounds = { ratio: 0.45, coverage: [0.77, 0.85], nextBall: [0.77, 0.83] };
const UNLIKE: Bounds = { ratio: 0.6, coverage: [0.72, 0.9], nextBall: [0.72, 0.88] };

/** Own goals of the project, stricter for ordinary golfers than for those unlike the prior. */
export const boundsOf = (world: string): Bounds => (world === 'base' ? ORDINARY : UNLIKE);

/** Golfers a world: the full count with CARRYBOOK_PROVE=1. */
export const golferCount = (): number => (process.env.CARRYBOOK_PROVE === '1' ? 300 : 60);

/** The scores in a table of Markdown, one line a world. */
export function scoreTable(scores: readonly WorldScore[]): string {
  const head = [
    'world',
    'golfers',
    'cells',
    'stock carry, RMSE yd',
    'plain median, RMSE yd',
    'ratio',
    'ratio, partial swings',
    'in 80 % interval',
    'the same, partial swings',
    'width of interval, yd',
    'next ball in P10–P90',
    'out of order',
    'unanswered',
  ];
  const rows = scores.map(({ world, golfers, all, partial, orderViolations, unanswered }) => [
    world,
    golfers,
    all.cells,
    all.rmse_yd.toFixed(2),
    all.raw_yd.toFixed(2),
    all.ratio.toFixed(3),
    partial.ratio.toFixed(3),
    all.coverage.toFixed(3),
    partial.coverage.toFixed(3),
    all.width_yd.toFixed(1),
    all.nextBall.toFixed(3),
    orderViolations,
    unanswered,
  ]);
  const rule = head.map((_, i) => (i === 0 ? '---' : '---:'));
  return [head, rule, ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}
