import { type Metres, metres } from '../units/metres.ts';
import { PRIOR } from '../yardages/priorTable.ts';
import { RESPONSES, sharedIndex } from '../yardages/sharedEffects.ts';
import { adjustmentOf, hasConditions, usualWinds } from './adjustments.ts';
import { type CountedShot, hasBounds, loftOf } from './countedShots.ts';
import type { FittedBook } from './fitBook.ts';
import { responseLoadings } from './responseLoadings.ts';
import { foundCarry, lieEffect, practiceEffect, tagEffect } from './shotEvidence.ts';
import { reckonedFromTotal } from './standardShots.ts';

/** Why a measured distance is not the carry it would have been in standard conditions from the reference lie. */
export type StandardCause = 'roll' | 'slope' | 'air' | 'wind' | 'lie' | 'practice ground' | 'tags';

/** One step from the measured to the standard carry: what it adds, and one standard deviation of that. */
export interface StandardStep {
  readonly cause: StandardCause;
  readonly add_m: Metres;
  readonly sd_m: Metres;
}

/** A shot that feeds a number: what was measured, what that is worth in standard conditions, and by which steps. */
export interface StandardShot {
  readonly kind: 'standard';
  readonly shotId: string;
  /** How the distance was known: a measured carry or total, or a carry of at least or at most so much. */
  readonly known: 'carry' | 'total' | 'at least' | 'at most';
  readonly measured_m: Metres;
  /** Standard error of the measure itself. */
  readonly measuredSd_m: Metres;
  readonly standard_m: Metres;
  /** Measure and steps together. */
  readonly sd_m: Metres;
  /** In the order they are taken; only what there is to say. */
  readonly steps: readonly StandardStep[];
}

/** A shot that feeds none, and why, in words for the golfer. */
export interface ShotLeftOut {
  readonly kind: 'left out';
  readonly shotId: string;
  readonly why: string;
}

/** What a share of the carry must come to before it is worth a line, m. */
const WORTH_SAYING_m = 0.05;

/**
 * One shot in standard conditions, step by step: what it measured, what roll, slope, air, wind and lie
 * took from it or gave it, and what is left: the carry that the book reads.
 *
 * The golfer's own response to wind and air is in the steps as far as his shots tell it. How he struck
 * it is not: a thin one stays short.
 *
 * @returns the steps, or why the shot feeds no number.
 * @throws RangeError when the logbook that was fitted has no such shot.
 */
export function shotInStandard(fitted: FittedBook, shotId: string): StandardShot | ShotLeftOut {
  const left = fitted.leftOut.find((one) => one.shotId === shotId);
  if (left) return { kind: 'left out', shotId, why: left.why };
  const place = fitted.counted.findIndex(({ shot }) => shot.id === shotId);
  if (place < 0) throw new RangeError(`no shot ${shotId} in this book`);
  const counted = fitted.counted[place];
  const cell = fitted.shotsOf.findIndex((shots) => shots.includes(place));
  const stock_m = Math.exp(fitted.theta[cell]);

  const { known, measured_m } = measureOf(counted);
  const found = foundCarry(counted.shot, reckonedFromTotal(counted, stock_m));
  const carry_m = known === 'total' ? found.least_m : measured_m;
  const rollSd = Math.hypot(found.error_m, found.rollLoading * carry_m);
  const steps: StandardStep[] = [];
  let standard = carry_m as number;
  const step = (cause: StandardCause, add: number, sd: number) => {
    if (Math.abs(add) >= WORTH_SAYING_m || sd >= WORTH_SAYING_m) {
      steps.push({ cause, add_m: metres(add), sd_m: metres(sd) });
    }
  };
  const scale = (cause: StandardCause, log: number, sdLog: number) => {
    const before = standard;
    standard *= Math.exp(-log);
    step(cause, standard - before, standard * sdLog);
  };
  if (known === 'total') step('roll', carry_m - measured_m, rollSd);
  takeOutWeather(fitted, counted, stock_m, {
    slope: (add, sd) => {
      standard = Math.max(1, standard + add);
      step('slope', add, sd);
    },
    scale,
  });
  const lie = lieEffect(counted);
  const widths = lie.shared.map(
    ([index, loading]) => loading * (index === sharedIndex('sand') ? PRIOR.sand : PRIOR.rough),
  );
  scale('lie', lie.offset, Math.hypot(lie.scatter, ...widths));
  const practice = practiceEffect(counted.round.play, counted.round.ball);
  const practiceWidth = counted.round.ball === 'range' ? PRIOR.rangeBall : PRIOR.practiceOwn;
  scale('practice ground', practice.offset, practice.shared.length > 0 ? practiceWidth : 0);
  const tags = tagEffect(counted.shot);
  scale('tags', tags.offset, Math.sqrt(tags.variance));

  const measuredSd = known === 'total' ? 0 : found.error_m;
  return {
    kind: 'standard',
    shotId,
    known,
    measured_m: metres(measured_m),
    measuredSd_m: metres(measuredSd),
    standard_m: metres(standard),
    sd_m: metres(Math.hypot(measuredSd, ...steps.map(({ sd_m }) => sd_m))),
    steps,
  };
}

