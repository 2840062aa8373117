import { specOn } from '../golf/club.ts';
import type { Round } from '../golf/round.ts';
import type { LogbookDatabase } from '../logbook/database.ts';

/**
 * Id of the spec period that a club was in on the day of a round; null when the club is not said or
 * not in the logbook any more.
 */
export async function shotSpec(db: LogbookDatabase, clubId: string | null, round: Round): Promise<string | null> {
  const club = clubId === null ? undefined : await db.clubs.get(clubId);
  return club ? specOn(club, round.date).id : null;
}
