import * as z from 'zod/mini';
import { type Club, clubSchema } from '../../src/golf/club.ts';
import type { Swing } from '../../src/golf/swing.ts';
import { METRES_PER_YARD } from '../../src/units/yards.ts';
import type { Carries } from './ability.ts';
import type { BagClub } from './bag.ts';
import type { RandomNumbers } from './randomNumbers.ts';
import type { Season } from './season.ts';

/** A club of the bag with its build before and after a change, if there was one. */
export interface Build {
  readonly club: BagClub;
  readonly record: Club;
  readonly loftBefore_deg: number;
  readonly changedOn: string | null;
  /** ln by which the old build differs beyond its loft. */
  readonly before: number;
}

/** One golfer in five has one iron or wedge bent by 1 or 2° in the season. The loft of the bag is the one after. */
export function buildBag(clubs: readonly BagClub[], carries: Carries, season: Season, numbers: RandomNumbers): Build[] {
  const bendable = clubs.filter((club) => club.kind === 'iron' || club.kind === 'wedge');
  const bent = numbers.chance(0.2) ? numbers.choice(bendable) : null;
  const turn_deg = numbers.choice([-2, -1, 1, 2]);
  const flattery = numbers.normal(0.03, 0.045);
  const claims = numbers.choice(['none', 'three', 'all'] as const, [0.6, 0.25, 0.15]);
  const favourite = clubs.findLast((club) => club.kind === 'wedge');
  return clubs.map((club) => {
    const changedOn = club === bent ? season.middle : null;
    const loftBefore_deg = club === bent ? club.loft_deg - turn_deg : club.loft_deg;
    const asked = club.kind === 'driver' || club.name === '7 iron' || club === favourite;
    const claimed =
      claims === 'all' || (claims === 'three' && asked)
        ? Math.round(Math.exp(carries.lnStock(club, 'full') + flattery + numbers.normal(0, 0.04)) / 5) * 5
        : null;
    const specPeriods = [{ id: `${club.id}a`, from: '2026-01-01', loft_deg: loftBefore_deg }];
    if (changedOn) specPeriods.push({ id: `${club.id}b`, from: changedOn, loft_deg: club.loft_deg });
    const record = z.parse(clubSchema, {
      id: club.id,
      kind: club.kind,
      name: club.name,
      claimed_m: claimed === null ? null : claimed * METRES_PER_YARD,
      specPeriods,
    });
    return { club, record, loftBefore_deg, changedOn, before: numbers.normal(0, 0.006) };
  });
}

/** ln of the stock carry in yards, on the last day, of a club as built in one of its periods. */
export function lnStock(carries: Carries, build: Build, swing: Swing, old: boolean): number {
  if (!old) return carries.lnStock(build.club, swing);
  return carries.lnStock(build.club, swing, build.loftBefore_deg) + build.before;
}
