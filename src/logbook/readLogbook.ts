import type { Logbook } from '../golf/logbook.ts';
import type { Player } from '../golf/player.ts';
import type { Shot } from '../golf/shot.ts';
import { type ClosedShots, type LogbookDatabase, ONLY } from './database.ts';

/**
 * Whose logbook it is. Of a player stored by an earlier version the own swings are read from the settings, where
 * they stood then.
 *
 * @throws RangeError when there is nobody: a logbook is made with its player.
 */
export async function readPlayer(db: LogbookDatabase): Promise<Player> {
  const player = (await db.player.toArray())[0];
  if (!player) throw new RangeError(`the logbook ${db.name} has no player`);
  if (Object.hasOwn(player, 'swings')) return player;
  const settings = await db.settings.get(ONLY);
  return { ...player, swings: [...((settings && 'ownSwings' in settings && settings.ownSwings) || [])] };
}

/** Everything but the shots of closed rounds: small, and read anew with each shot logged. */
export async function readOpenPages(db: LogbookDatabase): Promise<Logbook> {
  const [player, clubs, rounds, shots, reviews, done, deleted, rest] = await Promise.all([
    readPlayer(db),
    db.clubs.toArray(),
    db.rounds.toArray(),
    db.shots.toArray(),
    db.reviews.toArray(),
    db.done.toArray(),
    db.deleted.toArray(),
    db.settings.get('file rest'),
  ]);
  const unknown = rest && 'rest' in rest ? rest.rest : {};
  return { ...unknown, player, clubs, rounds, shots, reviews, done, deleted };
}

/** Both parts as one logbook; of a shot that stands in both the open one counts. */
export function withClosedShots(pages: Logbook, closed: readonly ClosedShots[]): Logbook {
  const open = new Set(pages.shots.map((shot) => shot.id));
  const shots: Shot[] = [...pages.shots];
  for (const round of closed) {
    for (const shot of round.shots) if (!open.has(shot.id)) shots.push(shot);
  }
  return { ...pages, shots };
}

/** The whole logbook as of one moment, each store read at once. */
export function readLogbook(db: LogbookDatabase): Promise<Logbook> {
  return db.transaction('r', db.tables, async () => {
    const [pages, closed] = await Promise.all([readOpenPages(db), db.closedShots.toArray()]);
    return withClosedShots(pages, closed);
  });
}
