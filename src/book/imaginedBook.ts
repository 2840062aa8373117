import type { Club, ClubKind } from '../golf/club.ts';
import { clockHours, type Swing, WEDGE_SWINGS } from '../golf/swing.ts';
import type { Degrees } from '../units/degrees.ts';
import { withImaginedCells } from '../yardages/imaginedClub.ts';
import { nextBall } from '../yardages/nextBall.ts';
import type { NamedCell } from './bookCells.ts';
import type { FittedBook } from './fitBook.ts';

/** A club that the golfer has not hit as it would be: what-if, or owned and never used. */
export interface ImaginedClub {
  /** Its name among the cells; must be no club's id, unless it is that club as built now. */
  readonly id: string;
  readonly kind: Exclude<ClubKind, 'putter'>;
  readonly loft_deg: Degrees;
  /** The real club that is bent to this loft: it keeps what that club adds; null: another club. */
  readonly bentFrom: string | null;
  /** The real club it would stand in for; null: it is one more. */
  readonly insteadOf: string | null;
}

/** The club at another loft: what a vice would make of it. */
export function bent(club: Club, loft_deg: Degrees): ImaginedClub {
  return { ...replaced(club, kindOf(club), loft_deg), bentFrom: club.id };
}

/** Another kind of club, or another loft, in the place of one: a hybrid for a long iron. */
export function replaced(club: Club, kind: ImaginedClub['kind'], loft_deg: Degrees): ImaginedClub {
  return { id: `${club.id}>${kind} ${loft_deg}`, kind, loft_deg, bentFrom: null, insteadOf: club.id };
}

/** One more club. */
export function added(kind: ImaginedClub['kind'], loft_deg: Degrees): ImaginedClub {
  return { id: `+${kind} ${loft_deg}`, kind, loft_deg, bentFrom: null, insteadOf: null };
}

function kindOf(club: Club): ImaginedClub['kind'] {
  if (club.kind === 'putter') throw new RangeError(`club ${club.id} is a putter: it has no carry to imagine`);
  return club.kind;
}

/**
 * The golfer's book with imagined clubs in it: each with a full swing, wedges with their partial swings
 * too. They get their carries from the golfer's own shots through the joint posterior; no number of a
 * real club changes. Imagined cells come last, are not `current`, and keep their own order by swing.
 *
 * @throws RangeError when an imagined club has the id of a club that already has a full swing.
 */
export function imaginedBook(fitted: FittedBook, clubs: readonly ImaginedClub[]): FittedBook {
  if (clubs.length === 0) return fitted;
  let number = Math.max(-1, ...fitted.cells.map(({ club }) => club));
  let period = Math.max(-1, ...fitted.cells.map(({ period: p }) => p));
  const more = clubs.flatMap(({ id, kind, loft_deg, bentFrom }): NamedCell[] => {
    if (fitted.cells.some((cell) => cell.clubId === id && cell.current)) throw new RangeError(`club ${id} is there`);
    const own = fitted.cells.find(({ clubId }) => clubId === (bentFrom ?? id));
    if (!own) number++;
    period++;
    const swings: readonly Swing[] = kind === 'wedge' ? ['full', ...WEDGE_SWINGS] : ['full'];
    const rest = { clubId: id, specId: id, kind, loft_deg, club: own?.club ?? number, period };
    return swings.map((swing) => ({ ...rest, swing, current: false, played: true }));
  });
  const model = withImaginedCells(fitted.model, more);
  const cells = [...fitted.cells, ...more];
  const n = cells.length;
  const theta = model.mean.slice();
  theta.set(fitted.theta);
  for (let i = fitted.cells.length; i < n; i++) {
    const longer = cells.flatMap(({ period: p, swing }, j) =>
      p === cells[i].period && clockHours(swing) > clockHours(cells[i].swing) ? [theta[j]] : [],
    );
    theta[i] = Math.min(theta[i], ...longer);
  }
  const forecasts = more.map((cell, k) => {
    const i = fitted.cells.length + k;
    return nextBall(cell, theta[i], model.covariance[i * n + i], fitted.mishits, model.scatter2, model.loose);
  });
  return {
    ...fitted,
    cells,
    model,
    theta,
    shotsOf: [...fitted.shotsOf, ...more.map(() => [])],
    forecasts: [...fitted.forecasts, ...forecasts],
  };
}
