import type { Lie } from '../../golf/lie.ts';
import type { Strike } from '../../golf/shot.ts';
import { figure } from './figure.ts';

const lie: Record<Lie, string> = {
  tee: 'tee',
  fairway: 'fairway',
  'light rough': 'light rough',
  'heavy rough': 'heavy rough',
  'fairway bunker': 'fairway bunker',
  'greenside bunker': 'greenside bunker',
  bare: 'bare lie',
  other: 'other lie',
};

const strike: Record<Strike, string> = { solid: 'solid', thin: 'thin', fat: 'fat', heel: 'heel', toe: 'toe' };

/** Words of the trade that more than one place says. */
export const golfWords = {
  units: {
    yards: { long: 'yards', short: 'yd' },
    metres: { long: 'metres', short: 'm' },
  },
  kinds: {
    driver: 'Driver',
    'fairway wood': 'Fairway wood',
    hybrid: 'Hybrid',
    'driving iron': 'Driving iron',
    iron: 'Iron',
    wedge: 'Wedge',
    putter: 'Putter',
  },
  swings: { full: 'full', labelled: (position: string, label: string) => `${position}, ${label}` },
  loft: (degrees: number) => `${figure(degrees)}°`,
  lie,
  strike,
} as const;
