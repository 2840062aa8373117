import { readFileSync } from 'node:fs';

/** The demo season again and again, each time a year earlier, until there are so many shots: as other programs write a file. */
export function longLogbookText(shotsWanted: number): string {
  const file = JSON.parse(readFileSync(new URL('../../demo/season-player.json', import.meta.url), 'utf8'));
  const years = Math.ceil(shotsWanted / file.shots.length);
  const earlier = (moment: string | null, by: number) =>
    moment && `${Number(moment.slice(0, 4)) - by}${moment.slice(4).replace('-02-29', '-02-28')}`;
  const rounds = [];
  const shots = [];
  for (let by = 0; by < years; by++) {
    for (const round of file.rounds) {
      const { id, date, startedAt, closedAt } = round;
      rounds.push({
        ...round,
        id: `${id}-${by}`,
        date: earlier(date, by),
        startedAt: earlier(startedAt, by),
        closedAt: earlier(closedAt, by),
      });
    }
    for (const shot of file.shots) {
      if (shots.length === shotsWanted) break;
      shots.push({ ...shot, id: `${shot.id}-${by}`, roundId: `${shot.roundId}-${by}`, at: earlier(shot.at, by) });
    }
  }
  const clubs = file.clubs.map((club: { specPeriods: { from: string }[] }) => ({
    ...club,
    specPeriods: club.specPeriods.map((spec, i) => (i === 0 ? { ...spec, from: '1990-01-01' } : spec)),
  }));
  const holes = Array.from({ length: 18 }, (_, i) => ({ number: i + 1, par: 4 }));
  const open = {
    id: 'open-round',
    date: '2026-11-01',
    startedAt: '2026-11-01T09:00:00.000Z',
    play: 'casual',
    closed: false,
    bag: clubs.slice(0, 14).map(({ id }: { id: string }) => id),
    holes,
  };
  return JSON.stringify({ ...file, clubs, rounds: [...rounds, open], shots, reviews: [], done: [], deleted: [] });
}
