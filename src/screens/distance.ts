import type { Player } from '../golf/player.ts';
import { plusMinus80 } from '../golf/plusMinus80.ts';
import type { Metres } from '../units/metres.ts';
import { yardsFromMetres } from '../units/yards.ts';
import { figure, words } from './words.ts';

/** The unit that distances are shown in. */
export type DistanceUnit = Player['units'];

/** A length as a bare number in the unit shown, not rounded. */
export function inUnit(length: Metres, unit: DistanceUnit): number {
  return unit === 'yards' ? yardsFromMetres(length) : length;
}

/** A carry as a card shows it: to the whole yard or metre, no unit. Common practice: no golfer plays to half a yard. */
export function wholeDistance(length: Metres, unit: DistanceUnit): string {
  return figure(Math.round(inUnit(length, unit)));
}

/** A carry to the whole yard or metre with its unit: `147 yd`. */
export function distanceWithUnit(length: Metres, unit: DistanceUnit): string {
  return `${wholeDistance(length, unit)}\u00a0${words.units[unit].short}`;
}

/** Half the width of an interval, to the whole yard or metre and at least 1: no carry is known better than that. */
export function plusMinus(low: Metres, high: Metres, unit: DistanceUnit): string {
  return figure(Math.max(1, Math.round((inUnit(high, unit) - inUnit(low, unit)) / 2)));
}

/**
 * The ± of one measured shot from its standard error: 8 in 10 sure like every other ± of the app, rounded up to the
 * whole yard or metre so that it never claims more.
 */
export function plusMinusOfError(error: Metres, unit: DistanceUnit): string {
  return figure(Math.max(1, Math.ceil(inUnit(plusMinus80(error), unit))));
}
