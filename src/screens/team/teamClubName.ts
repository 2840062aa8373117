import { clubColumn } from '../../book/clubColumn.ts';
import type { TeamPage } from '../../book/teamPage.ts';
import { teamWords } from '../words/team.ts';

/** What a club of a golfer is called in the team: its own name, else that of its column. */
export function teamClubName(page: TeamPage, clubId: string): string {
  const club = page.clubs.find((one) => one.clubId === clubId);
  return club ? club.name || teamWords.club(clubColumn(club)) : clubId;
}
