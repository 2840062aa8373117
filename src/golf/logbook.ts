import type { Club } from './club.ts';
import type { Player } from './player.ts';
import type { Done, Review } from './review.ts';
import type { Round } from './round.ts';
import type { Shot } from './shot.ts';
import type { Tombstone } from './tombstone.ts';

/** Everything one golfer has written down: the records that every number is computed from. */
export interface Logbook {
  readonly player: Player;
  readonly clubs: readonly Club[];
  readonly rounds: readonly Round[];
  readonly shots: readonly Shot[];
  readonly reviews: readonly Review[];
  readonly done: readonly Done[];
  readonly deleted: readonly Tombstone[];
}