function measureOf({ shot }: CountedShot): Pick<StandardShot, 'known' | 'measured_m'> {
  if (shot.carry) return { known: 'carry', measured_m: shot.carry.m };
  if (shot.total && !hasBounds(shot)) return { known: 'total', measured_m: shot.total.m };
  if (shot.carryAtLeast_m !== null) return { known: 'at least', measured_m: shot.carryAtLeast_m };
  if (shot.carryAtMost_m !== null) return { known: 'at most', measured_m: shot.carryAtMost_m };
  throw new RangeError(`shot ${shot.id} has no distance: null m`);
}

interface WeatherSteps {
  readonly slope: (add_m: number, sd_m: number) => void;
  readonly scale: (cause: 'air' | 'wind', log: number, sdLog: number) => void;
}

/** Slope, then air and wind with the golfer's own response to them, each with what is not known of it. */
function takeOutWeather(fitted: FittedBook, counted: CountedShot, stock_m: number, take: WeatherSteps): void {
  const usual = usualWinds(fitted.counted).get(counted.round.id) ?? null;
  if (!hasConditions(counted) && !usual) return;
  const hole = counted.round.holes.find(({ number }) => number === counted.shot.hole);
  const adjusted = adjustmentOf(counted, stock_m, hole?.bearing_deg ?? null, usual);
  if (adjusted.kind !== 'adjusted') return;
  const { mean, covariance } = fitted.model.responses;
  const own = { air: { log: 0, variance: 0 }, wind: { log: 0, variance: 0 } };
  const loadings = responseLoadings(adjusted, loftOf(counted));
  for (const [index, loading] of loadings) {
    const a = RESPONSES.findIndex((response) => sharedIndex(response) === index);
    const cause = RESPONSES[a] === 'air' ? own.air : own.wind;
    cause.log += loading * mean[a];
    for (const [other, otherLoading] of loadings) {
      const b = RESPONSES.findIndex((response) => sharedIndex(response) === other);
      if ((RESPONSES[a] === 'air') !== (RESPONSES[b] === 'air')) continue;
      cause.variance += loading * otherLoading * covariance[a * RESPONSES.length + b];
    }
  }
  if (adjusted.slopeAdd_m !== 0) take.slope(adjusted.slopeAdd_m, adjusted.sigmas.slope_m);
  take.scale('air', adjusted.airLog + own.air.log, Math.sqrt(own.air.variance));
  take.scale(
    'wind',
    adjusted.windLog + own.wind.log,
    Math.hypot(Math.sqrt(own.wind.variance), adjusted.sigmas.windReadingLog),
  );
}
