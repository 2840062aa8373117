import type { Swing } from '../golf/swing.ts';
import { type GaussianMixture, mixtureDistribution } from '../statistics/gaussianMixture.ts';
import { normalQuantile } from '../statistics/normal.ts';
import { type Metres, metres } from '../units/metres.ts';
import { DEVIATE_80 } from '../yardages/gaps.ts';
import type { NamedCell } from './bookCells.ts';
import type { FittedBook } from './fitBook.ts';

/** How near counts as reached, metres either side: 5 yd. Common practice, no source. */
export const NEAR: Metres = metres(4.572);

/** Options listed at the most, and the least chance that puts one on the list. Own choice. */
const MOST_OPTIONS = 6;
const LEAST_CHANCE = 0.05;

/** Probability up to which the order of two options is not known: they are a tie. As sure as the ± of every number. */
const TIE_UP_TO = 0.8;

/** Standard normal values in the middle of equal shares of probability: nodes to average over a posterior with. */
const NODES: readonly number[] = Array.from({ length: 15 }, (_, k) => normalQuantile((k + 0.5) / 15));

/** One way to carry a number. Lengths in metres, chances 0 to 1, mishits included. */
export interface NumberOption {
  readonly clubId: string;
  readonly specId: string;
  readonly swing: Swing;
  readonly stock_m: Metres;
  readonly lo80_m: Metres;
  readonly hi80_m: Metres;
  /** Own shots behind it. */
  readonly shots: number;
  /** Chance that the next ball carries within 5 yd of the number. */
  readonly near: number;
  /** Chance that it carries the hazard; null: none was named. */
  readonly over: number | null;
  /** Not to be told apart from the option above it. */
  readonly isTie: boolean;
}

/** As much of a fitted book as a search needs; plain data, so that one reading of the logbook serves any number typed. */
export interface SearchBook {
  readonly cells: readonly Pick<NamedCell, 'clubId' | 'specId' | 'swing' | 'current' | 'played'>[];
  readonly forecasts: readonly GaussianMixture[];
  readonly theta: Float64Array;
  /** Joint posterior covariance of θ, row by row. */
  readonly covariance: Float64Array;
  /** Own shots behind each cell. */
  readonly shots: readonly number[];
}

/** What a search needs of a fitted book. */
export function searchBook({ cells, forecasts, theta, model, shotsOf }: FittedBook): SearchBook {
  return {
    cells: cells.map(({ clubId, specId, swing, current, played }) => ({ clubId, specId, swing, current, played })),
    forecasts,
    theta,
    covariance: model.covariance,
    shots: shotsOf.map((shots) => shots.length),
  };
}

/**
 * The clubs and swings of the bag that reach a carry best: by the chance of the next ball to pitch within 5 yd of
 * it, mishits included, from the reference lie in standard conditions, or, when a hazard is named, first by the
 * chance of both.
 *
 * An option is a tie with the one above it when the order of the two is not known: with stock carries drawn from
 * their joint posterior, the one above has the better chance at most 8 times in 10. Only what is played is offered.
 *
 * @param wanted_m carry wanted, m. @param hazard_m carry that clears a hazard, m; null: none.
 * @throws RangeError when a length is not positive.
 */
export function numberSearch(book: SearchBook, wanted_m: Metres, hazard_m: Metres | null): NumberOption[] {
  for (const length of [wanted_m, ...(hazard_m === null ? [] : [hazard_m])]) {
    if (!(length > 0)) throw new RangeError(`no carry of ${length} m can be searched for`);
  }
  const { cells, forecasts, theta, covariance, shots } = book;
  const n = cells.length;
  const from = Math.log(Math.max(0.1, wanted_m - NEAR));
  const to = Math.log(wanted_m + NEAR);
  const least = hazard_m === null ? from : Math.max(from, Math.log(hazard_m));
  const found = cells.flatMap((cell, i) => {
    if (!cell.current || !cell.played) return [];
    const at = (x: number) => mixtureDistribution(forecasts[i], x);
    const near = at(to) - at(from);
    const over = hazard_m === null ? null : 1 - at(Math.log(hazard_m));
    const both = hazard_m === null || hazard_m <= wanted_m - NEAR ? near : Math.max(0, at(to) - at(Math.log(hazard_m)));
    return near >= LEAST_CHANCE ? [{ i, near, over, both }] : [];
  });
  found.sort((a, b) => b.both - a.both || b.near - a.near || a.i - b.i);
  return found.slice(0, MOST_OPTIONS).map(({ i, near, over }, rank): NumberOption => {
    const half = DEVIATE_80 * Math.sqrt(covariance[i * n + i]);
    const above = rank === 0 ? null : found[rank - 1];
    return {
      clubId: cells[i].clubId,
      specId: cells[i].specId,
      swing: cells[i].swing,
      stock_m: metres(Math.exp(theta[i])),
      lo80_m: metres(Math.exp(theta[i] - half)),
      hi80_m: metres(Math.exp(theta[i] + half)),
      shots: shots[i],
      near,
      over,
      isTie: above !== null && chanceOfOrder(book, above.i, i, least, to) <= TIE_UP_TO,
    };
  });
}

/** Probability between two bounds of ln carry; 0 when they are the wrong way round. */
function between(forecast: GaussianMixture, least: number, most: number): number {
  return least >= most ? 0 : mixtureDistribution(forecast, most) - mixtureDistribution(forecast, least);
}

/** The forecast if the stock carry were known to lie `off` from its mean, in ln carry: its own uncertainty taken out. */
function ifKnown(forecast: GaussianMixture, variance: number, off: number): GaussianMixture {
  return {
    weights: forecast.weights,
    means: forecast.means.map((mean) => mean + off),
    deviations: forecast.deviations.map((s) => Math.sqrt(Math.max(s * s - variance, 1e-8))),
  };
}

/** Probability that one option has the better chance between two bounds than another, over their joint posterior. */
function chanceOfOrder(
  { forecasts, covariance }: SearchBook,
  a: number,
  b: number,
  least: number,
  most: number,
): number {
  const n = forecasts.length;
  const [caa, cbb, cab] = [covariance[a * n + a], covariance[b * n + b], covariance[a * n + b]];
  const along = cab / Math.sqrt(caa);
  const across = Math.sqrt(Math.max(0, cbb - along ** 2));
  let better = 0;
  for (const z of NODES) {
    const chance = between(ifKnown(forecasts[a], caa, Math.sqrt(caa) * z), least, most);
    for (const w of NODES) {
      const other = between(ifKnown(forecasts[b], cbb, along * z + across * w), least, most);
      if (chance > other) better += 1;
      else if (chance === other) better += 0.5;
    }
  }
  return better / NODES.length ** 2;
}
