import type { Adjusted } from '../flight/standardise.ts';
import { daysBetween } from '../golf/instant.ts';
import type { Shot } from '../golf/shot.ts';
import { BOUND_ERROR, carryError } from '../yardages/carryError.ts';
import type { ShotEvidence, StrikeWord } from '../yardages/evidence.ts';
import { PRIOR } from '../yardages/priorTable.ts';
import { driftShares, SHARED_EFFECTS, sharedIndex } from '../yardages/sharedEffects.ts';
import { type CountedShot, hasBounds, loftOf } from './countedShots.ts';
import { responseLoadings } from './responseLoadings.ts';

/** What is known before about a ball from some lie: what it loses, its scatter, and which shared effect it loads on. */
interface LieEffect {
  readonly offset: number;
  readonly scatter: number;
  readonly shared: readonly (readonly [index: number, loading: number])[];
}

/** A carry in metres with its standard error, both as found. */
export interface FoundCarry {
  readonly least_m: number;
  readonly most_m: number;
  readonly error_m: number;
  /** Loading on the golfer's own run of the ball, where the carry was reckoned from a total. */
  readonly rollLoading: number;
}

/** What a shot's measures say of its carry. */
export function foundCarry(shot: Shot, carryOfTotal: (total_m: number) => FoundCarry): FoundCarry {
  if (shot.carry) return { least_m: shot.carry.m, most_m: shot.carry.m, error_m: carryError(shot), rollLoading: 0 };
  if (shot.total && !hasBounds(shot)) return carryOfTotal(shot.total.m);
  return {
    least_m: shot.carryAtLeast_m ?? 0,
    most_m: shot.carryAtMost_m ?? Number.POSITIVE_INFINITY,
    error_m: BOUND_ERROR,
    rollLoading: 0,
  };
}

/**
 * Turns a counted shot into evidence: takes out what its lie is known to cost, adds up the variance
 * of its measure and its lie, and says which shared effects it loads on (rough, sand, practice
 * ground, drift since then).
 *
 * What air and wind did is taken out as far as the flight model knows it; that a golfer's ball may
 * answer to them otherwise is an error all his shots in like conditions share, so it is no variance
 * but a loading on his own response: of the size of the model's error, in units of the response's.
 *
 * @param cell index of its cell. @param day index of its round. @param drift its {@link driftLoadings}.
 * @param adjusted what the conditions did; null: standard conditions, level.
 */
export function shotEvidence(
  counted: CountedShot,
  found: FoundCarry,
  cell: number,
  day: number,
  drift: LieEffect['shared'],
  adjusted: Adjusted | null,
): ShotEvidence {
  const { shot, round } = counted;
  const lie = lieEffect(counted);
  const practice = practiceEffect(round.play, round.ball);
  const special = tagEffect(shot);
  const weather = weatherEffect(adjusted, loftOf(counted));
  const offset = lie.offset + practice.offset + special.offset + weather.offset;
  const least = found.least_m > 0 ? Math.max(1, found.least_m + weather.slope_m) : 0;
  const most = Math.max(1, found.most_m + weather.slope_m);
  const centre = Number.isFinite(most) ? most : least;
  const variance =
    (found.error_m ** 2 + weather.slopeError_m ** 2) / centre ** 2 +
    PRIOR.course ** 2 +
    lie.scatter ** 2 +
    special.variance +
    weather.variance;
  const roll: [number, number][] = found.rollLoading === 0 ? [] : [[sharedIndex('roll'), found.rollLoading]];
  return {
    cell,
    day,
    logLeast: Math.log(least) - offset,
    logMost: Math.log(most) - offset,
    variance,
    word: wordOf(shot),
    shared: [...lie.shared, ...practice.shared, ...weather.shared, ...roll, ...drift],
  };
}

/** Loadings of a shot hit then on the steps of the drift up to the moment of the book. */
export function driftLoadings(when: string, asOf: string): LieEffect['shared'] {
  const age_days = Math.max(0, daysBetween(when, asOf));
  return driftShares(age_days).flatMap((share, step): [number, number][] =>
    share > 0 ? [[SHARED_EFFECTS.length + step, share]] : [],
  );
}

function wordOf(shot: Shot): StrikeWord {
  if (shot.strike === null) return 'none';
  return shot.strike === 'solid' ? 'solid' : 'mishit';
}

/** What a lie is known to cost before any shot of the golfer's. */
export function lieEffect({ shot, club }: CountedShot): LieEffect {
  const { lieOffset, lieScatter } = PRIOR;
  const none: LieEffect['shared'] = [];
  switch (shot.lie) {
    case 'light rough':
      return { offset: lieOffset.light, scatter: lieScatter.light, shared: [[sharedIndex('rough'), 1]] };
    case 'heavy rough':
      return { offset: lieOffset.heavy, scatter: lieScatter.heavy, shared: [[sharedIndex('rough'), 2]] };
    case 'fairway bunker':
    case 'greenside bunker':
      return { offset: lieOffset.sand, scatter: lieScatter.sand, shared: [[sharedIndex('sand'), 1]] };
    case 'bare':
      return { offset: lieOffset.bare, scatter: lieScatter.bare, shared: none };
    case 'other':
      return { offset: 0, scatter: lieScatter.other, shared: none };
    case null:
      return { offset: 0, scatter: club.kind === 'driver' ? 0 : lieScatter.unknown, shared: none };
    case 'fairway':
      if (club.kind !== 'driver') return { offset: 0, scatter: 0, shared: none };
      return { offset: lieOffset.driverOffTurf, scatter: lieScatter.driverOffTurf, shared: none };
    case 'tee':
      return { offset: 0, scatter: 0, shared: none };
  }
}

/** What a ball hit on the practice ground carries beyond one on the course, known before. */
export function practiceEffect(play: string, ball: string): { offset: number; shared: LieEffect['shared'] } {
  if (play !== 'practice ground') return { offset: 0, shared: [] };
  if (ball === 'range') return { offset: PRIOR.rangeBallOffset, shared: [[sharedIndex('range ball'), 1]] };
  return { offset: PRIOR.practiceOwnOffset, shared: [[sharedIndex('practice own'), 1]] };
}

/** What a flier, wet grass or an awkward stance do, known before. */
export function tagEffect(shot: Shot): { offset: number; variance: number } {
  let offset = 0;
  let variance = 0;
  for (const tag of shot.tags) {
    if (tag === 'flier') {
      offset += PRIOR.flierOffset;
      variance += PRIOR.flierScatter ** 2;
    } else {
      variance += (tag === 'wet' ? PRIOR.wetScatter : PRIOR.stanceScatter) ** 2;
    }
  }
  return { offset, variance };
}

interface WeatherEffect {
  readonly offset: number;
  readonly variance: number;
  readonly slope_m: number;
  readonly slopeError_m: number;
  readonly shared: LieEffect['shared'];
}

const NO_WEATHER: WeatherEffect = { offset: 0, variance: 0, slope_m: 0, slopeError_m: 0, shared: [] };

function weatherEffect(adjusted: Adjusted | null, loft_deg: number): WeatherEffect {
  if (!adjusted) return NO_WEATHER;
  const { windLog, airLog, slopeAdd_m, sigmas } = adjusted;
  const shared = responseLoadings(adjusted, loft_deg);
  return {
    offset: windLog + airLog,
    variance: sigmas.windReadingLog ** 2,
    slope_m: slopeAdd_m,
    slopeError_m: sigmas.slope_m,
    shared,
  };
}
