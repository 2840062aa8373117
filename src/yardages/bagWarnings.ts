import { BAG_LIMIT } from '../golf/bagGate.ts';
import type { ClubKind } from '../golf/club.ts';
import { normalDistribution } from '../statistics/normal.ts';
import { CHANGED_BY } from './specChange.ts';

/** A club in the bag as the warnings see it: its loft, and its full swing's place in the book if it has one. */
export interface BagEntry {
  readonly clubId: string;
  readonly kind: ClubKind;
  readonly loft_deg: number;
  /** Place of its full swing among the cells; null for a putter. */
  readonly cell: number | null;
}

/** Something about a bag that a fitter would look at. */
export type BagWarning =
  | { readonly kind: 'too many'; readonly clubs: number; readonly over: number }
  | { readonly kind: 'duplicate'; readonly clubId: string; readonly otherId: string }
  | {
      readonly kind: 'loft and carry disagree';
      /** The club of more loft that carries further, and the one of less. */
      readonly clubId: string;
      readonly otherId: string;
      readonly further_m: number;
      readonly deviation_m: number;
      readonly probability: number;
    };

/** Lofts closer than this are the same, °: markings are no better. Own choice. */
const SAME_LOFT = 0.75;
/** Loft differences from this on should show in the carry, °. Own choice. */
const TELLING_LOFT = 1;
const SURE = 0.8;

/**
 * What is odd about a bag: more than fourteen clubs; two clubs of one kind and one loft; a club of more
 * loft that carries further than one of less, by 2 yd or more with odds of at least 4 in 5.
 *
 * The odds come from the carries before they are put in order of loft, since that order hides it. A
 * long-headed wood may rightly do so; a bent iron or a wrong marking is the other reason.
 *
 * @param mean θ = ln(stock carry in m) before ordering. @param covariance joint posterior, row-major.
 */
export function bagWarnings(bag: readonly BagEntry[], mean: ArrayLike<number>, covariance: Float64Array): BagWarning[] {
  const warnings: BagWarning[] = [];
  if (bag.length > BAG_LIMIT) warnings.push({ kind: 'too many', clubs: bag.length, over: bag.length - BAG_LIMIT });
  const clubs = bag.filter(({ kind }) => kind !== 'putter');
  const inOrder = clubs.toSorted((a, b) => a.loft_deg - b.loft_deg || (a.clubId < b.clubId ? -1 : 1));
  inOrder.forEach((strong, i) => {
    for (const weak of inOrder.slice(i + 1)) {
      const apart = weak.loft_deg - strong.loft_deg;
      if (apart < SAME_LOFT && weak.kind === strong.kind) {
        warnings.push({ kind: 'duplicate', clubId: strong.clubId, otherId: weak.clubId });
      }
      if (apart < TELLING_LOFT || strong.cell === null || weak.cell === null) continue;
      const n = mean.length;
      const [a, b] = [Math.exp(mean[weak.cell]), Math.exp(mean[strong.cell])];
      const variance =
        a * a * covariance[weak.cell * n + weak.cell] +
        b * b * covariance[strong.cell * n + strong.cell] -
        2 * a * b * covariance[weak.cell * n + strong.cell];
      const deviation_m = Math.sqrt(variance);
      const probability = normalDistribution((a - b - CHANGED_BY) / deviation_m);
      if (probability < SURE) continue;
      warnings.push({
        kind: 'loft and carry disagree',
        clubId: weak.clubId,
        otherId: strong.clubId,
        further_m: a - b,
        deviation_m,
        probability,
      });
    }
  });
  return warnings;
}
