import { base, type Span, type World } from '../worlds.ts';
import type { Seeing } from './outingWeather.ts';

/**
 * Where and when a logbook was filled. Every figure is invented for the test, from common experience, no
 * source; ± is one standard deviation.
 */
export interface Setting {
  readonly world: World;
  /** Mean temperature of a round, °C, and how much rounds differ; or the course of the year. */
  readonly temperature_C: readonly [mean: number, sd: number] | 'course of the year';
  /** Wind 10 m above open ground, m/s, round by round: mean, spread, least and most. */
  readonly wind_mps: readonly [mean: number, sd: number, least: number, most: number];
  readonly seeing: Seeing;
  /** Height of the golfer's courses above the sea, m, one for each golfer. */
  readonly altitude_m: Span;
  /** Rise of a hole over its length, as a share: how much holes differ, and whether it is noted. */
  readonly rise: { readonly sd: number; readonly noted: boolean };
  /** Share of the way from no adjustment to perfect knowledge that must be won back; null: the two are too near. */
  readonly wonBack: number | null;
}

const LEVEL = { sd: 0.01, noted: false };
const FEW_ROUNDS = { activity: [2.5, 4.5] as const, rounds: 3, days: [8, 25] as const, drift: [0, 0.008] as const };

/** Strength called by its band and direction by the clock, both rightly, of a wind that is never quite steady. */
const COARSE: Seeing = { bias: 0, look: 0, direction_deg: 0, gusts: 0.1, veering_deg: 5, offTheBearing_deg: 5 };
/** The same in a gusty wind by a golfer who misjudges both: more than the adjustment could ever win back. */
const POOR: Seeing = { bias: 0.15, look: 0.15, direction_deg: 8, gusts: 0.2, veering_deg: 10, offTheBearing_deg: 8 };

export const settings: readonly Setting[] = [
  {
    world: { ...base, name: 'whole season' },
    temperature_C: 'course of the year',
    wind_mps: [3.5, 2, 0, 10],
    seeing: COARSE,
    altitude_m: [0, 300],
    rise: LEVEL,
    wonBack: null,
  },
  {
    world: { ...base, ...FEW_ROUNDS, name: 'three rounds of a windy spring at 4 °C' },
    temperature_C: [4, 1.5],
    wind_mps: [7.5, 1.5, 5, 10.5],
    seeing: COARSE,
    altitude_m: [0, 150],
    rise: LEVEL,
    wonBack: 0.8,
  },
  {
    world: { ...base, ...FEW_ROUNDS, name: 'the same spring by a poor eye in gusts' },
    temperature_C: [4, 1.5],
    wind_mps: [7.5, 1.5, 5, 10.5],
    seeing: POOR,
    altitude_m: [0, 150],
    rise: LEVEL,
    wonBack: null,
  },
  {
    world: { ...base, ...FEW_ROUNDS, name: 'three rounds at 1,600 m' },
    temperature_C: [18, 4],
    wind_mps: [2.5, 1.2, 0, 6],
    seeing: COARSE,
    altitude_m: [1550, 1650],
    rise: LEVEL,
    wonBack: 0.5,
  },
  {
    world: { ...base, name: 'hilly course' },
    temperature_C: 'course of the year',
    wind_mps: [3, 1.5, 0, 8],
    seeing: COARSE,
    altitude_m: [100, 600],
    rise: { sd: 0.05, noted: true },
    wonBack: null,
  },
];
