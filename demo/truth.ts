import { coach, type Golfer, player, specId } from './people.ts';
import { fromYards } from './records.ts';

/** What a club truly carries, as built in one spec period and at one swing, on the day of the export. */
export interface TrueCarry {
  readonly playerId: string;
  readonly clubId: string;
  readonly specId: string;
  readonly swing: string;
  /** Median carry of solid strikes from the reference lie in standard conditions, m. */
  readonly stock_m: number;
}

function carriesOf(golfer: Golfer): TrueCarry[] {
  return golfer.clubs.flatMap((club) =>
    club.specs.flatMap((spec, index) =>
      Object.entries(spec.carry_yd).map(([swing, carry_yd]) => ({
        playerId: golfer.id,
        clubId: club.id,
        specId: specId(club, index),
        swing,
        stock_m: fromYards(carry_yd),
      })),
    ),
  );
}

/** The truth behind the demo season, for tests of the engine. The engine never sees it. */
export const demoTruth: readonly TrueCarry[] = [...carriesOf(player), ...carriesOf(coach)];
